import { describe, expect, it } from 'vitest';
import { checkedOf, timedOf } from '../../../../../client/desk/trials/evidence.ts';
import { foretoldOf } from '../../../../../client/desk/trials/foretold-of.ts';
import type { Verdict } from '../../../../../shared/documents/verdict.ts';
import { NO_DRIVING, type Trial } from '../../../../../shared/room/driving.ts';
import type { Entry } from '../../../../../shared/room/state.ts';
import { roomState } from '../../link/fakes.ts';

const foretold = { same: 18, of: 20, finish: 1, seconds: 12 };
const trial = (part: Partial<Trial>): Trial => ({
  entry: 'e',
  robot: 3,
  outcome: { kind: 'as-predicted', seconds: null },
  foretold,
  at: 0,
  withdrawn: false,
  ...part,
});
const entryIn = (id: string, round: number) => ({ id, round }) as Entry;
/** A room whose kit is changed after its first round, and has been since. */
const roomWith = (...trials: Trial[]) =>
  roomState(1, {
    kit: 'other-kit',
    rounds: [
      { challenge: 'a', key: 'a', varied: false },
      { challenge: 'b', key: 'b', varied: false, kit: 'other-kit' },
    ],
    entries: [entryIn('before', 0), entryIn('e', 1)],
    driving: { ...NO_DRIVING, trials },
  });

describe('checkedOf', () => {
  it('counts what came as predicted, not what was withdrawn or of which nothing was foretold', () => {
    const room = roomWith(
      trial({}),
      trial({ outcome: { kind: 'lost', at: null } }),
      trial({ withdrawn: true }),
      trial({ foretold: null }),
    );
    expect(checkedOf(room)).toEqual([
      { share: 0.9, came: true },
      { share: 0.9, came: false },
    ]);
  });
});

describe('timedOf', () => {
  it('takes only runs that were timed, came as predicted, and had a time foretold', () => {
    const timed = { kind: 'as-predicted', seconds: 13.2 } as const;
    const room = roomWith(
      trial({ outcome: timed }),
      trial({ outcome: timed, withdrawn: true }),
      trial({ outcome: timed, foretold: { ...foretold, seconds: null } }),
      trial({ outcome: { kind: 'time-up' } }),
      trial({}),
    );
    expect(timedOf(room)).toEqual([{ robot: 3, foretold: 12, took: 13.2 }]);
  });

  it('leaves out runs that were foretold with another kit, so that paces are not slowed down twice', () => {
    const timed = { kind: 'as-predicted', seconds: 13.2 } as const;
    expect(timedOf(roomWith(trial({ entry: 'before', outcome: timed })))).toEqual([]);
    expect(timedOf({ ...roomWith(trial({ entry: 'before', outcome: timed })), kit: null })).toHaveLength(1);
  });
});

describe('foretoldOf', () => {
  const run = (part: object) => ({
    start: 'start',
    probability: 1,
    ending: 'finished',
    duration: 12.5,
    readings: [],
    traceHash: '',
    ...part,
  });
  const verdict = (...runs: object[]) =>
    ({
      steadiness: { weather: 'calm', same: 17, of: 20, interval: { low: 0, high: 1 }, strays: [] },
      odds: [{ start: 'start', finish: 0.75 }],
      runs,
    }) as unknown as Verdict;

  it('says steadiness, chance of arriving, and the time on the way without the half second after it', () => {
    expect(foretoldOf(verdict(run({})))).toEqual({ same: 17, of: 20, finish: 0.75, seconds: 12 });
    expect(foretoldOf(verdict(run({}), run({ start: 'finish' })))?.seconds).toBe(12);
  });

  it('says no time of a robot that waits, has several ways to go, or does not come to its end', () => {
    const waits = { readings: [{ action: { kind: 'wait', time: 2 } }] };
    for (const runs of [[run(waits)], [run({}), run({})], [run({ ending: 'lost' })]])
      expect(foretoldOf(verdict(...runs))?.seconds).toBeNull();
  });

  it('says nothing where no robots were driven', () => {
    expect(foretoldOf({ ...verdict(run({})), steadiness: undefined })).toBeNull();
  });
});
