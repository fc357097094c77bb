import { describe, expect, it } from 'vitest';
import { memoryShelf } from '../../../../client/link/outbox.ts';
import { event, fakeLink, lookHere, pending, roomState, settled, welcome } from './fakes.ts';

async function live() {
  const parts = fakeLink();
  parts.wire.connect();
  await parts.wire.answer('hello', welcome());
  return parts;
}

describe('hello and welcome', () => {
  it('says hello with nothing, takes the snapshot and is live', async () => {
    const { link, wire } = fakeLink();
    expect(link.state().status.kind).toBe('connecting');
    wire.connect();
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: null, seq: 0 }]);
    await wire.answer('hello', welcome());
    expect(link.state().status).toEqual({ kind: 'live' });
    expect(link.state().room?.word).toBe('plum-42');
  });

  it('shows server time by the middle of the round trip', async () => {
    const { link, wire, timers } = fakeLink();
    wire.connect();
    await timers.pass(200);
    await wire.answer('hello', welcome({ now: 5000 }));
    // Sent at 1000, answered at 1200: the server's 5000 was at the page's 1100.
    expect(link.serverNow()).toBe(5100);
  });

  it('after a lost link asks only for what it missed', async () => {
    const { link, wire } = await live();
    wire.close();
    expect(link.state().status.kind).toBe('away');
    expect(link.state().room?.seq).toBe(3);
    wire.connect();
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: 'room', seq: 3, at: 3 }]);
    await wire.answer('hello', welcome({ snapshot: null, events: [lookHere(4), lookHere(5, false)] }));
    expect(link.state().room).toMatchObject({ seq: 5, lookHere: false });
    wire.listener.events([lookHere(6)]);
    wire.close();
    wire.connect();
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: 'room', seq: 6, at: 6 }]);
  });

  it('says how much of the room the server has lost, and nothing of that in another room', async () => {
    const { link, wire } = await live();
    wire.listener.moved();
    await wire.answer('hello', welcome({ snapshot: roomState(1), at: 1 }));
    expect([link.state().room?.seq, link.state().lost]).toEqual([1, 2]);
    wire.listener.moved();
    await wire.answer('hello', welcome({ room: 'other', snapshot: roomState(1, { id: 'other' }) }));
    expect(link.state().lost).toBe(0);
  });

  it('a refusal is shown and asked again after a while', async () => {
    const { link, wire, timers } = fakeLink();
    wire.connect();
    await wire.answer('hello', { ok: false, refusal: { code: 'unknown-room' } });
    expect(link.state().status).toEqual({ kind: 'refused', refusal: { code: 'unknown-room' } });
    await timers.pass(3000);
    await wire.answer('hello', welcome());
    expect(link.state().status.kind).toBe('live');
  });

  it.each(['store-away', 'restart-needed'] as const)('%s: waits and sends all again', async (code) => {
    const { link, wire, timers } = await live();
    const answer = link.command({ kind: 'end-building' });
    await wire.answer('command', { ok: false, refusal: { code } });
    expect(link.state()).toMatchObject({ status: { kind: 'away' }, waiting: 1 });
    await timers.pass(3000);
    await wire.answer('hello', { ok: false, refusal: { code: 'store-away' } });
    expect(link.state().status.kind).toBe('away');
    await timers.pass(3000);
    await wire.answer('hello', welcome({ snapshot: null, events: [lookHere(4)] }));
    expect(wire.bodies('command')).toMatchObject([{ id: 'id-1' }]);
    await wire.answer('command', { ok: true, seq: 5 });
    expect(await answer).toEqual({ ok: true, seq: 5 });
  });

  it('a difference that does not fit is answered by asking for everything', async () => {
    const { link, wire, timers } = await live();
    wire.close();
    wire.connect();
    await wire.answer('hello', welcome({ snapshot: null, events: [lookHere(9)] }));
    await timers.pass(0);
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: null, seq: 0 }]);
    await wire.answer('hello', welcome({ snapshot: roomState(9) }));
    expect(link.state().room?.seq).toBe(9);
  });

  it('moved to another room, drafts of the old one are gone', async () => {
    const { link, wire } = fakeLink();
    wire.connect();
    const rounds = [{ challenge: 'c', key: 'k', varied: false }];
    const draft = { kind: 'draft', team: 't', round: 0, design: {} } as const;
    await wire.answer('hello', welcome({ snapshot: roomState(3, { rounds }), latest: [draft] }));
    expect(Object.keys(link.state().drafts)).toEqual(['t']);
    wire.listener.moved();
    await wire.answer('hello', welcome({ room: 'other', snapshot: roomState(1, { id: 'other' }) }));
    expect(link.state().room?.id).toBe('other');
    expect(link.state().drafts).toEqual({});
  });
});

