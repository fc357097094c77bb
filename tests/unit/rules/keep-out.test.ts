import { describe, expect, it } from 'vitest';
import { drawn, line, of, PIER, withRobot } from './setting.ts';

/** A sandbank from (120, top) to (180, top + 40). */
const bank = (top: number, id = 'sandbank') => ({
  id,
  name: { en: id },
  polygon: [
    { x: 120, y: top },
    { x: 180, y: top },
    { x: 180, y: top + 40 },
    { x: 120, y: top + 40 },
  ],
});
const sheet = (...keepOut: ReturnType<typeof bank>[]) => ({ sheet: { keepOut } });

describe('R-keep-out', () => {
  it('R-keep-out is silent at half the robot’s width, 14 mm', () => {
    expect(of('R-keep-out', drawn([PIER]), sheet(bank(114)))).toEqual([]);
    expect(of('R-keep-out', drawn([PIER]), sheet(bank(46)))).toEqual([]);
  });

  it('R-keep-out finds a line 13.9 mm beside the area', () => {
    const [finding] = of('R-keep-out', drawn([PIER]), sheet(bank(113.9)));
    expect(finding).toMatchObject({ variant: 'near', measured: 13.9, allowed: 14, severity: 'stops' });
    expect(finding?.place.at.y).toBe(100);
  });

  it('R-keep-out finds a line through the area, over its 60 mm', () => {
    const [finding, ...others] = of('R-keep-out', drawn([PIER]), sheet(bank(80)));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ variant: 'through', measured: 60, allowed: 0, severity: 'stops' });
    expect(finding?.place).toMatchObject({ kind: 'stretch', line: 'pier', at: { x: 150, y: 100 } });
    expect(finding?.place.kind === 'stretch' && [finding.place.from, finding.place.to]).toEqual([80, 140]);
  });

  it('R-keep-out finds a line that ends in the area, or lies wholly in it', () => {
    const into = line('into', [40, 100], [150, 100]);
    expect(of('R-keep-out', drawn([into]), sheet(bank(80)))).toMatchObject([{ measured: 30 }]);
    const within = line('within', [130, 100], [170, 100]);
    expect(of('R-keep-out', drawn([within]), sheet(bank(80)))).toMatchObject([
      { variant: 'through', measured: 40 },
    ]);
  });

  it('R-keep-out finds where an arc comes near', () => {
    // A half circle of radius 40 over (110, 100)-(190, 100): its top lies at y = 60, 10 mm under the area.
    const arch = line('arch', [40, 100], [110, 100], [190, 100, 1], [260, 100]);
    expect(of('R-keep-out', drawn([arch]), sheet(bank(10)))).toMatchObject([
      { variant: 'near', measured: 10 },
    ]);
    expect(of('R-keep-out', drawn([arch]), sheet(bank(6)))).toEqual([]);
  });

  it('R-keep-out gives each area and each line a finding of its own', () => {
    const other = line('other', [40, 30], [260, 30]);
    const both = of('R-keep-out', drawn([PIER, other]), sheet(bank(80), bank(10, 'nest')));
    expect(both).toHaveLength(2);
    expect(new Set(both.map((finding) => finding.id)).size).toBe(2);
  });

  it('R-keep-out says nothing of given lines, and goes by the robot', () => {
    const given = drawn([PIER]);
    expect(of('R-keep-out', drawn([]), { sheet: { given, keepOut: [bank(80)] } })).toEqual([]);
    const wide = { ...sheet(bank(114)), kit: withRobot({ width: 40 }) };
    expect(of('R-keep-out', drawn([PIER]), wide)).toMatchObject([{ measured: 14, allowed: 20 }]);
  });
});
