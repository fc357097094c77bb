import { describe, expect, test } from 'vitest';
import { Sheet } from '../../../shared/documents/sheet.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { SHEET } from '../rules/setting.ts';

const filed = (boxes?: unknown): unknown => ({
  ...(writeDocument(Sheet, SHEET) as object),
  ...(boxes === undefined ? {} : { boxes }),
});
const BOX = { id: 'a', name: { en: 'Marks' }, at: { x: 1000, y: 2000 }, w: 6050, h: 1200 };
const pathsOf = (boxes: unknown) => {
  const parsed = parseDocument(Sheet, filed(boxes));
  return parsed.ok ? [] : parsed.problems.map(({ path, code }) => [path.join('.'), code]);
};

describe('a sheet as a document', () => {
  test('without boxes has none of them in its file, in the order that it always had', () => {
    const parsed = parseDocument(Sheet, filed());
    expect(parsed).toEqual({ ok: true, value: SHEET });
    expect(Object.keys(filed() as object)).toEqual(['w', 'h', 'start', 'gates', 'areas', 'keepOut', 'given']);
  });

  test('boxes are read in mm and written in hundredths', () => {
    const parsed = parseDocument(Sheet, filed([BOX]));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    expect(parsed.value.boxes).toEqual([{ ...BOX, at: { x: 10, y: 20 }, w: 60.5, h: 12 }]);
    expect(writeDocument(Sheet, parsed.value)).toMatchObject({ boxes: [BOX] });
  });

  test('at most twelve boxes, and no empty list: without boxes the sheet says nothing of them', () => {
    const many = (n: number) => Array.from({ length: n }, (_, i) => ({ ...BOX, id: `b${i}` }));
    expect(pathsOf(many(12))).toEqual([]);
    expect(pathsOf(many(13))).toEqual([['boxes', 'too_big']]);
    expect(pathsOf([])).toEqual([['boxes', 'too_small']]);
    expect(pathsOf([{ ...BOX, w: -1 }])).toEqual([['boxes.0.w', 'too_small']]);
    expect(pathsOf([{ ...BOX, color: 'red' }])).toEqual([['boxes.0', 'unrecognized_keys']]);
  });
});
