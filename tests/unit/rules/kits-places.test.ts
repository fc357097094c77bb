import { describe, expect, test } from 'vitest';
import type { Drawing, Line } from '../../../shared/documents/design.ts';
import { endFromEdgeOf, type Kit } from '../../../shared/documents/kit.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import type { Finding, RuleId } from '../../../shared/documents/verdict.ts';
import { checkDrawing, type RuleContext, ruleContext } from '../../../shared/rules/rules.ts';
import { KITS, lengthOf, wordFor } from '../../kits.ts';
import { Pen } from '../../sweeps/pen.ts';
import { SHEET as SMALL } from './setting.ts';

/** Limits at junctions, berths, areas and ends of lines are each kit's own, and so are remedies there. */

const SHEET: Sheet = { ...SMALL, w: 500, h: 400, start: { ...SMALL.start, at: { x: 60, y: 200 } } };
const HAIR = 0.1;
const degrees = (rad: number): number => (rad * 180) / Math.PI;

type Change = Partial<Pick<RuleContext, 'limits'>> & { readonly sheet?: Partial<Sheet> };

function found(rule: RuleId, kit: Kit, drawing: Drawing, { sheet, limits = {} }: Change = {}): Finding[] {
  const context = ruleContext({ ...SHEET, ...sheet }, drawing, kit, ['start'], limits);
  return checkDrawing(context).filter((finding) => finding.rule === rule);
}

const lines = (...drawings: readonly Drawing[]): Drawing => ({
  lines: drawings.map((drawing, i): Line => ({ ...drawing.lines[0]!, id: `l${i}` })),
  marks: [],
});

