import { EventEmitter } from 'node:events';
import type { Socket } from 'node:net';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Silent } from '../../../server/sockets/silence.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A connection that notes whether it was closed. */
class Connection extends EventEmitter {
  destroyed = false;
  destroy(): void {
    this.destroyed = true;
    this.emit('close');
  }
}
const connection = () => new Connection() as Connection & Socket;

it('closes a connection without a seat when its time is over', () => {
  const silent = new Silent({ withinMs: 1000, most: 1 });
  const one = connection();
  expect(silent.enter(one, 'a')).toBe(true);
  vi.advanceTimersByTime(999);
  expect(one.destroyed).toBe(false);
  vi.advanceTimersByTime(1);
  expect(one.destroyed).toBe(true);
  expect(silent.enter(connection(), 'a')).toBe(true);
});

it('gives one whose hello was refused its time anew, and its place to nobody', () => {
  const silent = new Silent({ withinMs: 1000, most: 1 });
  const one = connection();
  silent.enter(one, 'a');
  for (let i = 0; i < 5; i++) {
    vi.advanceTimersByTime(900);
    silent.asked(one);
  }
  expect([one.destroyed, silent.enter(connection(), 'a')]).toEqual([false, false]);
  vi.advanceTimersByTime(1000);
  expect([one.destroyed, silent.enter(connection(), 'a')]).toEqual([true, true]);
});

it('waits no longer for one that has its seat, and gives its place to the next', () => {
  const silent = new Silent({ withinMs: 1000, most: 1 });
  const one = connection();
  silent.enter(one, 'a');
  silent.leave(one);
  vi.advanceTimersByTime(5000);
  expect([one.destroyed, silent.enter(connection(), 'a')]).toEqual([false, true]);
});
