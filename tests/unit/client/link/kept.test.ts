import { describe, expect, it } from 'vitest';
import { fakeLink, lookHere, roomState, welcome } from './fakes.ts';

const kept = { room: roomState(3), you: { role: 'team', team: 't1' }, clockOffset: 70 } as const;

describe('takeUp', () => {
  it('goes on with a kept room while no server answers, and asks for what it missed', async () => {
    const { link, wire } = fakeLink();
    link.takeUp(kept);
    expect(link.state()).toMatchObject({ status: { kind: 'away' }, room: { seq: 3 }, clockOffset: 70 });
    wire.connect();
    expect(wire.bodies('hello')).toEqual([{ version: 1, room: 'room', seq: 3 }]);
    await wire.answer('hello', welcome({ snapshot: null, events: [lookHere(4)] }));
    expect(link.state()).toMatchObject({ status: { kind: 'live' }, room: { seq: 4, lookHere: true } });
  });

  it('leaves a kept room where the seat is none any more, and takes none up once it has one', async () => {
    const { link, wire, timers } = fakeLink();
    link.takeUp(kept);
    wire.connect();
    await wire.answer('hello', { ok: false, refusal: { code: 'no-seat' } });
    expect(link.state()).toMatchObject({ status: { kind: 'refused' }, room: null });
    await timers.pass(3000);
    await wire.answer('hello', welcome());
    link.takeUp({ ...kept, room: roomState(1) });
    expect(link.state()).toMatchObject({ status: { kind: 'live' }, room: { seq: 3 } });
  });
});
