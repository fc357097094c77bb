import { describe, expect, it } from 'vitest';
import { foldEvents, foldLatest } from '../../../../client/link/fold.ts';
import { FIRST_STATE, type LinkState } from '../../../../client/link/state.ts';
import { event, roomState } from './fakes.ts';

const rounds = [{ challenge: 'c', key: 'k', varied: false }];
const clock = { playing: true, speed: 1, at: 2, since: 5 } as const;
const before: LinkState = {
  ...FIRST_STATE,
  room: roomState(3, { rounds, phase: 'show' }),
  drafts: { t: { round: 0, design: {} } },
  doings: { t: 'drawing' },
  stageClock: clock,
};

const folded = (...facts: Parameters<typeof event>[1][]): LinkState => {
  const result = foldEvents(
    before,
    facts.map((fact, i) => event(4 + i, fact)),
  );
  if ('gap' in result) throw new Error('no gap was expected');
  return result.state;
};

describe('foldEvents', () => {
  it('a new challenge forgets drafts and words of the old one', () => {
    const state = folded({ kind: 'challenge-chosen', challenge: 'd', key: 'l' });
    expect(state).toMatchObject({ drafts: {}, doings: {} });
  });

  it('a new stage forgets the clock of the old one', () => {
    expect(folded({ kind: 'staged', entries: ['e'], designs: ['d'], verdicts: [] }).stageClock).toBeNull();
  });

  it('any other event keeps them', () => {
    const state = folded({ kind: 'standings-shown', on: true, verdicts: [] });
    expect(state).toMatchObject({ drafts: before.drafts, doings: before.doings, stageClock: clock });
  });

  it('the first event of a room opens it', () => {
    const opened = { kind: 'opened', room: 'room', word: 'plum-42', chargerWatched: true } as const;
    const result = foldEvents(FIRST_STATE, [event(1, opened)]);
    expect(result).toMatchObject({ state: { room: { word: 'plum-42', seq: 1, phase: 'gather' } } });
  });

  it('a later event without a room is a gap', () => {
    expect(foldEvents(FIRST_STATE, [event(2, null)])).toEqual({ gap: true });
  });
});

describe('foldLatest', () => {
  it('takes a draft of this round and leaves one of an earlier round', () => {
    const taken = foldLatest(before, { kind: 'draft', team: 'u', round: 0, design: 1 });
    expect(taken.drafts.u).toEqual({ round: 0, design: 1 });
    const old = { kind: 'draft', team: 'u', round: -1, design: 1 } as const;
    expect(foldLatest(before, old)).toBe(before);
  });
});
