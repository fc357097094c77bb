import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { judge } from '../../shared/judge/judge.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { KITS } from '../kits.ts';
import '../seed.ts';

/** Designs in their file form, wild but within the schema: far off the sheet, doubled, on missing lines. */
const hundredths = (least: number, most: number) => fc.integer({ min: least * 100, max: most * 100 });
const point = fc.record({ x: hundredths(-30, 330), y: hundredths(-30, 240) });
const line = fc.record({
  width: hundredths(0, 12),
  from: point,
  pieces: fc.array(fc.record({ to: point, bulge: fc.double({ min: -3, max: 3, noNaN: true }) }), {
    minLength: 1,
    maxLength: 4,
  }),
});
const mark = (inks: readonly string[]) =>
  fc.record({
    line: fc.constantFrom('line-0', 'line-1', 'way', 'street', 'gone'),
    at: hundredths(0, 300),
    bands: fc.array(
      fc.record({ ink: fc.constantFrom(...inks), length: hundredths(0, 30), gap: hundredths(-6, 6) }),
      { minLength: 1, maxLength: 5 },
    ),
  });
const named = <T>(name: string, things: readonly T[]) => things.map((t, i) => ({ id: `${name}-${i}`, ...t }));
const designIn = (inks: readonly string[]) =>
  fc
    .tuple(fc.array(line, { maxLength: 3 }), fc.array(mark(inks), { maxLength: 3 }))
    .map(([lines, marks]) => ({
      version: 1,
      drawing: { lines: named('line', lines), marks: named('mark', marks) },
    }));

const challenges: Challenge[] = KITS.flatMap(readyChallenges).flatMap((one) =>
  one.playable ? [{ ...one.challenge, limits: { time: 8 } }] : [],
);
const entries = fc
  .constantFrom(...challenges)
  .chain((challenge) =>
    designIn(challenge.kit.inks.map((ink) => ink.id)).map((file) => ({ challenge, file })),
  );

test('any design that its schema accepts is judged or refused, and the verdict can be written', () => {
  fc.assert(
    fc.property(entries, ({ challenge, file }) => {
      const parsed = parseDocument(Design, file);
      fc.pre(parsed.ok);
      const { verdict, refusal } = judge(challenge, parsed.value, 'entry');
      const again = parseDocument(Verdict, JSON.parse(JSON.stringify(writeDocument(Verdict, verdict))));
      expect(again.ok).toBe(true);
      if (refusal) expect(verdict.met).toBe(false);
      expect(verdict.total).toBe(verdict.points.reduce((sum, l) => sum + l.got, 0));
    }),
    { numRuns: 60 },
  );
});
