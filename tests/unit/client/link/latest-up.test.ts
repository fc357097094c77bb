import { describe, expect, it } from 'vitest';
import { LatestSender } from '../../../../client/link/latest-up.ts';
import type { LatestUp } from '../../../../shared/wire/protocol.ts';
import { FakeTimers } from './fakes.ts';

function sender(open = true) {
  const timers = new FakeTimers();
  const sent: LatestUp[] = [];
  const line = { open };
  const latest = new LatestSender((value) => {
    if (line.open) sent.push(value);
    return line.open;
  }, timers);
  return { timers, sent, line, latest };
}

const draft = (design: string): LatestUp => ({ kind: 'draft', round: 0, design });

describe('LatestSender', () => {
  it('sends the first draft at once and of later ones only the newest, a second later', async () => {
    const { latest, sent, timers } = sender();
    for (const design of ['a', 'b', 'c']) latest.put(draft(design));
    expect(sent).toEqual([draft('a')]);
    await timers.pass(1000);
    expect(sent).toEqual([draft('a'), draft('c')]);
  });

  it('sends a draft though the clock was set back meanwhile', () => {
    const { latest, sent, timers } = sender();
    latest.put(draft('a'));
    timers.set(-3_600_000);
    latest.put(draft('b'));
    expect(sent).toEqual([draft('a'), draft('b')]);
  });

  it('does not hold back a word because of a draft', () => {
    const { latest, sent } = sender();
    latest.put(draft('a'));
    latest.put({ kind: 'doing', doing: 'trying' });
    expect(sent).toHaveLength(2);
  });

  it('after a lost link sends the newest draft again, never an old clock', () => {
    const { latest, sent, line } = sender(false);
    latest.put(draft('a'));
    latest.put({ kind: 'stage-clock', clock: { playing: true, speed: 1, at: 3 } });
    line.open = true;
    latest.again();
    expect(sent).toEqual([draft('a')]);
  });

  it('forgets a draft that another page may have overtaken', async () => {
    const { latest, sent, timers } = sender();
    for (const design of ['a', 'b']) latest.put(draft(design));
    latest.forget();
    latest.again();
    await timers.pass(1000);
    expect(sent).toEqual([draft('a')]);
  });
});
