import { describe, expect, it } from 'vitest';
import { RULE_IDS } from '../../../shared/documents/verdict.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { plainFindings, RULES, ruleContext } from '../../../shared/rules/rules.ts';
import { berth, drawn, findings, line, mark, mended, of, SHEET } from './setting.ts';

describe('RULES', () => {
  it('has each rule once, but for the one that needs runs', () => {
    const seen = RULE_IDS.filter((id) => id !== 'R-open-junction');
    expect(RULES.map(({ id }) => id).sort()).toEqual([...seen].sort());
  });
});

describe('checkDrawing', () => {
  it('gives findings in the order of the rules, then of their ids', () => {
    // Thin lines, drawn from bottom to top, that end beside the left edge.
    const thin = (id: string, y: number) => ({ ...line(id, [10, y], [200, y]), width: 3 });
    const found = findings(drawn([thin('c', 160), thin('b', 130), thin('a', 60)]), {
      sheet: { start: berth(40, 30) },
    });
    expect(found.map(({ id }) => id)).toEqual([
      'R-line-width.thin@105,130',
      'R-line-width.thin@105,160',
      'R-line-width.thin@105,60',
      'R-margin@10,130',
      'R-margin@10,160',
      'R-margin@10,60',
      'R-start-on-line.no-line@51,30',
    ]);
  });

  it('tells findings of one rule at one place apart by a number', () => {
    // The end of the line is 10 mm from the right edge and from the lower one.
    const ids = of('R-margin', drawn([line('corner', [40, 100], [290, 190])])).map(({ id }) => id);
    expect(ids).toEqual(['R-margin@290,190', 'R-margin@290,190~2']);
  });

  it('is the same without remedies, but for those', () => {
    const drawing = drawn([{ ...line('thin', [40, 100], [200, 100]), width: 3 }]);
    const plain = plainFindings(ruleContext(SHEET, drawing, DEMO_KIT));
    const [finding] = findings(drawing);
    expect(finding?.remedy?.design).toBeDefined();
    expect(plain).toEqual([{ ...finding, remedy: { code: 'set-width' } }]);
  });
});

describe('mended drawings', () => {
  const thin = (id: string, y: number, pieces = 1) => {
    const stops = Array.from({ length: pieces }, (_, i) => [40 + (200 * (i + 1)) / pieces, y] as const);
    return { ...line(id, [40, y], ...stops.map(([x]) => [x, y] as [number, number])), width: 3 };
  };
  const mends = (lines: ReturnType<typeof thin>[], w = 300, h = 2000) =>
    of('R-line-width', drawn(lines), { sheet: { w, h } }).filter(({ remedy }) => remedy?.design).length;
  /** Thin lines, 100 mm apart. */
  const many = (count: number, pieces = 1) =>
    Array.from({ length: count }, (_, i) => thin(`line${i}`, 100 + 100 * i, pieces));

  it('are tried twelve times at most', () => {
    expect(mends(many(12))).toBe(12);
    expect(mends(many(15))).toBe(12);
  });

  it('are tried less often where they are long: 500 pieces in all, but always once', () => {
    // 3 lines of 60 pieces make 180: two tries are 360 pieces, three would be 540.
    expect(mends(many(3, 60))).toBe(2);
    expect(mends(many(2, 300))).toBe(1);
  });

  it('are left out where they make more of another rule’s findings', () => {
    const elbow = line('elbow', [40, 100], [150, 100], [150, 180]);
    const room = (neighbour: number) =>
      of(
        'R-after-mark',
        drawn([elbow], [mark('m', 'elbow', 90, 'CA'), mark('n', 'elbow', neighbour, 'AC')]),
      )[0];
    // The mark has to end 25 mm before the corner, that is to begin at 74: 25 mm behind one that ends at 49.
    expect(mended(room(37)).marks[0]?.at).toBeCloseTo(74, 1);
    expect(room(40)?.remedy?.design).toBeUndefined();
  });

  it('keep what other rules found before, and no more', () => {
    const two = [thin('a', 60), thin('b', 160)];
    const [finding] = of('R-line-width', drawn(two));
    expect(of('R-line-width', mended(finding))).toHaveLength(1);
  });
});