describe.each(KITS)('places and junctions with the kit $id', (kit) => {
  const { rules, robot } = kit;
  const { nominal } = rules.lineWidth;
  const { armsApart, armLength, snap } = rules.junction;
  const pen = () => new Pen(nominal);
  /** From the berth to the right. */
  const pier = (length = 350) => pen().to(60, 200).straight(length);
  const faster = wordFor(kit, 'pace-by', { steps: 1 });
  const unit = new Array<number>(rules.bands.most).fill(robot.bandUnit);
  /** A branch from the pier's (260, 200), away from ahead by so many degrees. */
  const branched = (angle: number) =>
    lines(pier().drawing(), pen().to(260, 200, -angle).straight(120).drawing());
  /** A line across the pier, to so far under it. */
  const crossed = (under: number) =>
    lines(
      pier().drawing(),
      pen()
        .to(260, 100, 90)
        .straight(100 + under)
        .drawing(),
    );

  test('R-junction-angle', () => {
    const least = degrees(armsApart);
    expect(found('R-junction-angle', kit, branched(least + 0.5))).toEqual([]);
    const [oblique] = found('R-junction-angle', kit, branched(least - 0.5));
    expect(oblique).toMatchObject({ severity: 'untidy' });
    expect(oblique!.measured).toBeCloseTo(least - 0.5, 1);
    // Squared up no further than it has to be: its far end stays, and a degree is kept to spare.
    const { drawing } = oblique!.remedy!.design!;
    const [from, to] = [drawing.lines[1]!.from, drawing.lines[1]!.pieces[0]!.to];
    expect(degrees(Math.atan2(from.y - to.y, to.x - from.x))).toBeCloseTo(least + 1, 1);
    const narrow = degrees(rules.corner.mayStopBelow);
    const severity = (angle: number) => found('R-junction-angle', kit, branched(angle))[0]!.severity;
    expect([severity(narrow + 0.5), severity(narrow - 0.5)]).toEqual(['untidy', 'may-stop']);
  });

  test('R-junction-arms', () => {
    expect(found('R-junction-arms', kit, crossed(armLength))).toEqual([]);
    const [short] = found('R-junction-arms', kit, crossed(armLength - HAIR));
    expect(short).toMatchObject({ variant: 'end', severity: 'untidy', allowed: armLength });
    expect(short!.remedy!.design!.drawing.lines).toEqual(crossed(0).lines);
    const bar = robot.barAhead + nominal / 2;
    const severity = (under: number) => found('R-junction-arms', kit, crossed(under))[0]!.severity;
    expect([severity(bar + HAIR), severity(bar - HAIR)]).toEqual(['untidy', 'may-stop']);
  });

  test('R-mark-on-junction', () => {
    const length = lengthOf(kit, faster);
    const over = (at: number): Drawing => ({
      lines: crossed(100).lines,
      marks: pier()
        .mark(at, faster, unit)
        .drawing()
        .marks.map((mark) => ({ ...mark, line: 'l0' })),
    });
    // The crossing is 200 mm along; the mark over it has its middle 2 mm before that.
    const [finding] = found('R-mark-on-junction', kit, over(198 - length / 2));
    expect(finding).toMatchObject({ variant: 'junction', allowed: rules.beforeMark, severity: 'may-stop' });
    const { marks } = finding!.remedy!.design!.drawing;
    expect(marks[0]!.at).toBeCloseTo(200 - rules.afterMark - length, 1);
    expect(found('R-mark-on-junction', kit, over(200 - length - 1))).toEqual([]);
  });

  test('R-keep-out', () => {
    const beside = (room: number) => {
      const [top, bottom] = [200 + room, 260 + room];
      const polygon = [
        { x: 200, y: top },
        { x: 300, y: top },
        { x: 300, y: bottom },
        { x: 200, y: bottom },
      ];
      return found('R-keep-out', kit, pier().drawing(), {
        sheet: { keepOut: [{ id: 'bank', name: { en: 'bank' }, polygon }] },
      });
    };
    expect(beside(robot.width / 2)).toEqual([]);
    expect(beside(robot.width / 2 - HAIR)).toMatchObject([
      { variant: 'near', severity: 'stops', allowed: robot.width / 2 },
    ]);
    expect(beside(-30)).toMatchObject([{ variant: 'through', measured: 100, allowed: 0 }]);
  });

  test('R-start-on-line', () => {
    const beside = (off: number) =>
      found(
        'R-start-on-line',
        kit,
        pen()
          .to(60, 200 + off)
          .straight(300)
          .drawing(),
      );
    expect([...beside(0), ...beside(2 * robot.sensorPitch)]).toEqual([]);
    expect(beside(2 * robot.sensorPitch + HAIR)).toMatchObject([
      { variant: 'no-line', severity: 'stops', allowed: 2 * robot.sensorPitch },
    ]);
    const ahead = (gap: number) =>
      found(
        'R-start-on-line',
        kit,
        pen()
          .to(60 + robot.barAhead + gap, 200)
          .straight(300)
          .drawing(),
      );
    expect(ahead(nominal / 2)).toEqual([]);
    expect(ahead(nominal / 2 + HAIR)).toMatchObject([{ variant: 'no-line', allowed: nominal / 2 }]);
  });

  test('R-loose-end at a gap', () => {
    const gap = (white: number) =>
      lines(
        pier(150).drawing(),
        pen()
          .to(210 + white, 200)
          .straight(150)
          .drawing(),
      );
    expect(found('R-loose-end', kit, gap(snap - HAIR))).toEqual([]);
    const [finding] = found('R-loose-end', kit, gap(snap + HAIR));
    expect(finding).toMatchObject({ variant: 'gap', severity: 'may-stop', allowed: snap });
    // Closed by going on with one of the two lines; the other stays.
    const closed = finding!.remedy!.design!.drawing.lines;
    expect(closed[1]).toEqual(gap(snap + HAIR).lines[1]);
    expect(closed[0]!.pieces.at(-1)!.to.x).toBeCloseTo(210 + snap + HAIR, 9);
    expect(found('R-loose-end', kit, gap(rules.clearance)).filter((f) => f.variant === 'gap')).toEqual([]);
  });

  test('R-loose-end towards the edge of the paper, at pace fast', () => {
    // Two marks "faster", with room for reading and for acting between.
    const towards = (room: number, marks: number) => {
      const line = pen()
        .to(60, 200)
        .straight(500 - 60 - room);
      for (let i = 0; i < marks; i++) line.mark(40 + i * 80, faster, unit);
      return found('R-loose-end', kit, line.drawing());
    };
    const allowed = endFromEdgeOf(rules);
    expect([...towards(allowed, 2), ...towards(allowed - 1, 1)]).toEqual([]);
    expect(towards(allowed - HAIR, 2)).toMatchObject([{ variant: 'edge', severity: 'untidy', allowed }]);
  });

  test('R-given-lines', () => {
    const given = { lines: [{ ...pier().drawing().lines[0]!, id: 'street' }], marks: [] };
    const over = found('R-given-lines', kit, pen().to(150, 200).straight(80).drawing(), { sheet: { given } });
    expect(over).toMatchObject([{ severity: 'stops' }]);
    const away = pen()
      .to(150, 200 + rules.clearance)
      .straight(80)
      .drawing();
    expect(found('R-given-lines', kit, away, { sheet: { given } })).toEqual([]);
  });

  test('R-ink-budget and R-mark-budget', () => {
    const drawing = pier(200).mark(60, faster, unit).mark(140, faster, unit).drawing();
    const budget = (ink: number, marks: number) => ({ limits: { ink, marks } });
    expect(found('R-ink-budget', kit, drawing, budget(200, 2))).toEqual([]);
    expect(found('R-mark-budget', kit, drawing, budget(200, 2))).toEqual([]);
    expect(found('R-ink-budget', kit, drawing, budget(199, 2))).toMatchObject([
      { severity: 'stops', measured: 200, allowed: 199 },
    ]);
    expect(found('R-mark-budget', kit, drawing, budget(200, 1))).toMatchObject([
      { severity: 'stops', measured: 2, allowed: 1 },
    ]);
  });

  test('R-ink-darkness', () => {
    const marked = pier().mark(150, faster, unit).drawing();
    expect(found('R-ink-darkness', kit, marked)).toEqual([]);
    const dark = { ...kit, inks: kit.inks.map((ink) => ({ ...ink, color: kit.line.color })) };
    const said = found('R-ink-darkness', dark, marked);
    expect(said).toHaveLength(new Set(faster).size);
    expect(said[0]).toMatchObject({ measured: 1, severity: 'may-stop' });
  });
});
