import fc from 'fast-check';
import type { Band, Drawing, Line, Mark } from '../shared/documents/design.ts';
import type { Kit } from '../shared/documents/kit.ts';
import type { Berth, Sheet } from '../shared/documents/sheet.ts';
import { pathOf } from '../shared/geometry/path.ts';
import type { PaperPoint } from '../shared/geometry/units.ts';
import { ruleContext } from '../shared/rules/rules.ts';
import { angleBetween } from '../shared/track/arms.ts';
import { bandsOf, KITS } from './kits.ts';

/**
 * Designs such as children draw: one line from the start berth over a few corners and curves to the
 * finish berth, up to two more lines that branch off or cross it, and a few marks, most of them sound.
 * All numbers are steps of the file form. And the ways in which the same ink can be drawn differently.
 */
export interface Plausible {
  /** Drawn with this kit's inks, in its widths. */
  readonly kit: Kit;
  readonly sheet: Sheet;
  readonly drawing: Drawing;
}

export const SHEET_WIDTH = 420;
export const SHEET_HEIGHT = 297;

export const stepped = (mm: number): number => Math.round(mm * 100) / 100;
const stepPoint = (x: number, y: number): PaperPoint => ({ x: stepped(x), y: stepped(y) });

const whole = (least: number, most: number) => fc.integer({ min: least, max: most });
const place = fc.record({ x: whole(2500, 39_500), y: whole(2500, 27_200) }).map(({ x, y }) => ({
  x: x / 100,
  y: y / 100,
}));
const bulge = fc.oneof(
  { arbitrary: fc.constant(0), weight: 4 },
  { arbitrary: whole(-60, 60).map((n) => n / 100), weight: 1 },
);

interface Leg {
  /** Degrees from ahead. */
  readonly turn: number;
  readonly length: number;
  readonly bulge: number;
}

const leg: fc.Arbitrary<Leg> = fc.record({
  // A bit beside the whole degree, so that no turn sits on a limit.
  turn: fc
    .oneof({ arbitrary: whole(-90, 90), weight: 3 }, { arbitrary: whole(-150, 150), weight: 1 })
    .map((n) => n + 0.37),
  length: whole(3500, 13_000).map((n) => n / 100),
  bulge,
});
const legs = fc.array(leg, { minLength: 2, maxLength: 6 });

/** A line drawn leg by leg; a leg that would leave the paper turns to the other side or is left out. */
function lineOver(id: string, from: PaperPoint, heading: number, width: number, over: readonly Leg[]): Line {
  const pieces: Line['pieces'] = [];
  let at = from;
  let angle = heading;
  for (const { turn, length, bulge: bend } of over) {
    for (const side of [turn, -turn]) {
      const next = angle + (side * Math.PI) / 180;
      const to = stepPoint(at.x + length * Math.cos(next), at.y + length * Math.sin(next));
      if (to.x < 5 || to.x > SHEET_WIDTH - 5 || to.y < 5 || to.y > SHEET_HEIGHT - 5) continue;
      pieces.push({ to, bulge: bend });
      at = to;
      angle = next + 2 * Math.atan(bend);
      break;
    }
  }
  return { id, width, from, pieces };
}

