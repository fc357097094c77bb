import { describe, expect, it } from 'vitest';
import type { Action, Pace } from '../../../shared/documents/kit.ts';
import type { Ending, RunEvent } from '../../../shared/documents/trace.ts';
import { partingOf } from '../../../shared/steadiness/compare.ts';
import { chancesOf, storyOf } from '../../../shared/steadiness/story.ts';

/** Runs along a street, written by hand: the way is the x of the place. */
const where = (x: number, y = 0) => ({ t: x / 40, x, y, way: x, pace: 'steady' as Pace });

interface Told {
  readonly what: readonly RunEvent[];
}
const faster: Action = { kind: 'pace-by', steps: 1 };

/** A mark that is read and obeyed 30 mm later. */
const mark = (x: number, word = 'CA', action: Action = faster, already = false) => ({
  read: { x, word, action, already },
});
const junction = (
  x: number,
  took: 'left' | 'straight' | 'right',
  by: 'mark' | 'chance' | 'straight',
): Told => ({
  what: [{ kind: 'junction', ...where(x), took, by, arms: ['left', 'straight', 'right'] }],
});
const finish = (x: number): Told => ({ what: [{ kind: 'finish', ...where(x) }] });

function story(parts: readonly (Told | ReturnType<typeof mark>)[], ending: Ending, x: number, y = 0) {
  const events: RunEvent[] = [];
  for (const part of parts) {
    if ('what' in part) {
      events.push(...part.what);
      continue;
    }
    const { read } = part;
    const index = events.length;
    events.push({
      kind: 'read',
      ...where(read.x),
      word: read.word,
      mark: `m${read.x}`,
      along: true,
      action: read.action,
      already: read.already,
    });
    events.push({ kind: 'act', ...where(read.x + 30), action: read.action, read: index });
  }
  events.push({ kind: 'end', ...where(x), y, ending });
  return storyOf({ start: 'start', seed: 1, ending, events });
}

const left: Action = { kind: 'choose', way: 'left' };
const ideal = story(
  [mark(60), mark(120, 'AV', left), junction(200, 'left', 'mark'), finish(300)],
  'finished',
  310,
);

describe('a disturbed robot', () => {
  it('that obeys the same marks at the same junctions and arrives does the same, a little aside', () => {
    const other = story(
      [mark(64), mark(115, 'AV', left), junction(206, 'left', 'mark'), finish(302)],
      'finished',
      330,
    );
    expect(partingOf(ideal, other)).toBeUndefined();
  });

  it('that does not read a mark missed it, where the undisturbed one read it', () => {
    const other = story([mark(120, 'AV', left), junction(200, 'left', 'mark'), finish(300)], 'finished', 310);
    expect(partingOf(ideal, other)).toEqual({ cause: 'mark-missed', at: { x: 60, y: 0 }, mark: 'm60' });
  });

  it('that reads another word at the same place misread it', () => {
    const other = story([mark(66, 'AC')], 'lost', 150);
    expect(partingOf(ideal, other)).toEqual({ cause: 'mark-misread', at: { x: 66, y: 0 }, mark: 'm66' });
  });

  it('that reads a mark where the undisturbed one reads none misread it', () => {
    const other = story(
      [mark(60), mark(90, 'VC'), mark(120, 'AV', left), junction(200, 'left', 'mark'), finish(300)],
      'finished',
      310,
    );
    expect(partingOf(ideal, other)).toMatchObject({ cause: 'mark-misread', mark: 'm90' });
  });

  it('that takes another way at a junction took another branch there', () => {
    const other = story(
      [mark(60), mark(120, 'AV', left), junction(203, 'right', 'mark'), finish(300)],
      'finished',
      310,
    );
    expect(partingOf(ideal, other)).toEqual({ cause: 'other-branch', at: { x: 203, y: 0 } });
  });

  it('that takes the right way by luck does not do the same', () => {
    const other = story(
      [mark(60), mark(120, 'AV', left), junction(200, 'left', 'chance'), finish(300)],
      'finished',
      310,
    );
    expect(partingOf(ideal, other)).toMatchObject({ cause: 'other-branch' });
  });

  it.each([
    ['lost', 'lost'],
    ['off-paper', 'off-paper'],
    ['time-up', 'time-up'],
  ] as const)('that ends %s before the next mark is said to have: %s', (ending, cause) => {
    const other = story([mark(60)], ending, 110, 7);
    expect(partingOf(ideal, other)).toEqual({ cause, at: { x: 110, y: 7 } });
  });

  it('that passed a mark and is lost later missed the mark', () => {
    expect(partingOf(ideal, story([mark(60)], 'lost', 160))).toMatchObject({
      cause: 'mark-missed',
      mark: 'm120',
    });
  });

  it('that stops or parks far from where the undisturbed one does ends elsewhere', () => {
    const parked = (x: number) => story([mark(60)], 'parked', x);
    expect(partingOf(parked(200), parked(224))).toBeUndefined();
    expect(partingOf(parked(200), parked(226))).toEqual({ cause: 'other-end', at: { x: 226, y: 0 } });
    expect(partingOf(parked(200), story([mark(60)], 'finished', 200))).toMatchObject({ cause: 'other-end' });
  });
});

describe('what does not matter', () => {
  const plain = story([finish(300)], 'finished', 310);

  it('a mark that says nothing, or what is so already', () => {
    const pass = mark(60, 'CV', { kind: 'nothing' });
    const again = mark(90, 'CA', faster, true);
    expect(partingOf(plain, story([pass, again, finish(300)], 'finished', 310))).toBeUndefined();
    expect(partingOf(story([pass, again, finish(300)], 'finished', 310), plain)).toBeUndefined();
  });

  it('a mark that was not obeyed any more before the end, or after the arrival', () => {
    const late = { what: [...story([mark(290)], 'finished', 300).turns] };
    expect(partingOf(plain, story([late, finish(300)], 'finished', 310))).toBeUndefined();
    expect(partingOf(plain, story([finish(300), mark(320)], 'finished', 330))).toBeUndefined();
  });

  it('a corner that one of them took for a junction', () => {
    const seen = story([junction(100, 'left', 'chance'), finish(300)], 'finished', 310);
    expect(partingOf(seen, plain)).toBeUndefined();
    expect(partingOf(plain, seen)).toBeUndefined();
  });

  it('being slower, where time was up for both', () => {
    const far = story([mark(60), mark(400)], 'time-up', 420);
    const near = story([mark(60)], 'time-up', 390);
    expect(partingOf(far, near)).toBeUndefined();
    expect(partingOf(near, far)).toBeUndefined();
    const further = story([mark(60), mark(400)], 'time-up', 470);
    expect(partingOf(further, story([mark(60)], 'time-up', 600))).toMatchObject({ cause: 'mark-missed' });
  });

  it('but the same place on the next round is another passage', () => {
    // Read at 60 of the first round and at 60 of the second, whose way is 500 further.
    const round = (way: number): Told => ({
      what: [{ kind: 'turn-back', ...where(60), way }],
    });
    const twice = story([round(60), round(560)], 'time-up', 900);
    expect(partingOf(twice, story([round(560)], 'time-up', 900))).toMatchObject({ cause: 'other-branch' });
  });
});

describe('chancesOf', () => {
  it('keeps the junctions that nothing decided, in order', () => {
    const told = story(
      [junction(10, 'left', 'chance'), junction(60, 'straight', 'straight'), junction(90, 'right', 'chance')],
      'stopped',
      100,
    );
    expect(chancesOf(told).map((event) => event.took)).toEqual(['left', 'right']);
  });
});
