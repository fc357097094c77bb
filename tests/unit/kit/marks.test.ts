import { expect, test } from 'vitest';
import type { ChartRow } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { chartOf, marksOf } from '../../../shared/kit/marks.ts';
import { KITS } from '../../kits.ts';

const row = (word: string, action: ChartRow['action'] = { kind: 'nothing' }): ChartRow => ({ word, action });

test('marksOf has one row a mark, with what it means from each end', () => {
  // Product's chart: three one-way pairs of two bands, six two-way words of three.
  expect(marksOf(DEMO_KIT.chart)).toHaveLength(9);
  expect(marksOf(DEMO_KIT.chart).slice(0, 4)).toEqual([
    { word: 'CA', action: { kind: 'pace-by', steps: 1 }, back: { kind: 'pace-by', steps: -1 } },
    { word: 'AV', action: { kind: 'choose', way: 'left' }, back: { kind: 'choose', way: 'right' } },
    { word: 'VC', action: { kind: 'turn-back' }, back: { kind: 'nothing' } },
    { word: 'ACA', action: { kind: 'choose', way: 'straight' }, back: null },
  ]);
});

test.each(KITS)('chartOf gives the chart of $id back, word for word', (kit) => {
  const byWord = (chart: readonly ChartRow[]) => new Map(chart.map(({ word, action }) => [word, action]));
  expect(byWord(chartOf(marksOf(kit.chart)))).toEqual(byWord(kit.chart));
  expect(chartOf(marksOf(DEMO_KIT.chart))).toEqual(DEMO_KIT.chart);
});

test('a word that stands there twice stays two rows, one without its reverse has none', () => {
  expect(marksOf([row('CA'), row('CA'), row('AC')]).map(({ word, back }) => [word, back?.kind])).toEqual([
    ['CA', 'nothing'],
    ['CA', undefined],
  ]);
});

test('what a two-way mark means from the other side is not asked', () => {
  expect(chartOf([{ word: 'ACA', action: { kind: 'park' }, back: { kind: 'nothing' } }])).toEqual([
    row('ACA', { kind: 'park' }),
  ]);
});
