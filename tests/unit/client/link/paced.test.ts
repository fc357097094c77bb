import { expect, it } from 'vitest';
import { paced } from '../../../../client/link/paced.ts';
import { FakeTimers } from './fakes.ts';

function counted() {
  const timers = new FakeTimers();
  const done = { times: 0 };
  const { changed, stop } = paced(() => done.times++, 1000, timers.after);
  return { timers, done, changed, stop };
}

it('does the first change at once, and all that come within the pause together at its end', async () => {
  const { timers, done, changed } = counted();
  changed();
  expect(done.times).toBe(1);
  for (const ms of [300, 300, 300]) {
    await timers.pass(ms);
    changed();
  }
  expect(done.times).toBe(1);
  await timers.pass(100);
  expect(done.times).toBe(2);
});

it('rests where nothing changes, and does the next change at once again', async () => {
  const { timers, done, changed } = counted();
  changed();
  await timers.pass(5000);
  expect(done.times).toBe(1);
  changed();
  expect(done.times).toBe(2);
});

it('does nothing more once it was stopped', async () => {
  const { timers, done, changed, stop } = counted();
  changed();
  changed();
  stop();
  await timers.pass(5000);
  expect(done.times).toBe(1);
});
