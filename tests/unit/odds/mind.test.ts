import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../shared/kit/second-kit.ts';
import {
  changeMind,
  enqueue,
  isOver,
  type Mind,
  newMind,
  nextMoment,
  takeDue,
  wayTaken,
} from '../../../shared/odds/mind.ts';

/** Creep 0, steady 1, brisk 2, fast 3; the demo robot begins at steady. */
const begun = (change: Partial<Mind> = {}): Mind => ({ ...newMind(DEMO_KIT, 2), pace: 1, ...change });

describe('changeMind', () => {
  it.each([
    [1, 2],
    [3, 3],
    [-3, 0],
  ])('by %i steps from steady comes to pace %i, within the four', (steps, pace) => {
    const mind = begun();
    changeMind(mind, { kind: 'pace-by', steps });
    expect(mind.pace).toBe(pace);
  });

  it('for a time comes back to the pace from before, also when it is asked twice', () => {
    const mind = begun();
    changeMind(mind, { kind: 'pace-for', pace: 'fast', time: 3 });
    mind.t = 4;
    changeMind(mind, { kind: 'pace-for', pace: 'creep', time: 3 });
    expect(mind.pace).toBe(0);
    expect(mind.queue).toHaveLength(1);
    expect(nextMoment(mind)).toBe(7);
    mind.t = 7;
    changeMind(mind, takeDue(mind)!.action);
    expect(mind.pace).toBe(1);
    expect(mind.queue).toEqual([]);
  });

  it('to a pace for good ends a pace that was for a time', () => {
    const mind = begun();
    changeMind(mind, { kind: 'pace-for', pace: 'fast', time: 3 });
    changeMind(mind, { kind: 'pace-to', pace: 'brisk' });
    expect(mind.pace).toBe(2);
    expect(mind.queue).toEqual([]);
  });

  it('keeps the newest choice, and waits from now on', () => {
    const mind = begun();
    changeMind(mind, { kind: 'choose', way: 'left' });
    changeMind(mind, { kind: 'choose', way: 'right' });
    changeMind(mind, { kind: 'wait', time: 5 });
    expect(mind.pending).toBe('right');
    expect(mind.heldUntil).toBe(7);
  });
});

describe('the queue', () => {
  it('gives what is due in the order of time', () => {
    const mind = begun();
    enqueue(mind, { due: 3, action: { kind: 'park' } });
    enqueue(mind, { due: 2.5, action: { kind: 'choose', way: 'left' } });
    expect(nextMoment(mind)).toBe(2.5);
    expect(takeDue(mind)).toBeUndefined();
    mind.t = 3;
    expect(takeDue(mind)?.action.kind).toBe('choose');
    expect(takeDue(mind)?.action.kind).toBe('park');
    expect(nextMoment(mind)).toBe(Number.POSITIVE_INFINITY);
  });

  it('passes over what may not begin yet', () => {
    const mind = begun({ t: 5 });
    enqueue(mind, { due: 3, action: { kind: 'turn-back' } });
    enqueue(mind, { due: 4, action: { kind: 'park' } });
    const follows = (action: { readonly kind: string }): boolean => action.kind !== 'turn-back';
    expect(nextMoment(mind, follows)).toBe(4);
    expect(takeDue(mind, follows)?.action.kind).toBe('park');
    expect(takeDue(mind, follows)).toBeUndefined();
    expect(takeDue(mind)?.action.kind).toBe('turn-back');
  });

  it('wakes at the end of waiting, and half a second after arriving', () => {
    const mind = begun({ heldUntil: 6, arrivedAt: 5 });
    expect(nextMoment(mind)).toBe(5.5);
    expect(isOver(mind)).toBe(false);
    mind.t = 5.5;
    expect(isOver(mind)).toBe(true);
  });
});

describe('wayTaken', () => {
  const both = ['left', 'straight'] as const;

  it('takes the chosen way and uses the choice up', () => {
    const mind = begun({ pending: 'left' });
    expect(wayTaken(mind, DEMO_KIT, both)).toEqual({ way: 'left', by: 'mark' });
    expect(mind.pending).toBeUndefined();
  });

  it('uses up a choice of an arm that is not there', () => {
    const mind = begun({ pending: 'right' });
    expect(wayTaken(mind, DEMO_KIT, both)).toBeUndefined();
    expect(mind.pending).toBeUndefined();
  });

  it('goes straight on by itself only with a kit that does', () => {
    expect(SECOND_KIT.robot.unmarkedJunction).toBe('straight');
    expect(wayTaken(begun(), SECOND_KIT, both)).toEqual({ way: 'straight', by: 'straight' });
    expect(wayTaken(begun(), SECOND_KIT, ['left', 'right'])).toBeUndefined();
    expect(wayTaken(begun(), DEMO_KIT, ['right'])).toEqual({ way: 'right', by: 'only' });
  });
});
