import type { Checked, TimedTrial } from '../../../shared/prep/foretold.ts';
import { isOfKit, type RoomState } from '../../../shared/room/state.ts';
import { entryOf } from '../../parts/figures.ts';

/** Trials of which something was foretold: how likely, and whether it came. */
export const checkedOf = ({ driving }: RoomState): Checked[] =>
  driving.trials.flatMap(({ withdrawn, foretold, outcome }) =>
    withdrawn || !foretold
      ? []
      : [{ share: foretold.same / foretold.of, came: outcome.kind === 'as-predicted' }],
  );

/** Timed trials that came as predicted, of runs whose time was foretold with the kit that the room has now. */
export const timedOf = (room: RoomState): TimedTrial[] =>
  room.driving.trials.flatMap(({ entry, withdrawn, foretold, outcome, robot }) => {
    const round = room.rounds[entryOf(room, entry)?.round ?? -1];
    const took = outcome.kind === 'as-predicted' ? outcome.seconds : null;
    if (withdrawn || took === null || foretold?.seconds == null) return [];
    // Times that another kit foretold say nothing of this one's paces.
    if (!round || !isOfKit(room, round)) return [];
    return [{ robot, foretold: foretold.seconds, took }];
  });