/** The direction in the middle of the wider gap that a line leaves free at the end of one of its pieces. */
function widestGap(line: Line, piece: number): number {
  const { pieces } = pathOf(line);
  const heading = (a: PaperPoint, b: PaperPoint): number => Math.atan2(b.y - a.y, b.x - a.x);
  const back = heading(pieces[piece]!.to, pieces[piece]!.from);
  const next = pieces[piece + 1];
  if (!next) return back + Math.PI / 2;
  const on = heading(next.from, next.to);
  const gap = (((on - back) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return gap > Math.PI ? back + gap / 2 : on + (2 * Math.PI - gap) / 2;
}

const soundBands = (kit: Kit): fc.Arbitrary<Band[]> =>
  fc.constantFrom(...kit.chart.map((row) => row.word)).map((word) => bandsOf(kit, word));
const paintedBands = (kit: Kit): fc.Arbitrary<Band[]> =>
  fc
    .array(
      fc.record({
        ink: fc.constantFrom(...kit.inks.map((i) => i.id)),
        length: whole(300, 900).map((n) => n / 100),
        gap: whole(-150, 150).map((n) => n / 100),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map(([first, ...others]) => [{ ...first!, gap: 0 }, ...others]);
const mark = (kit: Kit) =>
  fc.record({
    line: whole(0, 2),
    share: whole(0, 1000),
    bands: fc.oneof({ arbitrary: soundBands(kit), weight: 3 }, { arbitrary: paintedBands(kit), weight: 1 }),
  });

export const lengthOf = (bands: readonly Band[]): number =>
  bands.reduce((sum, band, i) => sum + band.length + (i === 0 ? 0 : band.gap), 0);

/** With one of the sample kits. */
export const plausible: fc.Arbitrary<Plausible> = fc.constantFrom(...KITS).chain(plausibleWith);

function plausibleWith(kit: Kit): fc.Arbitrary<Plausible> {
  const branch = fc.record({
    at: whole(0, 5),
    free: place,
    loose: fc.boolean(),
    heading: whole(-20, 20),
    legs,
  });
  return fc
    .record({
      main: legs,
      branches: fc.array(branch, { maxLength: 2 }),
      marks: fc.array(mark(kit), { maxLength: 4 }),
    })
    .map(({ main, branches, marks }) => {
      const berth: PaperPoint = { x: 45, y: 150 };
      const width = kit.rules.lineWidth.nominal;
      const first = { turn: 0, length: 75, bulge: 0 };
      const lines = [lineOver('main', berth, 0, width, [first, ...main])];
      branches.forEach((one, i) => {
        const vertex = one.at % lines[0]!.pieces.length;
        const from = one.loose ? one.free : lines[0]!.pieces[vertex]!.to;
        const aside = widestGap(lines[0]!, vertex) + (one.heading * Math.PI) / 180;
        const [leaving, ...others] = one.legs.slice(0, 2);
        const line = lineOver(`branch-${i}`, from, aside, width, [{ ...leaving!, turn: 0 }, ...others]);
        if (line.pieces.length > 0) lines.push(line);
      });
      const finish = lines[0]!.pieces.at(-1)!.to;
      return {
        kit,
        sheet: sheetFrom(berth, finish),
        drawing: { lines, marks: marks.flatMap((m, i) => standing(`m${i}`, lines, m)) },
      };
    });
}

function standing(
  id: string,
  lines: readonly Line[],
  { line, share, bands }: { line: number; share: number; bands: Band[] },
): Mark[] {
  const on = lines[line % lines.length]!;
  const room = pathOf(on).length - lengthOf(bands) - 0.02;
  return room > 0 ? [{ id, line: on.id, at: stepped((room * share) / 1000), bands }] : [];
}

const berthAt = (at: PaperPoint, heading: number): Berth => ({ name: { en: 'berth' }, at, heading, r: 15 });

export const sheetFrom = (start: PaperPoint, finish: PaperPoint): Sheet => ({
  w: SHEET_WIDTH,
  h: SHEET_HEIGHT,
  start: berthAt(start, 0),
  finish: berthAt(finish, 0),
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
});

/** One line drawn from its other end; its marks keep their places on the paper. */
export function drawnBackwards(drawing: Drawing, id: string): Drawing {
  const line = drawing.lines.find((l) => l.id === id)!;
  const ends = [line.from, ...line.pieces.map((piece) => piece.to)].reverse();
  const bulges = line.pieces.map((piece) => 0 - piece.bulge).reverse();
  const back: Line = {
    ...line,
    from: ends[0]!,
    pieces: bulges.map((b, i) => ({ to: ends[i + 1]!, bulge: b })),
  };
  const { length } = pathOf(line);
  const turned = (m: Mark): Mark => {
    const gaps = m.bands.map((_, i) => (i === 0 ? 0 : m.bands[m.bands.length - i]!.gap));
    return {
      ...m,
      at: stepped(length - m.at - lengthOf(m.bands)),
      bands: [...m.bands].reverse().map((band, i) => ({ ...band, gap: gaps[i]! })),
    };
  };
  return {
    lines: drawing.lines.map((l) => (l.id === id ? back : l)),
    marks: drawing.marks.map((m) => (m.line === id ? turned(m) : m)),
  };
}

/** One line drawn as two that meet at a vertex (1 is the end of its first piece) that no mark covers. */
export function drawnAsTwo(drawing: Drawing, id: string, vertex: number): Drawing {
  const line = drawing.lines.find((l) => l.id === id)!;
  const way = pathOf(line).starts[vertex]!;
  const first: Line = { ...line, pieces: line.pieces.slice(0, vertex) };
  const second: Line = {
    ...line,
    id: `${id}-${drawing.lines.length}`,
    from: line.pieces[vertex - 1]!.to,
    pieces: line.pieces.slice(vertex),
  };
  const moved = (m: Mark): Mark =>
    m.line === id && m.at >= way ? { ...m, line: second.id, at: stepped(m.at - way) } : m;
  return {
    lines: drawing.lines.flatMap((l) => (l.id === id ? [first, second] : [l])),
    marks: drawing.marks.map(moved),
  };
}

/** Whether a mark lies over the vertex, so that the line can't have been drawn as two there. */
export function isCovered(drawing: Drawing, id: string, vertex: number): boolean {
  const way = pathOf(drawing.lines.find((l) => l.id === id)!).starts[vertex]!;
  return drawing.marks.some(
    (m) => m.line === id && m.at < way + 0.02 && m.at + lengthOf(m.bands) > way - 0.02,
  );
}

/** The first straight of a line drawn as two pieces, in the middle or near it. */
export function drawnInPieces(drawing: Drawing, id: string): Drawing {
  const line = drawing.lines.find((l) => l.id === id)!;
  const i = line.pieces.findIndex((piece) => piece.bulge === 0);
  if (i < 0) return drawing;
  const from = i === 0 ? line.from : line.pieces[i - 1]!.to;
  const { to } = line.pieces[i]!;
  const middle = { to: stepPoint((from.x + to.x) / 2, (from.y + to.y) / 2), bulge: 0 };
  const pieces = [...line.pieces.slice(0, i), middle, ...line.pieces.slice(i)];
  return { ...drawing, lines: drawing.lines.map((l) => (l.id === id ? { ...l, pieces } : l)) };
}

/** Everything moved over the paper: turned by `angle` about the sheet's middle, then shifted. */
export function movedOver(design: Plausible, angle: number, dx: number, dy: number, size: number): Plausible {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const at = ({ x, y }: PaperPoint): PaperPoint => {
    const px = x - SHEET_WIDTH / 2;
    const py = y - SHEET_HEIGHT / 2;
    return stepPoint(size / 2 + px * c - py * s + dx, size / 2 + px * s + py * c + dy);
  };
  const berth = (b: Berth): Berth => ({ ...b, at: at(b.at), heading: b.heading + angle });
  const { kit, sheet, drawing } = design;
  return {
    kit,
    sheet: { ...sheet, w: size, h: size, start: berth(sheet.start), finish: berth(sheet.finish!) },
    drawing: {
      ...drawing,
      lines: drawing.lines.map((line) => ({
        ...line,
        from: at(line.from),
        pieces: line.pieces.map((piece) => ({ ...piece, to: at(piece.to) })),
      })),
    },
  };
}

/** Lines drawn all but over one another meet, or don't, by a hundredth of a millimetre. */
export const hasDoubledLine = ({ kit, sheet, drawing }: Plausible): boolean =>
  ruleContext(sheet, drawing, kit).track.nodes.some(({ arms }) =>
    arms.some((one) => arms.some((two) => two !== one && angleBetween(one, two) < 0.25)),
  );
