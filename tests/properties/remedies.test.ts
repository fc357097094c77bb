import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Drawing, Drawing as DrawingDocument } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import { keepsMarks } from '../../shared/rules/drawn.ts';
import { checkDrawing, mendedDrawing, plainFindings, RULES, ruleContext } from '../../shared/rules/rules.ts';
import { hasDoubledLine, lengthOf, type Plausible, plausible, stepped } from '../designs.ts';
import '../seed.ts';

const isDocument = (drawing: Drawing): boolean =>
  parseDocument(DrawingDocument, writeDocument(DrawingDocument, drawing)).ok;

const checked = ({ kit, sheet, drawing }: Plausible): Finding[] =>
  checkDrawing(ruleContext(sheet, drawing, kit));

/** Without mended designs. */
const found = ({ kit, sheet, drawing }: Plausible): Finding[] =>
  plainFindings(ruleContext(sheet, drawing, kit));

/** The mended drawing of one finding alone. */
const mendedOf = ({ kit, sheet, drawing }: Plausible, id: string): Drawing | null =>
  mendedDrawing(ruleContext(sheet, drawing, kit), id);

describe('a computed remedy', () => {
  it('removes its finding, and no rule finds more than before; alone it is the same', () => {
    let computed = 0;
    fc.assert(
      fc.property(plausible, (design) => {
        const before = checked(design);
        for (const { id, remedy } of before) {
          if (!remedy?.design) continue;
          computed++;
          expect(mendedOf(design, id)).toEqual(remedy.design.drawing);
          expect(isDocument(remedy.design.drawing)).toBe(true);
          const after = checked({ ...design, drawing: remedy.design.drawing });
          expect(after.map((f) => f.id)).not.toContain(id);
          for (const rule of RULES) {
            const count = (list: readonly Finding[]) => list.filter((f) => f.rule === rule.id).length;
            expect(count(after)).toBeLessThanOrEqual(count(before));
          }
        }
      }),
      { numRuns: 150 },
    );
    expect(computed).toBeGreaterThan(20);
  });
});

/** Everything but what a finding's remedy may touch, which is the line or the mark that it is about. */
const elsewhere = ({ lines, marks }: Drawing, ids: readonly string[]) => ({
  lines: lines.filter((line) => !ids.includes(line.id)),
  marks: marks.filter((mark) => !ids.includes(mark.id) && !ids.includes(mark.line)),
});

const touched = (before: Drawing, after: Drawing): string[] =>
  [
    ...before.lines.filter((line) => !after.lines.some((l) => JSON.stringify(l) === JSON.stringify(line))),
    ...before.marks.filter((mark) => !after.marks.some((m) => JSON.stringify(m) === JSON.stringify(mark))),
  ].map(({ id }) => id);

const withWay = (drawing: Drawing, id: string, at: number): Drawing => ({
  ...drawing,
  marks: drawing.marks.map((mark) => (mark.id === id ? { ...mark, at: stepped(at) } : mark)),
});

const SLIDES = new Set(['slide-mark', 'slide-or-slow-down']);

/** Whether the mark has the room it needs on both sides, and no rule finds more than before. */
const hasRoom = (mark: string, before: readonly Finding[], after: readonly Finding[]): boolean =>
  after.every(
    ({ place, remedy }) => place.kind !== 'mark' || place.mark !== mark || !SLIDES.has(remedy!.code),
  ) &&
  RULES.every((rule) => {
    const count = (list: readonly Finding[]) => list.filter((f) => f.rule === rule.id).length;
    return count(after) <= count(before);
  });

/** Lines all but over one another, or marks over one another, have no room to speak of. */
const isTangled = (design: Plausible): boolean =>
  hasDoubledLine(design) ||
  design.drawing.marks.some((one) =>
    design.drawing.marks.some(
      (two) =>
        one !== two && one.line === two.line && two.at >= one.at && two.at < one.at + lengthOf(one.bands),
    ),
  );

describe('a computed remedy changes as little as possible', () => {
  it('one line or one mark, and what hangs on it; a shorter slide gives a mark no room', () => {
    let slid = 0;
    fc.assert(
      fc.property(plausible, (design) => {
        const before = checked(design);
        for (const { place, remedy } of before) {
          if (!remedy?.design) continue;
          const after = remedy.design.drawing;
          const changed = touched(design.drawing, after);
          if (place.kind === 'mark') expect(changed).toEqual([place.mark]);
          const lines = changed.filter((one) => design.drawing.lines.some((line) => line.id === one));
          // Only a corner of two lines, cut across, changes both.
          expect(lines.length).toBeLessThanOrEqual(remedy.code === 'blunt-corner' ? 2 : 1);
          expect(elsewhere(after, changed)).toEqual(elsewhere(design.drawing, changed));
          if (!SLIDES.has(remedy.code) || place.kind !== 'mark' || isTangled(design)) continue;
          slid++;
          const way = (drawing: Drawing): number => drawing.marks.find((m) => m.id === place.mark)!.at;
          const slide = way(after) - way(design.drawing);
          // Kept beyond the room that is needed, and rounding.
          if (Math.abs(slide) < 1) continue;
          for (const by of [-0.9 * slide, 0.5 * slide, slide - 0.06 * Math.sign(slide)]) {
            const less = withWay(design.drawing, place.mark, way(design.drawing) + by);
            if (!keepsMarks(less)) continue;
            expect(hasRoom(place.mark, before, found({ ...design, drawing: less }))).toBe(false);
          }
        }
      }),
      { numRuns: 70 },
    );
    expect(slid).toBeGreaterThan(10);
  });
});
