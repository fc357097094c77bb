import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Challenge, VARIANTS } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { MarkBox, Sheet } from '../../shared/documents/sheet.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import { directionAt, pathOf, pointAt } from '../../shared/geometry/path.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { designIn, variantOf } from '../../shared/library/variants.ts';
import { checkDrawing, plainFindings, RULES, ruleContext } from '../../shared/rules/rules.ts';
import { boxCorners } from '../../shared/track/mark-boxes.ts';
import { lengthOf, type Plausible, plausible, SHEET_HEIGHT, SHEET_WIDTH } from '../designs.ts';
import '../seed.ts';

/** Boxes on plausible drawings: what is found, in a mirror too, and what mends it. */

const share = fc.integer({ min: 0, max: 1000 });
const boxes = fc.array(fc.tuple(share, share, share, share), { minLength: 1, maxLength: 4 }).map((list) =>
  list.map(([left, top, wide, high], i): MarkBox => {
    const [w, h] = [12 + Math.round(wide / 5), 12 + Math.round(high / 7)];
    const at = {
      x: Math.round((left * (SHEET_WIDTH - w)) / 10) / 100,
      y: Math.round((top * (SHEET_HEIGHT - h)) / 10) / 100,
    };
    return { id: `box-${i}`, name: { en: `Marks ${i}` }, at, w, h };
  }),
);

const isBox = ({ rule }: Finding): boolean => rule === 'R-mark-box';
const markOf = ({ place }: Finding): string => (place.kind === 'mark' ? place.mark : '');
const withBoxes = (design: Plausible, list: MarkBox[]): Plausible => ({
  ...design,
  sheet: { ...design.sheet, boxes: list },
});
const found = ({ kit, sheet, drawing }: Plausible): Finding[] =>
  plainFindings(ruleContext(sheet, drawing, kit));

/** Both edges of a mark's bands, every 0.05 mm: bands are 0.4 mm wider than their line. */
function edgesOf({ lines, marks }: Drawing, id: string): PaperPoint[] {
  const { line: on, at, bands } = marks.find((mark) => mark.id === id)!;
  const line = lines.find((one) => one.id === on)!;
  const path = pathOf(line);
  const half = line.width / 2 + 0.2;
  const steps = Math.ceil(lengthOf(bands) / 0.05);
  return Array.from({ length: steps + 1 }, (_, i) => at + (lengthOf(bands) * i) / steps).flatMap((way) => {
    const [p, d] = [pointAt(path, way), directionAt(path, way)];
    return [half, -half].map((side) => ({ x: p.x - d.y * side, y: p.y + d.x * side }));
  });
}

/** mm: by how much points reach out of the box that takes most of them. */
function outOf(sheet: Sheet, corners: readonly PaperPoint[]): number {
  const outs = (sheet.boxes ?? []).map((box) => {
    const [from, , to] = boxCorners(box);
    return Math.max(...corners.map(({ x, y }) => Math.max(from.x - x, x - to.x, from.y - y, y - to.y)));
  });
  return Math.min(...outs);
}

/** mm: between two points at a corner, and rounding of the canonical form. */
const NEAR = 0.1;

describe('R-mark-box', () => {
  it('is found of just those marks whose bands reach out of every box, and by as much', () => {
    let seen = 0;
    fc.assert(
      fc.property(plausible, boxes, (plain, list) => {
        const design = withBoxes(plain, list);
        const { sheet, drawing } = design;
        const findings = new Map(
          found(design)
            .filter(isBox)
            .map((one) => [markOf(one), one.measured!]),
        );
        for (const { id } of drawing.marks) {
          const out = outOf(sheet, edgesOf(drawing, id));
          const said = findings.get(id);
          if (said === undefined) expect(out).toBeLessThan(0.03);
          else {
            seen++;
            expect(Math.abs(said - out)).toBeLessThan(NEAR);
          }
        }
      }),
      { numRuns: 150 },
    );
    expect(seen).toBeGreaterThan(20);
  });

  it('takes nothing from what other rules find, and is silent on a sheet without boxes', () => {
    fc.assert(
      fc.property(plausible, boxes, (plain, list) => {
        const bare = found(plain);
        expect(bare.some(isBox)).toBe(false);
        expect(found(withBoxes(plain, list)).filter((one) => !isBox(one))).toEqual(bare);
      }),
      { numRuns: 40 },
    );
  });

  it('in a mirror and after half a turn is found of the same marks, by as much, in the mirrored place', () => {
    let compared = 0;
    fc.assert(
      fc.property(plausible, boxes, fc.constantFrom(...VARIANTS), (plain, list, variant) => {
        const { sheet, drawing } = withBoxes(plain, list);
        const design = { version: 1, drawing } as const;
        const challenge = challengeOn(sheet, plain.kit);
        const other = variantOf(challenge, variant);
        const there = designIn(variant, challenge, design);
        // No word of the kit says left for right.
        if (!other || !there) return;
        const here = found({ kit: plain.kit, sheet, drawing }).filter(isBox);
        const mirrored = new Map(
          found({ kit: plain.kit, sheet: other.sheet, drawing: there.drawing })
            .filter(isBox)
            .map((one) => [markOf(one), one]),
        );
        expect(mirrored.size).toBe(here.length);
        for (const one of here) {
          compared++;
          const its = mirrored.get(markOf(one))!;
          expect(its.measured).toBeCloseTo(one.measured!, 1);
          expect(its.place.at.x).toBeCloseTo(SHEET_WIDTH - one.place.at.x, 1);
          const y = variant === 'turned' ? SHEET_HEIGHT - one.place.at.y : one.place.at.y;
          expect(its.place.at.y).toBeCloseTo(y, 1);
        }
      }),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(20);
  });
});

describe('a mark that is moved into a box', () => {
  it('lies in one, is the only thing that changed, and no rule finds more', () => {
    let moved = 0;
    fc.assert(
      fc.property(plausible, boxes, (plain, list) => {
        const design = withBoxes(plain, list);
        const before = checkDrawing(ruleContext(design.sheet, design.drawing, design.kit));
        for (const one of before.filter(isBox)) {
          const after = one.remedy?.design?.drawing;
          if (!after) continue;
          moved++;
          const id = markOf(one);
          const without = (marks: typeof after.marks) => marks.filter((mark) => mark.id !== id);
          expect(after.lines).toEqual(design.drawing.lines);
          expect(without(after.marks)).toEqual(without(design.drawing.marks));
          const now = found({ ...design, drawing: after });
          expect(now.filter(isBox).map(markOf)).not.toContain(id);
          for (const rule of RULES) {
            const count = (some: readonly Finding[]) => some.filter((f) => f.rule === rule.id).length;
            expect(count(now)).toBeLessThanOrEqual(count(before));
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(moved).toBeGreaterThan(3);
  });
});

const challengeOn = (sheet: Sheet, kit = DEMO_KIT): Challenge => ({
  version: 1,
  id: 'boxed',
  topic: 1,
  sentence: { en: 'Arrive.' },
  play: 'draw',
  kit,
  sheet,
  starts: ['start'],
  goals: [{ id: 'arrive', formula: { kind: 'finish' }, must: true, weight: 1 }],
  limits: { time: 30 },
});
