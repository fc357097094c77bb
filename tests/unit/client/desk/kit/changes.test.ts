import { describe, expect, test } from 'vitest';
import {
  inOrder,
  valueAt,
  withAnotherInk,
  withInkLetter,
  withValue,
} from '../../../../../client/desk/kit/changes.ts';
import { begun, changed, redone, undone } from '../../../../../client/desk/kit/history.ts';
import { numberAt, typedNumber, withNumber } from '../../../../../client/desk/kit/numbers.ts';
import { USUAL_TOLERANCES } from '../../../../../shared/documents/kit.ts';
import { radians } from '../../../../../shared/geometry/exact-math.ts';
import { checkKit } from '../../../../../shared/kit/check-kit.ts';
import { DEMO_KIT } from '../../../../../shared/kit/demo-kit.ts';
import { drivesAlike } from '../../../../../shared/library/same-kit.ts';

describe('changes of a kit', () => {
  test('withValue changes one place and nothing else', () => {
    const kit = withValue(DEMO_KIT, ['inks', 1, 'color'], '#123456');
    expect(valueAt(kit, ['inks', 1, 'color'])).toBe('#123456');
    expect(withValue(kit, ['inks', 1, 'color'], DEMO_KIT.inks[1]!.color)).toEqual(DEMO_KIT);
    expect(kit.inks[0]).toBe(DEMO_KIT.inks[0]);
  });

  test('another letter for an ink goes through the words of the chart', () => {
    const kit = withInkLetter(DEMO_KIT, 0, 'K');
    expect(kit.chart.slice(0, 2).map(({ word }) => word)).toEqual(['KA', 'AK']);
    expect(checkKit(kit)).toEqual([]);
  });

  test('a letter that another ink has changes no word: which is meant is not known', () => {
    const kit = withInkLetter(DEMO_KIT, 0, 'A');
    expect(kit.chart).toEqual(DEMO_KIT.chart);
    expect(checkKit(kit).map(({ code }) => code)).toContain('ink-letter-twice');
    expect(withInkLetter(kit, 0, 'C').chart).toEqual(DEMO_KIT.chart);
  });

  test('one ink more has a letter of its own', () => {
    const kit = withAnotherInk(DEMO_KIT, { en: 'new ink' });
    expect(kit.inks.map(({ id }) => id)).toEqual(['C', 'A', 'V', 'B']);
  });

  test('inOrder puts both words of a mark side by side', () => {
    const [first, second, ...rest] = DEMO_KIT.chart;
    expect(inOrder({ ...DEMO_KIT, chart: [first!, ...rest, second!] })).toEqual(DEMO_KIT);
  });
});

describe('numbers of a kit', () => {
  test.each([
    ['28', 'mm', 28],
    [' 28,5 ', 'mm', 28.5],
    ['28.456', 'mm', 28.46],
    ['90', '°', radians(90)],
    ['3', '%', 0.03],
    ['2', '×', 2],
    ['8', '', 8],
  ] as const)('typedNumber(%j, %j) is %d', (text, unit, value) => {
    expect(typedNumber(text, unit)).toBeCloseTo(value, 9);
  });

  test.each([
    ['', 'mm'],
    ['-1', 'mm'],
    ['8001', 'mm'],
    ['ten', 'mm'],
    ['1e3', 'mm'],
    ['9', ''],
    ['0.5', '×'],
    ['181', '°'],
  ] as const)('typedNumber(%j, %j) is none', (text, unit) => {
    expect(typedNumber(text, unit)).toBeNull();
  });

  test('a number that may be left out is the usual one until it is typed', () => {
    const path = ['robot', 'tolerances', 'commonSpeed'];
    expect(numberAt(DEMO_KIT, path)).toBe(USUAL_TOLERANCES.commonSpeed);
    expect(numberAt(DEMO_KIT, ['rules', 'endFromEdge'])).toBe(DEMO_KIT.rules.actionReady.fast);
    const kit = withNumber(DEMO_KIT, path, 0.05);
    expect(kit.robot.tolerances).toEqual({ ...USUAL_TOLERANCES, commonSpeed: 0.05 });
    expect(drivesAlike(kit, DEMO_KIT)).toBe(false);
  });

  test('a usual number that is written out leaves the kit what it was to the library', () => {
    const written = withNumber(DEMO_KIT, ['robot', 'tolerances', 'heading'], typedNumber('2.5', '°')!);
    const more = withNumber(withNumber(written, ['rules', 'endFromEdge'], 60), ['rules', 'inkLighter'], 2);
    expect(drivesAlike(more, DEMO_KIT)).toBe(true);
  });
});

describe('history of a kit', () => {
  const named = (name: string) => ({ ...DEMO_KIT, name });

  test('changes at one place are one step, others their own', () => {
    let history = begun(DEMO_KIT);
    history = changed(history, 'name', named('H'));
    history = changed(history, 'name', named('Ha'));
    history = changed(history, 'robot.width', withValue(named('Ha'), ['robot', 'width'], 30));
    expect(undone(history).now.name).toBe('Ha');
    expect(undone(history).now.robot.width).toBe(28);
    expect(undone(undone(history)).now).toBe(DEMO_KIT);
    expect(undone(undone(undone(history))).now).toBe(DEMO_KIT);
  });

  test('what was taken back comes again, until something else is changed', () => {
    const history = undone(changed(begun(DEMO_KIT), 'name', named('Ours')));
    expect(redone(history).now.name).toBe('Ours');
    const other = changed(history, 'name', named('Theirs'));
    expect(redone(other).now.name).toBe('Theirs');
    expect(undone(other).now).toBe(DEMO_KIT);
  });
});
