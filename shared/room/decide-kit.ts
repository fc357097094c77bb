import { ALREADY, type CommandOf, type Decision, done, type Rule } from './decision.ts';
import type { RoomState } from './state.ts';

/** Which kit a room plays with. */

/** At any time: what has been chosen or drawn keeps the kit that it was made for. */
function chooseKit(state: RoomState, { kit }: CommandOf<'choose-kit'>): Decision {
  return state.kit === kit ? ALREADY : done({ kind: 'kit-chosen', kit });
}

export const KIT_RULES: { readonly 'choose-kit': Rule<'choose-kit'> } = {
  'choose-kit': { by: 'desk', decide: chooseKit },
};
