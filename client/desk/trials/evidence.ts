import type { Checked, TimedTrial } from '../../../shared/prep/foretold.ts';
import type { RoomState } from '../../../shared/room/state.ts';

/** Trials of which something was foretold: how likely, and whether it came. */
export const checkedOf = ({ driving }: RoomState): Checked[] =>
  driving.trials.flatMap(({ withdrawn, foretold, outcome }) =>
    withdrawn || !foretold
      ? []
      : [{ share: foretold.same / foretold.of, came: outcome.kind === 'as-predicted' }],
  );

/** Timed trials that came as predicted, of runs whose time was foretold. */
export const timedOf = ({ driving }: RoomState): TimedTrial[] =>
  driving.trials.flatMap(({ withdrawn, foretold, outcome, robot }) => {
    const took = outcome.kind === 'as-predicted' ? outcome.seconds : null;
    if (withdrawn || took === null || foretold?.seconds == null) return [];
    return [{ robot, foretold: foretold.seconds, took }];
  });
