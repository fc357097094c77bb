import { describe, expect, it } from 'vitest';
import { PACES } from '../../../shared/documents/kit.ts';
import type { RunEvent, Trace } from '../../../shared/documents/trace.ts';
import { durationOf, poseAt, replayOf } from '../../../shared/picture/replay.ts';
import { runMarks } from '../../../shared/picture/run-marks.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { FULL_SHEET, STRAIGHT } from './picture-setting.ts';

const SPEED = 50;
/** A made-up run along the straight at 50 mm/s for 4 s; fast from 1 s (x = 100) to 3 s (x = 200). */
function traceWith(events: readonly RunEvent[]): Trace {
  const n = 201;
  const of = (value: (t: number) => number) => Array.from({ length: n }, (_, i) => value(i / 50));
  return {
    version: 1,
    start: 'start',
    probability: 1,
    seed: 0,
    ending: 'stopped',
    samples: {
      x: of((t) => 50 + SPEED * t),
      y: of(() => 150),
      cos: of(() => 1),
      sin: of(() => 0),
      way: of((t) => SPEED * t),
      pace: of((t) => PACES.indexOf(t >= 1 && t < 3 ? 'fast' : 'steady')),
    },
    events: [...events],
    keepOut: {},
    edge: 40,
    hash: '00000000',
  };
}

const where = (t: number) => ({ t, x: 50 + SPEED * t, y: 150, way: SPEED * t, pace: 'steady' as const });
const FASTER = { kind: 'pace-by', steps: 1 } as const;
const EVENTS: readonly RunEvent[] = [
  { kind: 'read', ...where(0.9), word: 'CA', mark: 'm1', along: true, action: FASTER, already: false },
  { kind: 'act', ...where(1), action: FASTER, read: 0 },
  { kind: 'pace', ...where(1), pace: 'fast', from: 'brisk' },
  { kind: 'pace', ...where(3), pace: 'steady', from: 'fast' },
  { kind: 'end', ...where(4), ending: 'stopped' },
];
const layout = layOut(FULL_SHEET, STRAIGHT);
const replay = replayOf(traceWith(EVENTS), layout);

describe('poseAt', () => {
  it('stands between two samples in proportion', () => {
    const pose = poseAt(traceWith(EVENTS), 0.51);
    expect(pose.at.x).toBeCloseTo(75.5, 9);
    expect(pose.heading).toEqual({ x: 1, y: 0 });
  });

  it('waits at the first place before the run and at the last one after it', () => {
    expect(poseAt(traceWith(EVENTS), -1).at.x).toBe(50);
    expect(poseAt(traceWith(EVENTS), 99).at.x).toBe(250);
  });

  it('knows the pace of the moment', () => {
    expect([0.5, 1.5, 3.5].map((t) => poseAt(traceWith(EVENTS), t).pace)).toEqual([
      'steady',
      'fast',
      'steady',
    ]);
  });
});

describe('replayOf', () => {
  it('lasts as long as its samples', () => {
    expect(durationOf(traceWith(EVENTS))).toBe(4);
  });

  it('says each reading at its mark, and when it acted', () => {
    expect(replay.readings).toHaveLength(1);
    // The mark reaches from 40 to 51.5 mm along a line that begins at x = 50.
    expect(replay.readings[0]).toMatchObject({ t: 0.9, word: 'CA', actedAt: 1, at: { x: 95.75, y: 150 } });
  });

  it('puts a tick where a mark acts, on the line', () => {
    expect(replay.acts).toEqual([{ t: 1, action: FASTER, at: { x: 100, y: 150 }, along: { x: 1, y: 0 } }]);
  });

  it('knows where it was driven fast, from when the pace was until it was no more', () => {
    expect(replay.fast).toHaveLength(1);
    const { t, s } = replay.fast[0]!;
    expect([t[0], t.at(-1)]).toEqual([1, 3]);
    expect(s[0]).toBeCloseTo(50, 6);
    expect(s.at(-1)).toBeCloseTo(150, 6);
  });

  it('a stretch that lasts to the end of the run ends with it', () => {
    const open = replayOf(traceWith(EVENTS.filter((event) => event.t !== 3)), layout);
    expect(open.fast[0]!.s.at(-1)).toBeCloseTo(200, 6);
  });
});

describe('runMarks', () => {
  const marks = runMarks(replay);

  it('come in the order of the run, the tick where its mark acts', () => {
    expect(marks.map(({ t }) => t)).toEqual([...marks.map(({ t }) => t)].sort((a, b) => a - b));
    // Across the line at y = 150: from 3.4 to 6.5 mm on each side, a foot of 3.2 mm at each end.
    expect(marks.filter(({ kind }) => kind === 'tick')).toEqual([
      {
        t: 1,
        kind: 'tick',
        d: 'M100 146.6L100 143.5M98.4 143.5L101.6 143.5M100 153.4L100 156.5M98.4 156.5L101.6 156.5',
      },
    ]);
  });

  it('dashes of 5 mm every 8.2 mm beside what was driven fast, each when it has been passed', () => {
    const dashes = marks.filter(({ kind }) => kind === 'dash');
    // 100 mm at 50 mm/s from 1 s on: the k-th dash ends 8.2 k + 5 mm along, the last one at the end.
    expect(dashes).toHaveLength(13);
    dashes.forEach(({ t }, k) => {
      expect(t).toBeGreaterThanOrEqual(1 + Math.min(8.2 * k + 5, 100) / SPEED - 1e-9);
      expect(t).toBeLessThan(1 + Math.min(8.2 * k + 5, 100) / SPEED + 0.021);
    });
    // 4.5 mm beside half the width of the line, on both sides.
    const off = layout.lines[0]!.width / 2 + 4.5;
    expect(dashes[0]!.d.match(/M100 [\d.]+/g)).toEqual([`M100 ${150 - off}`, `M100 ${150 + off}`]);
  });

  it('a part that is driven the other way round begins at its far end', () => {
    const part = replay.fast[0]!;
    const back = { ...replay, acts: [], fast: [{ ...part, s: [...part.s].reverse() }] };
    expect(runMarks(back)[0]!.d).toContain('200 ');
  });
});
