import { USUAL_HELP } from './coaching.ts';
import { ALREADY, type CommandOf, type Decision, done, type Rule, refuse } from './decision.ts';
import type { RoomFact } from './events.ts';
import type { TeamId } from './ids.ts';
import { LONGEST_QUEUE, NO_PLAN, type Place, queueWith } from './plan.ts';
import type { RoomState, Team } from './state.ts';

/** Challenges that wait their turn, and what a lesson brings into the next one. */

function queueChallenge({ plan }: RoomState, { key, place }: CommandOf<'queue-challenge'>): Decision {
  const queue = queueWith(plan.queue, key, place);
  if (queue.length > LONGEST_QUEUE) return refuse({ code: 'queue-full', most: LONGEST_QUEUE });
  return queue.join() === plan.queue.join() ? ALREADY : done({ kind: 'queue-changed', queue });
}

export const PLAN_RULES: { readonly 'queue-challenge': Rule<'queue-challenge'> } = {
  'queue-challenge': { by: 'desk', decide: queueChallenge },
};

/** What a team has of its own is written only where it has any. */
const placeOf = ({ coaching }: RoomState, { id, emblem, berth, help }: Team): Place => ({
  team: id,
  emblem,
  berth,
  ...(help !== null && { help }),
  ...(coaching.gentler.includes(id) && ({ gentler: true } as const)),
});

/** A team that comes back has its own again; whoever hears of such things otherwise hears of it now. */
export const broughtBack = (team: TeamId, { help, gentler }: Place): RoomFact[] => [
  ...(help ? [{ kind: 'help-set', team, step: help } as const] : []),
  ...(gentler ? [{ kind: 'gentler-set', team, on: true } as const] : []),
];

/**
 * What a room begins with that goes on from this one: the teams' places and what each had of its own, the queue,
 * kit, sheets and robots, how all are helped.
 */
export function continuation(before: RoomState): RoomFact[] {
  const places = before.teams.map((team) => placeOf(before, team));
  const last = before.rounds.at(-1)?.key ?? null;
  const { queue } = before.plan;
  const { robots } = before.driving;
  return [
    { kind: 'continued', room: before.id, last, places },
    ...(queue.length > NO_PLAN.queue.length ? [{ kind: 'queue-changed', queue } as const] : []),
    ...(before.kit !== null ? [{ kind: 'kit-chosen', kit: before.kit } as const] : []),
    ...(before.variedSheets ? [{ kind: 'sheets-varied', on: true } as const] : []),
    ...(before.help !== USUAL_HELP ? [{ kind: 'help-set', team: null, step: before.help } as const] : []),
    ...(robots !== null ? [{ kind: 'robots-set', robots } as const] : []),
  ];
}
