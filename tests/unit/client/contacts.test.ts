import { describe, expect, it } from 'vitest';
import {
  type Contact,
  contactDown,
  contactGone,
  contactMoved,
  type Deed,
  type HandsState,
  NO_HANDS,
} from '../../../client/editor/surface/contacts.ts';
import { Wheel } from '../../../client/editor/surface/wheel.ts';

const contact = (id: number, kind: Contact['kind'], t = 0, more: Partial<Contact> = {}): Contact => ({
  id,
  kind,
  at: { px: 100 * id, py: 100 },
  t,
  size: 25,
  ...more,
});

type Event =
  | { readonly down: Contact }
  | { readonly move: number; readonly to: readonly [number, number] }
  | { readonly up: number }
  | { readonly cancel: number };

function played(events: readonly Event[], begin: HandsState = NO_HANDS) {
  let state = begin;
  const deeds: Deed[] = [];
  for (const event of events) {
    const turn =
      'down' in event
        ? contactDown(state, event.down)
        : 'move' in event
          ? contactMoved(state, event.move, { px: event.to[0], py: event.to[1] })
          : 'up' in event
            ? contactGone(state, event.up, 'up')
            : contactGone(state, event.cancel, 'cancelled');
    state = turn.state;
    deeds.push(turn.deed);
  }
  return { state, deeds: deeds.map((deed) => deed.kind), last: deeds.at(-1)! };
}

describe('contacts on the paper', () => {
  it('one finger draws from down to up', () => {
    const { deeds, state } = played([{ down: contact(1, 'touch') }, { move: 1, to: [150, 100] }, { up: 1 }]);
    expect(deeds).toEqual(['begin', 'follow', 'finish']);
    expect(state).toEqual(NO_HANDS);
  });

  it('a second finger within a moment drops the stroke, and both move the paper', () => {
    const { deeds, last } = played([
      { down: contact(1, 'touch') },
      { move: 1, to: [130, 100] },
      { down: contact(2, 'touch', 0.2) },
      { move: 2, to: [260, 100] },
    ]);
    expect(deeds).toEqual(['begin', 'follow', 'drop', 'pull']);
    expect(last).toMatchObject({
      before: [
        { px: 100, py: 100 },
        { px: 200, py: 100 },
      ],
      now: [
        { px: 100, py: 100 },
        { px: 260, py: 100 },
      ],
    });
  });

  it('a second finger comes too late once a stroke is under way, and in time while the first rests', () => {
    const late = contact(2, 'touch', 0.8);
    const drawn = [{ down: contact(1, 'touch') }, { move: 1, to: [160, 100] as const }];
    expect(played([...drawn, { down: late }, { up: 2 }]).deeds).toEqual([
      'begin',
      'follow',
      'nothing',
      'nothing',
    ]);
    expect(played([{ down: contact(1, 'touch') }, { down: late }]).deeds).toEqual(['begin', 'drop']);
  });

  it('after a pinch the finger that stays moves the paper and draws nothing', () => {
    const { deeds, state } = played([
      { down: contact(1, 'touch') },
      { down: contact(2, 'touch', 0.1) },
      { up: 1 },
      { move: 2, to: [220, 140] },
      { up: 2 },
    ]);
    expect(deeds).toEqual(['begin', 'drop', 'nothing', 'pull', 'nothing']);
    expect(state).toEqual(NO_HANDS);
  });

  it('a pen draws though a palm came first, and fingers then only move the paper', () => {
    const { deeds, state } = played([
      { down: contact(1, 'touch') },
      { down: contact(2, 'pen', 2) },
      { move: 1, to: [180, 100] },
      { move: 2, to: [230, 100] },
      { up: 2 },
      { up: 1 },
      { down: contact(3, 'touch', 3) },
      { move: 3, to: [320, 100] },
    ]);
    expect(deeds).toEqual(['begin', 'begin', 'nothing', 'follow', 'finish', 'nothing', 'nothing', 'pull']);
    expect(state.pen).toBe(true);
  });

  it('once a pen is known a palm does nothing, and while it is down nor does a finger', () => {
    const pen: HandsState = { ...NO_HANDS, pen: true };
    const palm = contact(1, 'touch', 0, { size: 90 });
    expect(played([{ down: palm }, { move: 1, to: [0, 0] }], pen).deeds).toEqual(['nothing', 'nothing']);
    const both = [
      { down: contact(2, 'pen') },
      { down: contact(1, 'touch', 1) },
      { move: 1, to: [0, 0] as const },
    ];
    expect(played(both).deeds).toEqual(['begin', 'nothing', 'nothing']);
  });

  it('what the system takes away breaks the stroke off', () => {
    expect(played([{ down: contact(1, 'touch') }, { cancel: 1 }]).deeds).toEqual(['begin', 'break']);
  });

  it('the middle button pushes the paper', () => {
    const { deeds } = played([
      { down: contact(1, 'mouse', 0, { pushes: true }) },
      { move: 1, to: [0, 0] },
      { up: 1 },
    ]);
    expect(deeds).toEqual(['nothing', 'pull', 'nothing']);
  });
});

describe('wheel', () => {
  const turn = { dx: 0, dy: 0, coarse: false, control: false, shift: false, t: 0 };

  it('a notch zooms about the pointer, away from the hand is larger', () => {
    expect(new Wheel().turn({ ...turn, dy: -100 })).toEqual({ kind: 'zoom', factor: 1.25 });
    expect(new Wheel().turn({ ...turn, dy: 3, coarse: true })).toMatchObject({ kind: 'zoom' });
  });

  it('two fingers on a pad push the paper, however fast they get', () => {
    const wheel = new Wheel();
    expect(wheel.turn({ ...turn, dx: 4, dy: 9 })).toEqual({ kind: 'push', dx: -4, dy: -9 });
    expect(wheel.turn({ ...turn, dy: 120, t: 0.1 })).toEqual({ kind: 'push', dx: -0, dy: -120 });
    expect(wheel.turn({ ...turn, dy: 120, t: 1 })).toMatchObject({ kind: 'zoom' });
  });

  it('a pinch on a pad, small turns with Control, zooms finely', () => {
    expect(new Wheel().turn({ ...turn, dy: -10, control: true })).toEqual({
      kind: 'zoom',
      factor: 1.01 ** 10,
    });
  });

  it('with Shift a wheel pushes sideways', () => {
    expect(new Wheel().turn({ ...turn, dy: 100, shift: true })).toEqual({ kind: 'push', dx: -100, dy: 0 });
  });
});