describe('news while a hello is on its way', () => {
  it('of another room is followed: the answer may still be of the old one', async () => {
    const { link, wire } = await live();
    link.wake();
    wire.listener.moved();
    await wire.answer('hello', welcome({ snapshot: null }));
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: 'room', seq: 3, at: 3 }]);
    await wire.answer('hello', welcome({ room: 'other', snapshot: roomState(1, { id: 'other' }) }));
    expect(link.state().room?.id).toBe('other');
    expect(wire.bodies('hello')).toEqual([]);
  });
});

describe('a lossy value that comes with the answer to a hello', () => {
  it('is newer than the values of that answer', async () => {
    const { link, wire } = fakeLink();
    wire.connect();
    const rounds = [{ challenge: 'c', key: 'k', varied: false }];
    const draft = (size: number) => ({ kind: 'draft', team: 't', round: 0, design: { size } }) as const;
    const answered = wire.answer(
      'hello',
      welcome({ snapshot: roomState(3, { rounds }), latest: [draft(1)] }),
    );
    wire.listener.latest(draft(2));
    await answered;
    expect(link.state().drafts.t?.design).toEqual({ size: 2 });
  });
});

describe('the clock of the page', () => {
  const HOUR = 3_600_000;

  it.each([[5 * HOUR], [-3 * HOUR]])(
    'that was set by %d ms makes the link ask for the server’s time',
    async (by) => {
      const { link, wire, timers } = await live();
      timers.set(by);
      await timers.pass(5000);
      expect(wire.bodies('hello')).toHaveLength(1);
      await wire.answer('hello', welcome({ snapshot: null, now: 12_000 }));
      expect(link.serverNow()).toBe(12_000);
    },
  );

  it('that runs as it should says nothing', async () => {
    const { wire, timers } = await live();
    for (let i = 0; i < 5; i++) await timers.pass(5000);
    expect(wire.bodies('hello')).toEqual([]);
  });
});

describe('events', () => {
  it('in order are folded, repeated ones skipped', async () => {
    const { link, wire } = await live();
    wire.listener.events([lookHere(4)]);
    wire.listener.events([lookHere(4), lookHere(5, false), lookHere(6)]);
    expect(link.state().room).toMatchObject({ seq: 6, lookHere: true });
    expect(wire.bodies('hello')).toEqual([]);
  });

  it('hidden from this seat only move the count', async () => {
    const { link, wire } = await live();
    wire.listener.events([event(4, null), lookHere(5)]);
    expect(link.state().room).toMatchObject({ seq: 5, lookHere: true });
  });

  it('with a gap are not applied; the difference is asked for', async () => {
    const { link, wire } = await live();
    wire.listener.events([lookHere(6)]);
    expect(link.state().room).toMatchObject({ seq: 3, lookHere: false });
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: 'room', seq: 3, at: 3 }]);
  });
});

