import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing, Line } from '../../shared/documents/design.ts';
import type { Verdict } from '../../shared/documents/verdict.ts';
import { judge } from '../../shared/judge/judge.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { bandsOf, KITS, wordFor } from '../kits.ts';
import '../seed.ts';

interface Case {
  readonly name: string;
  readonly challenge: Challenge;
  readonly drawing: Drawing;
}

/** What the makers drew, and a drawing with a sharp corner and a mark that stands too close to it. */
const cases: Case[] = KITS.flatMap(readyChallenges).flatMap((one) => {
  if (!one.playable || one.challenge.play !== 'draw') return [];
  const { challenge } = one;
  const { kit } = challenge;
  const way: Line = {
    id: 'way',
    width: kit.rules.lineWidth.nominal,
    from: { x: 42, y: 160 },
    pieces: [
      { to: { x: 222, y: 160 }, bulge: 0 },
      { to: { x: 126.88, y: 74.35 }, bulge: 0 },
    ],
  };
  const bands = bandsOf(kit, wordFor(kit, 'pace-by', { steps: 1 }));
  const marks = [{ id: 'late', line: 'way', at: 160, bands }];
  return [
    { name: `${one.key} with the kit ${kit.id}, the model`, challenge, drawing: challenge.model!.drawing },
    { name: `${one.key} with the kit ${kit.id}, faulty`, challenge, drawing: { lines: [way], marks } },
  ];
});

/** A line cut in two at the end of piece `piece`, its marks moved along. */
function cut(drawing: Drawing, line: Line, piece: number, ways: readonly number[]): Drawing {
  const way = ways[piece]!;
  const rest: Line = {
    ...line,
    id: `${line.id}-rest`,
    from: line.pieces[piece]!.to,
    pieces: line.pieces.slice(piece + 1),
  };
  const first: Line = { ...line, pieces: line.pieces.slice(0, piece + 1) };
  const marks = drawing.marks.map((mark) =>
    mark.line === line.id && mark.at >= way
      ? { ...mark, line: rest.id, at: Math.round((mark.at - way) * 100) / 100 }
      : mark,
  );
  return { lines: [...drawing.lines.filter((l) => l !== line), rest, first], marks };
}

/** The first straight, along an axis, drawn as two pieces that meet at a hundredth of a millimetre. */
function inTwoPieces(line: Line, share: number): Line {
  const [first, ...others] = line.pieces;
  const middle = {
    x: Math.round((line.from.x + (first!.to.x - line.from.x) * share) * 100) / 100,
    y: Math.round((line.from.y + (first!.to.y - line.from.y) * share) * 100) / 100,
  };
  return { ...line, pieces: [{ to: middle, bulge: 0 }, first!, ...others] };
}

/** What must be the same for equal designs. Places and remedies speak of the lines as they were drawn. */
const essence = (verdict: Verdict) => ({
  ...verdict,
  findings: verdict.findings.map(({ place, remedy, ...finding }) => ({ ...finding, at: place.at })),
});

const judged = (challenge: Challenge, drawing: Drawing, level: Verdict['level'] = 'live') =>
  essence(judge(challenge, { version: 1, drawing }, level).verdict);

describe('judge', () => {
  for (const { name, challenge, drawing: model } of cases) {
    const line = model.lines[0]!;

    test(`${name}: reordering and splitting lines changes no bit of the verdict`, () => {
      const expected = judged(challenge, model);
      fc.assert(
        fc.property(
          fc.double({ min: 0.05, max: 0.95, noNaN: true }),
          fc.boolean(),
          fc.shuffledSubarray(model.marks, { minLength: model.marks.length }),
          (share, split, marks) => {
            const pieced = inTwoPieces(line, share);
            const start = Math.abs(pieced.pieces[0]!.to.x - line.from.x);
            const length = Math.round(start * 100) / 100;
            const whole: Drawing = { lines: [pieced, ...model.lines.slice(1)], marks };
            const free = marks.every((m) => m.line !== line.id || m.at + 30 < length || m.at > length);
            const drawing = split && free ? cut(whole, pieced, 0, [length]) : whole;
            expect(judged(challenge, drawing)).toEqual(expected);
          },
        ),
        { numRuns: 12 },
      );
    });

    test(`${name}: the other direction of drawing changes no bit of the verdict`, () => {
      const ends = [line.from, ...line.pieces.map((piece) => piece.to)];
      const backwards: Line = {
        ...line,
        from: ends.at(-1)!,
        pieces: line.pieces.map((piece, i) => ({ to: ends[i]!, bulge: -piece.bulge })).reverse(),
      };
      // Marks of a turned line need the exact length; this part of the property is about bare lines.
      expect(judged(challenge, { lines: [backwards], marks: [] })).toEqual(
        judged(challenge, { lines: [line], marks: [] }),
      );
    });

    test(`${name}: an entry that was drawn otherwise has the same odds and the same robots`, () => {
      const otherwise = { lines: [inTwoPieces(line, 0.4), ...model.lines.slice(1)], marks: model.marks };
      expect(judged(challenge, otherwise, 'entry')).toEqual(judged(challenge, model, 'entry'));
    });

    test(`${name}: judged as an entry, every trace has the same bits`, () => {
      const once = judge(challenge, { version: 1, drawing: model }, 'live');
      const again = judge(challenge, { version: 1, drawing: model }, 'entry');
      expect(again.traces).toEqual(once.traces);
      expect(again.verdict.runs).toEqual(once.verdict.runs);
      once.verdict.goals.forEach((goal, i) => {
        if (!goal.open) expect(again.verdict.goals[i]).toEqual(goal);
      });
      // Disturbed robots may change how serious a finding is, not what is found, nor what stops a robot; only
      // entries come with mended designs.
      const plain = (verdict: Verdict) =>
        verdict.findings.map(({ severity, remedy, ...finding }) => ({
          ...finding,
          stops: severity === 'stops',
          remedy: remedy?.code,
        }));
      expect(plain(again.verdict)).toEqual(plain(once.verdict));
      expect(again.verdict.odds).toHaveLength(challenge.starts.length);
      expect(again.verdict.steadiness?.of).toBe(20);
      expect(once.verdict.runs.map((run) => run.traceHash)).toEqual(once.traces.map((trace) => trace.hash));
    });
  }
});
