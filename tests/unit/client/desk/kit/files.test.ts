import { describe, expect, test } from 'vitest';
import {
  chartAsCsv,
  chartAsJson,
  chartFromCsv,
  chartFromJson,
} from '../../../../../client/desk/kit/chart-file.ts';
import { fileName, kitAsFile, kitFromFile } from '../../../../../client/desk/kit/kit-file.ts';
import { MEANINGS, matching, meaningKey, meaningOf } from '../../../../../client/desk/kit/meanings.ts';
import type { Action } from '../../../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../../../shared/kit/demo-kit.ts';
import { wording } from '../../../../../shared/wording/wording.ts';
import { KITS } from '../../../../kits.ts';

const english = (action: Action) => wording('en').actions.name(action);
const read = (text: string) => chartFromCsv(text, english);

describe('a chart as CSV', () => {
  test.each(KITS)('of the kit $id is the same after writing and reading', (kit) => {
    const back = read(chartAsCsv(kit.chart));
    const byWord = new Map(kit.chart.map(({ word, action }) => [word, action]));
    expect(back.ok && new Map(back.chart.map(({ word, action }) => [word, action]))).toEqual(byWord);
  });

  test('has a head, a row a mark, and a byte order mark (RFC 4180, UTF-8)', () => {
    const lines = chartAsCsv(DEMO_KIT.chart).split('\r\n');
    expect(lines[0]).toBe('\uFEFFmark,meaning,from the other side');
    expect(lines).toHaveLength(1 + 9 + 1);
    expect(lines[8]).toBe('CVC,signal 1,');
  });

  test('is read with semicolons, decimal commas, small letters, and the names that the page uses', () => {
    expect(read('ca;Take left;take right\r\n;;\r\naca;wait 0,5 s;\r\nvav;park\r\n')).toEqual({
      ok: true,
      chart: [
        { word: 'CA', action: { kind: 'choose', way: 'left' } },
        { word: 'AC', action: { kind: 'choose', way: 'right' } },
        { word: 'ACA', action: { kind: 'wait', time: 0.5 } },
        { word: 'VAV', action: { kind: 'park' } },
      ],
    });
  });

  test.each([
    ['', { code: 'no-chart' }],
    ['mark,meaning,from the other side\r\n', { code: 'no-chart' }],
    ['CA,park,\r\nC4,park,', { code: 'no-word', row: 2, cell: 'C4' }],
    ['CA,hop,park', { code: 'no-meaning', row: 1, cell: 'hop' }],
    ['CA,park,wait 4000', { code: 'no-meaning', row: 1, cell: 'wait 4000' }],
    ['CA,,', { code: 'no-meaning', row: 1, cell: '' }],
  ])('%j is refused with its line', (text, trouble) => {
    expect(read(text)).toEqual({ ok: false, trouble });
  });

  test('of more words than a kit holds is refused', () => {
    const rows = Array.from({ length: 101 }, () => 'CA,park,park').join('\r\n');
    expect(read(rows)).toEqual({ ok: false, trouble: { code: 'too-long', most: 200 } });
  });
});

describe('a chart as JSON', () => {
  test.each(KITS)('of the kit $id is the same after writing and reading', (kit) => {
    expect(chartFromJson(chartAsJson(kit.chart))).toEqual({ ok: true, chart: kit.chart });
  });

  test.each(['', '{}', '{"format":"harbour-lines-chart","version":1,"chart":[]}', '[1]'])(
    '%j is refused',
    (text) => expect(chartFromJson(text)).toEqual({ ok: false, trouble: { code: 'no-chart' } }),
  );
});

describe('a kit as a file', () => {
  test.each(KITS)('$id is the same after writing and reading', (kit) => {
    expect(kitFromFile(kitAsFile(kit))).toEqual({ ok: true, kit });
  });

  test('what is wrong in it is named with its place; a larger or another file is refused', () => {
    const wrong = kitAsFile(DEMO_KIT).replace('"wheelTrack": 2400', '"wheelTrack": -1');
    expect(kitFromFile(wrong)).toMatchObject({
      trouble: 'not-a-kit',
      problem: { path: ['kit', 'robot', 'wheelTrack'], code: 'too_small' },
    });
    expect(kitFromFile('{"format":"harbour-lines-room"}')).toMatchObject({ trouble: 'not-a-kit' });
    expect(kitFromFile('x'.repeat(256_001))).toEqual({ ok: false, trouble: 'too-large' });
  });

  test('has a name that every system takes', () => {
    expect(fileName({ ...DEMO_KIT, name: 'Año 5: “azul”/rot' }, 'json')).toBe('Año-5-azul-rot.json');
    expect(fileName({ ...DEMO_KIT, name: '???' }, 'csv')).toBe('kit.csv');
  });
});

describe('meanings', () => {
  test('all have keys of their own, by which they are found again', () => {
    expect(new Set(MEANINGS.map(meaningKey)).size).toBe(MEANINGS.length);
    for (const action of MEANINGS) expect(meaningOf(meaningKey(action))).toEqual(action);
    expect(meaningOf('hop')).toBeUndefined();
  });

  test('every action of the kits is among them', () => {
    for (const { action } of KITS.flatMap(({ chart }) => chart))
      expect(meaningOf(meaningKey(action))?.kind).toBe(action.kind);
  });

  test('matching finds names by the beginning of any of their words', () => {
    const names = ['take left', 'take right', 'turn back'];
    expect([
      matching(names, 't'),
      matching(names, 'L'),
      matching(names, 'take r'),
      matching(names, 'x'),
    ]).toEqual([[0, 1, 2], [0], [1], []]);
  });
});
