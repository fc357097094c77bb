import { ALREADY, type CommandOf, type Decision, done, type Rule, refuse } from './decision.ts';
import { DRIVING_LIMITS, type DrivingCommand } from './driving.ts';
import type { RoomState } from './state.ts';

/** Which robots drive, whose turn it is, and what they did. */

/** Lowest first, each once. */
function setRobots({ driving }: RoomState, command: CommandOf<'set-robots'>): Decision {
  const robots = [...new Set(command.robots)].sort((a, b) => a - b);
  return robots.join() === driving.robots?.join() ? ALREADY : done({ kind: 'robots-set', robots });
}

function noteTrial(state: RoomState, { kind, ...trial }: CommandOf<'note-trial'>): Decision {
  if (!state.entries.some(({ id }) => id === trial.entry))
    return refuse({ code: 'unknown-entry', entry: trial.entry });
  const most = DRIVING_LIMITS.trials;
  if (state.driving.trials.length >= most) return refuse({ code: 'too-many-trials', most });
  return done({ kind: 'trial-noted', ...trial });
}

function withdrawTrial({ driving }: RoomState, { trial }: CommandOf<'withdraw-trial'>): Decision {
  const noted = driving.trials[trial];
  if (!noted) return refuse({ code: 'unknown-trial' });
  return noted.withdrawn ? ALREADY : done({ kind: 'trial-withdrawn', trial });
}

export const TRIAL_RULES: { readonly [K in DrivingCommand['kind']]: Rule<K> } = {
  'set-robots': { by: 'desk', decide: setRobots },
  'call-turn': {
    by: 'desk',
    decide: ({ driving }, { turn }) =>
      driving.turn === turn ? ALREADY : done({ kind: 'turn-called', turn }),
  },
  'note-trial': { by: 'desk', decide: noteTrial },
  'withdraw-trial': { by: 'desk', decide: withdrawTrial },
};
