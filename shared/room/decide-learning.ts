import { ownTeam, stageWithout, strangerTo, whileDrawing } from './decide-teams.ts';
import { ALREADY, type CommandOf, type Decision, done, type Rule } from './decision.ts';
import type { Seat } from './events.ts';
import type { RoomState } from './state.ts';

/** How teams are helped, what they foretell, and whether they want to be on the wall. */

function setHelp(state: RoomState, { team, step }: CommandOf<'set-help'>): Decision {
  if (team === null)
    return step === state.help || step === null ? ALREADY : done({ kind: 'help-set', team, step });
  const known = state.teams.find(({ id }) => id === team);
  if (!known) return strangerTo(state, team);
  return known.help === step ? ALREADY : done({ kind: 'help-set', team, step });
}

function tried(state: RoomState, { kind, ...command }: CommandOf<'try'>, seat: Seat): Decision {
  return whileDrawing(state, command.round, seat, (team) => ({ kind: 'tried', team, ...command }));
}

/** Only once a try, and only of one that was made. */
function explain(state: RoomState, { kind, ...command }: CommandOf<'explain'>, seat: Seat): Decision {
  const { round } = command;
  const own = state.tries.filter((one) => seat.role === 'team' && one.team === seat.team);
  const last = own.findLast((one) => one.round === round);
  if (last?.because !== null) return ALREADY;
  return whileDrawing(state, round, seat, (team) => ({ kind: 'explained', team, ...command }));
}

function mend(state: RoomState, { round }: CommandOf<'mend'>, seat: Seat): Decision {
  return ownTeam(state, seat, ({ mended }) =>
    mended.includes(round)
      ? ALREADY
      : whileDrawing(state, round, seat, (team) => ({ kind: 'mended', team, round })),
  );
}

/** Who wants to stay away leaves the stage at once. */
function wishWall(state: RoomState, { wish }: CommandOf<'wish-wall'>, seat: Seat): Decision {
  return ownTeam(state, seat, ({ id, wall }) => {
    if (wall === wish) return ALREADY;
    const leaves = wish === 'not-at-all' ? stageWithout(state, id) : [];
    return done({ kind: 'wall-wished', team: id, wish }, ...leaves);
  });
}

type LearningKind = 'set-help' | 'wish-wall' | 'try' | 'explain' | 'mend';

export const LEARNING_RULES: { readonly [K in LearningKind]: Rule<K> } = {
  'set-help': { by: 'desk', decide: setHelp },
  'wish-wall': { by: 'team', decide: wishWall },
  try: { by: 'team', decide: tried },
  explain: { by: 'team', decide: explain },
  mend: { by: 'team', decide: mend },
};
