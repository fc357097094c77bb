import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { newMind, type Waiting } from '../../../shared/odds/mind.ts';
import { copyOf, endAt, memoryOf, placeKey, type Ride } from '../../../shared/odds/ride.ts';
import { roadMap } from '../../../shared/odds/roads.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { fromStart, lighthouseAt } from './tracks.ts';

const sheet = lighthouseAt(210, 150);
const drawing = fromStart().straight(100).turn(90).straight(80).drawing();
const map = () => roadMap(buildTrack(layOut(sheet, drawing), DEMO_KIT), sheet, DEMO_KIT);
const journey = () => ({ ...map(), to: sheet.finish });
/** The road to the corner, or the one behind it. */
const road = (which: 0 | 1) => {
  const { track, from } = map();
  return from(track.edges.filter((edge) => edge.along)[which]!.index);
};

const ride = (change: Partial<Ride> = {}): Ride => ({
  ...newMind(DEMO_KIT, 10),
  road: road(0),
  way: 30,
  speed: 40,
  plainFrom: 0,
  sinceJunction: 5,
  counts: true,
  ...change,
});
const waiting = (due: number, more: Partial<Waiting> = {}): Waiting => ({
  due,
  action: { kind: 'park' },
  ...more,
});
const queued = (...queue: Waiting[]) => ride({ queue });

describe('memoryOf', () => {
  const differ = (a: Ride, b: Ride) => memoryOf(a) !== memoryOf(b);

  it('tells rides apart by what they have in mind', () => {
    expect(differ(ride(), ride())).toBe(false);
    expect(differ(ride(), ride({ pace: 2 }))).toBe(true);
    expect(differ(ride(), ride({ pending: 'left' }))).toBe(true);
    expect(differ(ride({ pending: 'right' }), ride({ pending: 'left' }))).toBe(true);
    expect(differ(ride(), ride({ counts: false }))).toBe(true);
    expect(differ(ride(), ride({ speed: 41 }))).toBe(true);
    expect(differ(ride(), ride({ heldUntil: 11 }))).toBe(true);
    expect(differ(ride({ heldUntil: 11 }), ride({ heldUntil: 11.1 }))).toBe(true);
  });

  it('tells rides apart by what waits, for how long, and in which order', () => {
    const choice = waiting(11, { action: { kind: 'choose', way: 'left' } });
    expect(differ(ride(), queued(waiting(11)))).toBe(true);
    expect(differ(queued(waiting(11)), queued(choice))).toBe(true);
    expect(differ(queued(waiting(11)), queued(waiting(11, { paceEnds: true })))).toBe(true);
    expect(differ(queued(waiting(11)), queued(waiting(11.1)))).toBe(true);
    expect(differ(queued(waiting(11), choice), queued(choice, waiting(11)))).toBe(true);
  });

  it('holds those for alike that go on alike: later by the clock, by less than half a step, or held in the past', () => {
    const later = queued(waiting(31));
    later.t = 30;
    later.heldUntil = 29;
    expect(differ(queued(waiting(11)), later)).toBe(false);
    expect(differ(queued(waiting(11)), queued(waiting(11.02)))).toBe(false);
    expect(differ(ride(), ride({ speed: 40.4, heldUntil: 3, way: 90, sinceJunction: 0 }))).toBe(false);
  });
});

describe('placeKey', () => {
  it('tells the road and the way, to a millimetre, beside what the ride has in mind', () => {
    expect(placeKey(ride())).toBe(placeKey(ride({ way: 30.4 })));
    const others = [ride({ way: 31 }), ride({ road: road(1) }), ride({ pace: 3 })].map(placeKey);
    expect(new Set([placeKey(ride()), ...others]).size).toBe(4);
  });
});

describe('copyOf', () => {
  it('has a queue of its own', () => {
    const one = queued(waiting(11));
    const copy = copyOf(one);
    copy.queue.push(waiting(12));
    copy.way = 50;
    expect([one.queue.length, one.way]).toEqual([1, 30]);
    expect(copy.queue[0]).toEqual(waiting(11));
  });
});

describe('endAt', () => {
  it('is the place of the axle and the time, with nobody arrived', () => {
    expect(endAt(journey(), ride(), 'parked')).toEqual({
      kind: 'end',
      ending: 'parked',
      at: { x: 60, y: 150 },
      t: 10,
      arrived: false,
    });
  });

  it('of one that has arrived is in the berth, at the time when it came there', () => {
    expect(endAt(journey(), ride({ arrivedAt: 9.5 }), 'finished')).toEqual({
      kind: 'end',
      ending: 'finished',
      at: { x: 210, y: 150 },
      t: 9.5,
      arrived: true,
    });
    expect(endAt(journey(), ride({ arrivedAt: 9.5 }), 'off-paper')).toMatchObject({
      at: { x: 60, y: 150 },
      arrived: true,
    });
  });
});
