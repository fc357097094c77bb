import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import type { Remedy, RuleId } from '../../../shared/documents/verdict.ts';
import { bands, drawn, line, mark, of, PIER, type Setting, withRobot } from './setting.ts';

/** What a team is told to do: one code for each rule, or for each of its variants. */

const banded = (list: ReturnType<typeof bands>): Drawing => drawn([PIER], [mark('m', 'pier', 60, list)]);
const wider = (length: number, gap: number) =>
  bands('CA').map((band, i) => (i === 1 ? { ...band, length, gap } : band));
const beside = line('beside', [40, 112], [260, 112]);
const cases: [RuleId, Remedy, Drawing, Setting][] = [
  ['R-line-width', 'set-width', drawn([{ ...PIER, width: 9 }]), {}],
  ['R-corner', 'blunt-corner', drawn([line('bent', [40, 100], [150, 100], [70, 40])]), {}],
  [
    'R-curve-radius',
    'widen-curve',
    drawn([line('bent', [40, 100], [120, 100], [130, 110, Math.SQRT2 - 1])]),
    {},
  ],
  ['R-clearance', 'move-apart', drawn([PIER, beside]), {}],
  ['R-margin', 'move-inside', drawn([PIER, line('edge', [40, 10], [260, 10])]), {}],
  ['R-before-mark', 'slide-mark', drawn([PIER], [mark('m', 'pier', 20, 'CA')]), {}],
  ['R-band-count', 'add-bands', banded(bands('C')), {}],
  ['R-band-count', 'remove-bands', banded(bands('CACAC')), {}],
  ['R-band-length', 'even-bands', banded(bands('CA', 4.5)), {}],
  ['R-band-equality', 'even-bands', banded(wider(9, 0)), {}],
  ['R-band-gap', 'even-bands', banded(wider(5.5, 1)), {}],
  ['R-band-gap', 'even-bands', banded(wider(5.5, -2)), {}],
  [
    'R-loose-end',
    'close-gap',
    drawn([line('a', [40, 100], [150, 100]), line('b', [158, 100], [260, 100])]),
    {},
  ],
  ['R-ink-budget', 'use-less-line', drawn([PIER]), { limits: { ink: 100 } }],
  ['R-mark-budget', 'remove-mark', drawn([PIER], [mark('m', 'pier', 60, 'CA')]), { limits: { marks: 0 } }],
  [
    'R-mark-box',
    'into-box',
    drawn([PIER], [mark('m', 'pier', 60, 'CA')]),
    { sheet: { boxes: [{ id: 'b', name: { en: 'Marks' }, at: { x: 10, y: 10 }, w: 40, h: 20 }] } },
  ],
];

describe('a remedy', () => {
  it.each(cases)('of %s is %s', (rule, code, drawing, setting) => {
    expect(of(rule, drawing, setting).map(({ remedy }) => remedy?.code)).toContain(code);
  });

  it('of too few or too many bands, and of a line beside another, may stop the robot', () => {
    for (const list of [bands('C'), bands('CACAC')]) {
      expect(of('R-band-count', banded(list))).toMatchObject([{ severity: 'may-stop' }]);
    }
    // Two pitches of 4 mm and half a line of 5: from there on the outer sensor sees the other line.
    const apart = (mm: number) =>
      of('R-clearance', drawn([PIER, line('by', [60, 100 + mm], [200, 100 + mm])]));
    expect(apart(10.4)).toMatchObject([{ severity: 'may-stop', measured: 10.4 }]);
    expect(apart(10.6)).toMatchObject([{ severity: 'untidy' }]);
  });
});

describe('R-before-mark between marks that are met from both sides', () => {
  const kit = withRobot({ looseEnd: 'turn-back' });
  const pair = (one: string, two: string) =>
    of('R-before-mark', drawn([PIER], [mark(one, 'pier', 80, 'CVC'), mark(two, 'pier', 110, 'AVA')]), {
      kit,
    });

  it('is told once, of the mark with the later name', () => {
    // The first ends at 96.5: 13.5 mm of line between.
    for (const found of [pair('a', 'b'), pair('b', 'a')]) {
      expect(found).toMatchObject([{ variant: 'mark', measured: 13.5, place: { mark: 'b' } }]);
    }
  });

  it('of three in a row each pair is told', () => {
    const marks = [mark('a', 'pier', 60, 'CVC'), mark('b', 'pier', 90, 'AVA'), mark('c', 'pier', 122, 'CVC')];
    const found = of('R-before-mark', drawn([PIER], marks), { kit });
    expect(found.map(({ measured }) => measured)).toEqual([13.5, 15.5]);
  });

  it('of one mark with too little room on both sides the worse side is told', () => {
    const short = line('short', [40, 100], [95, 100]);
    const found = (at: number) =>
      of('R-before-mark', drawn([short], [mark('m', 'short', at, 'CVC')]), { kit });
    // The line is 55 mm long, the mark 16.5; from the far end robots come back.
    expect(found(20)).toMatchObject([{ measured: 18.5, variant: 'end' }]);
    expect(found(16)).toMatchObject([{ measured: 16 }]);
  });
});
