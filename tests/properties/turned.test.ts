import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Drawing, Drawing as DrawingDocument } from '../../shared/documents/design.ts';
import type { Formula } from '../../shared/documents/formula.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Area, Berth, Sheet } from '../../shared/documents/sheet.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import type { GoalResult, Verdict } from '../../shared/documents/verdict.ts';
import type { PaperPoint, Rad } from '../../shared/geometry/units.ts';
import { judge } from '../../shared/judge/judge.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { KITS } from '../kits.ts';
import { SOUND_SHEET, soundWith } from '../sound.ts';
import '../seed.ts';

/**
 * A whole sheet turned and shifted over a larger one is the same challenge: same findings and readings,
 * margins within 1 mm and 0.05 s, and the same goals met wherever the margin is larger than that.
 */
const SIZE = 900;
const NEAR = { mm: 1, s: 0.05, degrees: 0.1, ratio: 0.001, count: 0 } as const;

const stepped = (mm: number): number => Math.round(mm * 100) / 100;

type Place = (p: PaperPoint) => PaperPoint;

function turnedSheet(sheet: Sheet, angle: Rad, place: Place): Sheet {
  const berth = (b: Berth): Berth => ({ ...b, at: place(b.at), heading: b.heading + angle });
  const area = (a: Area): Area => ({ ...a, polygon: a.polygon.map(place) });
  return {
    ...sheet,
    w: SIZE,
    h: SIZE,
    start: berth(sheet.start),
    ...(sheet.finish ? { finish: berth(sheet.finish) } : {}),
    gates: sheet.gates.map((gate) => ({ ...gate, a: place(gate.a), b: place(gate.b) })),
    areas: sheet.areas.map(area),
    keepOut: sheet.keepOut.map(area),
    given: turnedDrawing(sheet.given, place),
  };
}

/** In the file form, as everything that is judged. */
function turnedDrawing(drawing: Drawing, place: Place): Drawing {
  const turned = {
    ...drawing,
    lines: drawing.lines.map((line) => ({
      ...line,
      from: place(line.from),
      pieces: line.pieces.map((piece) => ({ ...piece, to: place(piece.to) })),
    })),
  };
  const parsed = parseDocument(DrawingDocument, writeDocument(DrawingDocument, turned));
  if (!parsed.ok) throw new Error('a turned drawing is a drawing');
  return parsed.value;
}

function verdictOf(challenge: Challenge, drawing: Drawing, angle: Rad, shift: PaperPoint): Verdict {
  const { sheet } = challenge;
  const place: Place = ({ x, y }) => {
    const [px, py] = [x - sheet.w / 2, y - sheet.h / 2];
    return {
      x: stepped(SIZE / 2 + shift.x + px * Math.cos(angle) - py * Math.sin(angle)),
      y: stepped(SIZE / 2 + shift.y + px * Math.sin(angle) + py * Math.cos(angle)),
    };
  };
  const there: Challenge = { ...challenge, sheet: turnedSheet(sheet, angle, place) };
  return judge(there, { version: 1, drawing: turnedDrawing(drawing, place) }, 'live').verdict;
}

const told = ({ findings, runs }: Verdict) => ({
  findings: findings.map(({ rule, variant, severity }) => [rule, variant, severity].join(' ')).sort(),
  runs: runs.map((run) => [run.ending, run.probability, ...run.readings.map((r) => [r.word, r.mark])]),
});

/** Margins may differ by so much; a goal that is further from tipping is met in both or in neither. */
function expectNear(found: GoalResult, wanted: GoalResult): void {
  expect([found.id, found.unit, found.open]).toEqual([wanted.id, wanted.unit, wanted.open]);
  const near = NEAR[wanted.unit];
  expect(Math.abs(found.margin - wanted.margin)).toBeLessThanOrEqual(near);
  if (Math.abs(wanted.margin) > near) expect(found.met).toBe(wanted.met);
}

const SHIFTS = { x: fc.integer({ min: -60, max: 60 }), y: fc.integer({ min: -60, max: 60 }) } as const;
const turns = fc.record({ degrees: fc.integer({ min: 1, max: 359 }), ...SHIFTS });
type Turn = { readonly degrees: number; readonly x: number; readonly y: number };

function expectSame(challenge: Challenge, drawing: Drawing, { degrees, x, y }: Turn): void {
  const upright = verdictOf(challenge, drawing, 0, { x: 0, y: 0 });
  const turned = verdictOf(challenge, drawing, (degrees * Math.PI) / 180, { x, y });
  expect(told(turned)).toEqual(told(upright));
  // To which side a robot on a bare straight turns back is a tie, and rounding breaks it.
  const tie = upright.runs.some((run) => run.readings.some((r) => r.action?.kind === 'turn-back'));
  upright.goals.forEach((goal, i) => {
    if (!tie || challenge.goals[i]!.formula.kind !== 'keep-out') expectNear(turned.goals[i]!, goal);
  });
}

/** From here on a robot may come round a corner by keeping to the line, or by turning on the spot: both do. */
const WIDEST = 100;

const NEST = { id: 'nest', name: { en: 'nest' } };
const GOALS: readonly Formula[] = [
  { kind: 'finish' },
  { kind: 'way', how: 'at-least', length: 150 },
  { kind: 'time', from: 2, to: 8 },
  { kind: 'gates', gates: ['bridge'], ordered: true },
  { kind: 'stretches', pace: 'steady', how: 'at-least', count: 1, length: 80 },
  { kind: 'keep-out' },
];

/** Goals in mm, seconds and counts over a sound drawing, with the finish where its line ends. */
function challengeOver(kit: Kit, { lines }: Drawing): Challenge {
  const sheet: Sheet = {
    ...SOUND_SHEET,
    finish: { name: { en: 'lighthouse' }, at: lines[0]!.pieces.at(-1)!.to, heading: 0, r: 12 },
    gates: [{ id: 'bridge', name: { en: 'bridge' }, a: { x: 95, y: 70 }, b: { x: 95, y: 106 } }],
    keepOut: [
      {
        ...NEST,
        polygon: [
          { x: 60, y: 112 },
          { x: 90, y: 116 },
          { x: 70, y: 140 },
        ],
      },
    ],
  };
  return {
    version: 1,
    id: 'turned',
    topic: 1,
    sentence: { en: 'Drive.' },
    play: 'draw',
    kit,
    sheet,
    starts: ['start'],
    goals: GOALS.map((formula, i) => ({ id: `g${i}`, formula, must: true, weight: 1 })),
    limits: { time: 15 },
  };
}

describe('judge on a sheet that was turned and shifted', () => {
  test('sound drawings: same findings and readings, margins within 1 mm and 0.05 s', () => {
    fc.assert(
      fc.property(soundWith(WIDEST), turns, ([kit, drawing], turn) => {
        expectSame(challengeOver(kit, drawing), drawing, turn);
      }),
      { numRuns: 40 },
    );
  });

  const models = KITS.flatMap((kit) =>
    readyChallenges(kit).flatMap((one) => {
      const model = one.playable ? one.challenge.model : undefined;
      return one.playable && model ? [[one.key, kit.id, one.challenge, model.drawing] as const] : [];
    }),
  );
  test.each(models)('%s with the kit %s: the same of what the maker drew', (_, __, challenge, drawing) => {
    fc.assert(
      fc.property(turns, (turn) => {
        expectSame(challenge, drawing, turn);
      }),
      { numRuns: 2 },
    );
  });
});
