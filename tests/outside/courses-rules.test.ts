import { describe, expect, it } from 'vitest';
import type { Kit } from '../../shared/documents/kit.ts';
import { degrees, distance } from '../../shared/geometry/exact-math.ts';
import type { Path } from '../../shared/geometry/path.ts';
import { checkDrawing, type RuleContext, ruleContext } from '../../shared/rules/rules.ts';
import { type Course, courses } from '../courses.ts';
import { referenceIsHere, skippedWithoutReference } from '../reference.ts';

/*
 * Source: centre lines of 21 real line-following contest courses, 2012 to 2025, with their crossings, as
 * published in kyamashita5/robotrace_course_cad, examples/synthetic_reference (MIT, commit 8daa822); rules
 * of the contest: NTF Robotrace, sections 2-1 to 2-5: line 19 mm wide, radius at least 100 mm, crossings at
 * 90 ± 5 degrees with 100 mm of straight on each side (250 in editions to 2022).
 */

/** mm on the sheet a mm of the contest's floor. */
const scaleOf = (course: Course): number => course.scale / 10;

/** The contest's numbers on the sheet's scale. Its text says nothing of lines side by side: they don't touch. */
function contestKit(course: Course, smallestRadius: number): Kit {
  const scale = scaleOf(course);
  const { rules } = course.kit;
  return { ...course.kit, rules: { ...rules, curveRadius: smallestRadius * scale, clearance: 19 * scale } };
}

const contextOf = (course: Course, kit: Kit): RuleContext => ruleContext(course.sheet, course.drawing, kit);

/** Published places have a precision of 0.1 cm, and loops close within 0.4 cm: 0.5 mm on the sheet. */
const PLACE = 0.5;
/** Published angles have a precision of 0.1 degree. */
const ANGLE = 0.1;

interface Stretch {
  readonly curvature: number;
  readonly from: number;
  to: number;
}

/** The stretches of one curvature on a path. */
function stretchesOf({ pieces, starts }: Path): Stretch[] {
  const stretches: Stretch[] = [];
  pieces.forEach((piece, i) => {
    const curvature = piece.kind === 'arc' ? piece.curvature : 0;
    const last = stretches.at(-1);
    const to = starts[i]! + piece.length;
    if (last && Math.abs(last.curvature - curvature) < SAME_CURVATURE) last.to = to;
    else stretches.push({ curvature, from: starts[i]!, to });
  });
  return stretches;
}

/** All but the first and the last, which are one: the path is closed. */
const wholeLengths = (stretches: readonly Stretch[]): number[] =>
  stretches.slice(1, -1).map(({ from, to }) => to - from);

/** How much straight line lies to either side of a place. */
const straightBeside = (stretches: readonly Stretch[], way: number): number =>
  Math.max(
    ...stretches.map(({ curvature, from, to }) => (curvature === 0 ? Math.min(way - from, to - way) : 0)),
  );

/** 1/mm; curves of the courses differ by far more, rounding of one by far less. */
const SAME_CURVATURE = 5e-4;

const all = referenceIsHere ? courses() : [];

describe.skipIf(!referenceIsHere)(`real contest courses${skippedWithoutReference}`, () => {
  it('are 21 with at least one crossing each', () => {
    expect(all).toHaveLength(21);
    expect(all.every((course) => course.crossings.length > 0)).toBe(true);
  });

  for (const course of all) {
    const context = contextOf(course, contestKit(course, 100));
    const found = context.track.crossings;

    it(`${course.name}: the crossings found are the published ones`, () => {
      expect(found).toHaveLength(course.crossings.length);
      for (const published of course.crossings) {
        const near = found.filter((crossing) => distance(crossing.at, published.point) <= PLACE);
        expect(near).toHaveLength(1);
        expect(Math.abs(degrees(near[0]!.angle) - published.angle)).toBeLessThanOrEqual(ANGLE);
      }
    });

    it(`${course.name}: every crossing has two straights at 90 ± 5 degrees, 100 mm each side`, () => {
      const junctions = context.track.nodes.filter((node) => node.kind === 'junction');
      expect(junctions).toHaveLength(course.crossings.length);
      expect(found.every((crossing) => degrees(crossing.angle) >= 85)).toBe(true);
      for (const arm of junctions.flatMap((node) => node.arms)) {
        const first = context.track.edges[arm.edge]!.bends[0]!;
        expect(first.curvature).toBe(0);
        // Transcriptions of drawings: 15 mm of tolerance on a straight.
        expect(first.to).toBeGreaterThanOrEqual((100 - 15) * scaleOf(course));
      }
    });

    it(`${course.name}: at most 60 m, and curvature changes at least 100 mm apart`, () => {
      const { path } = context.track.lines[0]!.line;
      expect(path.length).toBeLessThanOrEqual(60_000 * scaleOf(course));
      // Transcriptions of drawings: 0.5 mm of tolerance on a segment.
      const least = Math.min(...wholeLengths(stretchesOf(path))) / scaleOf(course);
      expect(least).toBeGreaterThanOrEqual(100 - 0.5);
    });

    if (Number(course.name.slice(0, 4)) <= 2022) {
      it(`${course.name}: an edition to 2022, with 250 mm of straight on each side of a crossing`, () => {
        const stretches = stretchesOf(context.track.lines[0]!.line.path);
        for (const { a, b } of found) {
          const straight = Math.min(straightBeside(stretches, a.way), straightBeside(stretches, b.way));
          // Transcriptions of drawings: 15 mm of tolerance on a straight.
          expect(straight / scaleOf(course)).toBeGreaterThanOrEqual(250 - 15);
        }
      });
    }

    it(`${course.name}: accepted with the contest's own radius`, () => {
      expect(checkDrawing(context)).toEqual([]);
      const own = contestKit(course, course.smallestRadius / scaleOf(course));
      expect(checkDrawing(contextOf(course, own))).toEqual([]);
    });

    it(`${course.name}: refused where the radius limit is above its smallest radius`, () => {
      const own = course.smallestRadius / scaleOf(course);
      for (const radius of [own * 1.01, 160]) {
        const findings = checkDrawing(contextOf(course, contestKit(course, radius)));
        expect(new Set(findings.map((finding) => finding.rule))).toEqual(new Set(['R-curve-radius']));
        expect(Math.min(...findings.map((f) => f.measured!))).toBeCloseTo(course.smallestRadius, 1);
      }
    });

    it(`${course.name}: turning number and crossings agree in parity (Whitney 1937)`, () => {
      const { path } = context.track.lines[0]!.line;
      const turned = path.pieces.reduce((sum, piece) => sum + (piece.kind === 'arc' ? piece.sweep : 0), 0);
      const turns = Math.round(turned / (2 * Math.PI));
      expect(turned / (2 * Math.PI)).toBeCloseTo(turns, 2);
      expect((Math.abs(turns) + found.length + 1) % 2).toBe(0);
    });
  }
});
