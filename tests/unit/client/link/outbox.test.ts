import { describe, expect, it } from 'vitest';
import { browserShelf, Outbox } from '../../../../client/link/outbox.ts';
import { pending } from './fakes.ts';

/** A browser's storage, as far as a shelf uses it: keys are its own properties. */
function storage(most = Number.POSITIVE_INFINITY): Storage {
  const methods = {
    getItem: (key: string) => (Object.hasOwn(kept, key) ? (kept[key] as string) : null),
    setItem: (key: string, value: string) => {
      if (value.length > most) throw new DOMException('full', 'QuotaExceededError');
      kept[key] = value;
    },
    removeItem: (key: string) => {
      delete kept[key];
    },
  };
  const kept = Object.create(methods) as Record<string, unknown>;
  return kept as unknown as Storage;
}

const HAND_IN = { kind: 'hand-in', round: 0, design: {} } as const;
const ANSWERS = { kind: 'hand-in-answers', round: 0, answers: {} } as const;

describe('browserShelf', () => {
  it('gives back what was put on it, oldest first, and not what was dropped', () => {
    const place = storage();
    const shelf = browserShelf('tablet', 10, place);
    shelf.put(pending('b', { at: 9 }));
    shelf.put(pending('a', { at: 8 }));
    shelf.put(pending('c', { at: 7 }));
    shelf.drop('c');
    expect(
      browserShelf('tablet', 10, place)
        .load()
        .map((p) => p.id),
    ).toEqual(['a', 'b']);
  });

  it('keeps what a team has done for as long as it takes, a pressed button for half a minute', () => {
    const place = storage();
    const shelf = browserShelf('tablet', 0, place);
    shelf.put(pending('press'));
    shelf.put(pending('drawing', { ask: HAND_IN }));
    shelf.put(pending('answers', { ask: ANSWERS }));
    shelf.put(pending('mended', { ask: { kind: 'mend', round: 0 } }));
    const later = browserShelf('tablet', 3_600_000, place);
    expect(later.load().map((p) => p.id)).toEqual(['drawing', 'answers', 'mended']);
    expect(Object.keys(place)).toHaveLength(3);
  });

  it('pages keep theirs apart', () => {
    const place = storage();
    browserShelf('tablet', 0, place).put(pending('a'));
    expect(browserShelf('desk', 0, place).load()).toEqual([]);
  });

  it('a full storage does not stop the command', () => {
    const shelf = browserShelf('tablet', 0, storage(5));
    expect(() => shelf.put(pending('a'))).not.toThrow();
    expect(shelf.load()).toEqual([]);
  });
});

describe('Outbox', () => {
  it('a command of another room is refused, the next one goes', async () => {
    const outbox = new Outbox(browserShelf('tablet', 0, storage()));
    const lost = outbox.add(pending('a', { room: 'other' }));
    void outbox.add(pending('b', { room: 'room' }));
    expect(outbox.first('room', null)?.id).toBe('b');
    expect(await lost).toEqual({ ok: false, refusal: { code: 'unknown-room' } });
  });

  it('what one team gave is not handed in by another', async () => {
    const outbox = new Outbox(browserShelf('tablet', 0, storage()));
    const lost = outbox.add(pending('a', { room: 'room', team: 't1' }));
    void outbox.add(pending('b', { room: 'room', team: 't2' }));
    expect(outbox.first('room', 't2')?.id).toBe('b');
    expect((await lost).ok).toBe(false);
  });

  it('an answer for a command that is not there changes nothing', () => {
    const outbox = new Outbox(browserShelf('tablet', 0, storage()));
    void outbox.add(pending('a'));
    outbox.settle('b', { ok: true, seq: 1 });
    expect(outbox.counts).toEqual({ waiting: 1, handingIn: 0 });
  });
});
