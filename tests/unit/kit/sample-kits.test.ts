import { describe, expect, test } from 'vitest';
import { Kit, reversed } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { checkKit } from '../../../shared/kit/check-kit.ts';
import { COLOURS_APART, pairDifferences } from '../../../shared/kit/differences.ts';
import { isTwoWay, wordsOf } from '../../../shared/kit/words.ts';
import { KITS } from '../../kits.ts';

describe.each(KITS)('the kit $id', (kit) => {
  test('passes the check of its chart and inks', () => {
    expect(checkKit(kit)).toEqual([]);
  });
  test('is the same after writing and reading', () => {
    const file = JSON.parse(JSON.stringify(writeDocument(Kit, kit)));
    expect(parseDocument(Kit, file)).toEqual({ ok: true, value: kit });
  });
  test('any two of its colours stay apart for every kind of sight', () => {
    const differences = pairDifferences(kit).map(({ least }) => least.difference);
    // Paper, line and inks.
    expect(differences).toHaveLength(((kit.inks.length + 2) * (kit.inks.length + 1)) / 2);
    expect(Math.min(...differences)).toBeGreaterThan(COLOURS_APART);
  });
  test('its words are words of its inks, and read from behind they mean something too', () => {
    const words = kit.chart.map((row) => row.word);
    const possible = [2, 3, 4].flatMap((bands) => wordsOf(kit, bands));
    expect(words.filter((word) => !possible.includes(word))).toEqual([]);
    expect(words.filter((word) => !words.includes(reversed(word)))).toEqual([]);
    expect(kit.chart.filter((row) => row.action.kind === 'turn-back').some((row) => isTwoWay(row.word))).toBe(
      false,
    );
  });
  test('tidy bands are accepted ones, and the robot expects a tidy band', () => {
    const { bands, lineWidth } = kit.rules;
    const lengths = [
      bands.shortest,
      bands.tidyShortest,
      kit.robot.bandUnit,
      bands.tidyLongest,
      bands.longest,
    ];
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    expect(lineWidth.nominal).toBeGreaterThan(lineWidth.least);
    expect(lineWidth.nominal).toBeLessThan(lineWidth.most);
  });
});

test('the second kit shares no number of its robot and no ink with the demo kit', () => {
  const [demo, second] = KITS;
  const numbers = (kit: Kit | undefined) =>
    Object.entries({ ...kit!.robot, ...kit!.robot.paces }).filter(([, value]) => typeof value === 'number');
  const same = numbers(demo).filter(([name, value]) =>
    numbers(second).some(([n, v]) => n === name && v === value),
  );
  expect(same).toEqual([]);
  const inks = (kit: Kit | undefined) => kit!.inks.map((ink) => ink.id);
  expect(inks(demo).filter((ink) => inks(second).includes(ink))).toEqual([]);
  expect([demo!.equalNeighbours, second!.equalNeighbours]).toEqual([false, true]);
});