describe('commands', () => {
  const ask = { kind: 'look-here', on: true } as const;

  it('given before the welcome are sent after it', async () => {
    const { link, wire } = fakeLink();
    const answer = link.command(ask);
    expect(link.state().waiting).toBe(1);
    wire.connect();
    await wire.answer('hello', welcome());
    expect(wire.bodies('command')).toEqual([{ version: 1, id: 'id-1', ask }]);
    await wire.answer('command', { ok: true, seq: 4 });
    expect(await answer).toEqual({ ok: true, seq: 4 });
    expect(link.state().waiting).toBe(0);
  });

  it('without an answer are sent again with the same id when the link is back', async () => {
    const { link, wire } = await live();
    const answer = link.command(ask);
    wire.close();
    await settled();
    wire.connect();
    await wire.answer('hello', welcome());
    expect(wire.bodies('command')).toEqual([{ version: 1, id: 'id-1', ask }]);
    await wire.answer('command', { ok: true, seq: 4 });
    expect(await answer).toEqual({ ok: true, seq: 4 });
  });

  it('go one at a time, in the order given', async () => {
    const { link, wire } = await live();
    void link.command(ask);
    void link.command({ kind: 'end-building' });
    expect(wire.bodies('command')).toHaveLength(1);
    await wire.answer('command', { ok: true, seq: 4 });
    expect(wire.bodies('command')).toEqual([{ version: 1, id: 'id-2', ask: { kind: 'end-building' } }]);
  });

  it('refused for being too fast are sent again by themselves', async () => {
    const { link, wire, timers } = await live();
    const answer = link.command(ask);
    await wire.answer('command', { ok: false, refusal: { code: 'too-fast' } });
    await timers.pass(300);
    await wire.answer('command', { ok: true, seq: 4 });
    expect(await answer).toEqual({ ok: true, seq: 4 });
  });

  it('that are too large are refused at once and never sent', async () => {
    const { link, wire } = await live();
    const answer = await link.command({ kind: 'hand-in', round: 0, design: 'x'.repeat(200_000) });
    expect(answer).toEqual({ ok: false, refusal: { code: 'too-large', bytes: 200_002, most: 200_000 } });
    expect(wire.bodies('command')).toEqual([]);
  });

  it('a draft that is too large is not sent and says so, until one that fits is', async () => {
    const { link, wire, timers } = await live();
    link.tell({ kind: 'draft', round: 0, design: 'x'.repeat(200_000) });
    const refusal = { code: 'too-large', bytes: 200_002, most: 200_000 };
    expect([wire.told, link.state().draftRefusal]).toEqual([[], refusal]);
    link.tell({ kind: 'draft', round: 0, answers: 'x'.repeat(200_000) });
    await timers.pass(1000);
    expect([wire.told, link.state().draftRefusal]).toEqual([[], refusal]);
    link.tell({ kind: 'draft', round: 0, design: 'x' });
    await timers.pass(1000);
    expect([wire.told.length, link.state().draftRefusal]).toEqual([1, null]);
  });

  it('left over from before a reload are sent; those of another room are not', async () => {
    const shelf = memoryShelf([pending('old', { room: 'other' }), pending('kept', { room: 'room' })]);
    const { wire, link } = fakeLink(shelf);
    wire.connect();
    await wire.answer('hello', welcome());
    expect(wire.bodies('command')).toEqual([{ version: 1, id: 'kept', ask: { kind: 'end-building' } }]);
    await wire.answer('command', { ok: true, seq: 4 });
    expect(link.state().waiting).toBe(0);
  });
});

describe('quiet, sleep and waking', () => {
  it('a newer tab makes this one quiet until it takes over', async () => {
    const { link, wire } = await live();
    wire.listener.quiet();
    expect(link.state().status).toEqual({ kind: 'quiet' });
    expect(wire.stopped).toBe(true);
    link.takeOver();
    expect(wire.starts).toBe(2);
    wire.connect();
    await wire.answer('hello', welcome());
    expect(link.state().status.kind).toBe('live');
  });

  it('a socket that does not answer after waking is replaced', async () => {
    const { link, wire } = await live();
    link.wake();
    wire.asked.shift()!.fail();
    await settled();
    expect(wire.drops).toBe(1);
    expect(wire.stopped).toBe(false);
  });

  it('follows the clock of the stage that it sets itself', async () => {
    const { link, timers } = await live();
    link.tell({ kind: 'stage-clock', clock: { playing: true, speed: 2, at: 3 } });
    expect(link.state().stageClock).toEqual({ playing: true, speed: 2, at: 3, since: link.serverNow() });
    const { since } = link.state().stageClock!;
    await timers.pass(1000);
    expect(link.serverNow() - since).toBe(1000);
  });

  it('close ends everything and tells nobody any more', async () => {
    const { link, wire } = await live();
    let told = 0;
    link.subscribe(() => told++);
    link.close();
    const before = told;
    wire.listener.events([lookHere(4)]);
    expect(wire.stopped).toBe(true);
    expect(told).toBe(before);
  });
});
