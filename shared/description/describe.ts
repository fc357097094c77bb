import type { Kit } from '../documents/kit.ts';
import { reversed } from '../documents/kit.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Path } from '../geometry/path.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { buildTrack } from '../track/graph.ts';
import type { LaidMark, Layout } from '../track/layout.ts';
import type { Track } from '../track/track.ts';
import { type Bending, bendingsOf } from './bendings.ts';

/** Where a line begins or ends. Lines are counted from 1, in the order of the description. */
export type Spot =
  | { readonly kind: 'berth'; readonly which: 'start' | 'finish' }
  | { readonly kind: 'line'; readonly number: number }
  | { readonly kind: 'paper'; readonly at: PaperPoint };

/** What is met along a line, and how far along. */
export type Step = { readonly way: Mm } & (
  | Bending
  /** Inks in the order in which they are met on the way. */
  | { readonly kind: 'mark'; readonly word: string }
  | { readonly kind: 'junction'; readonly numbers: readonly number[] }
);

export interface DescribedLine {
  readonly number: number;
  readonly given: boolean;
  readonly length: Mm;
  readonly from: Spot;
  readonly to: Spot;
  readonly steps: readonly Step[];
}

/**
 * The drawing in the order in which it would be told: lines that leave the start first, each from the
 * end that is nearer to the start, with what is met along it.
 */
export function describeDrawing(layout: Layout, sheet: Sheet, kit: Kit): DescribedLine[] {
  const track = buildTrack(layout, kit);
  const told = layout.lines
    .map((_, line) => ({ line, back: runsBack(layout.lines[line]!.path, sheet) }))
    .map((way) => ({ ...way, away: awayFromStart(beginOf(layout.lines[way.line]!.path, way.back), sheet) }))
    .sort((a, b) => a.away - b.away || a.line - b.line);
  const numbers = new Map(told.map(({ line }, i) => [line, i + 1]));
  return told.map(({ line, back }) => describeLine({ track, sheet, numbers, line, back }));
}

/** 0 in the start's berth, 1 elsewhere: other lines keep the order in which they were drawn. */
const awayFromStart = (p: PaperPoint, { start }: Sheet): number => (isIn(start, p) ? 0 : 1);

const beginOf = ({ pieces }: Path, back: boolean): PaperPoint => (back ? pieces.at(-1)!.to : pieces[0]!.from);

const isIn = (berth: Berth | undefined, p: PaperPoint): boolean =>
  berth !== undefined && distance(berth.at, p) <= berth.r;

/** Told from its end: where only that lies in the start's berth, or only its beginning in the finish's. */
function runsBack(path: Path, { start, finish }: Sheet): boolean {
  const [from, to] = [beginOf(path, false), beginOf(path, true)];
  if (isIn(start, from) || isIn(start, to)) return !isIn(start, from);
  return isIn(finish, from) && !isIn(finish, to);
}

interface Telling {
  readonly track: Track;
  readonly sheet: Sheet;
  readonly numbers: ReadonlyMap<number, number>;
  readonly line: number;
  readonly back: boolean;
}

function describeLine(telling: Telling): DescribedLine {
  const { track, numbers, line, back } = telling;
  const { path, given } = track.layout.lines[line]!;
  const steps = [...bendingsOf(path), ...marksOf(telling), ...junctionsOf(telling)]
    .map((step) => (back ? turned(step, path.length) : step))
    .sort((a, b) => a.way - b.way);
  const [first, last] = back ? [path.length, 0] : [0, path.length];
  return {
    number: numbers.get(line)!,
    given,
    length: path.length,
    from: spotAt(telling, first, beginOf(path, back)),
    to: spotAt(telling, last, beginOf(path, !back)),
    steps,
  };
}

/** The same step as it is met from the line's other end. */
function turned(step: Step, length: Mm): Step {
  const way = length - step.way;
  switch (step.kind) {
    case 'mark':
      return { ...step, way, word: reversed(step.word) };
    case 'corner':
      return { ...step, way, turn: -step.turn };
    case 'curve':
      return { ...step, way: way - step.length, turn: -step.turn };
    case 'junction':
      return { ...step, way };
  }
}

function marksOf({ track, line }: Telling): Step[] {
  const { id } = track.layout.lines[line]!;
  const middle = (mark: LaidMark): Mm => (mark.from + mark.to) / 2;
  return track.layout.marks
    .filter((mark) => mark.line === id)
    .map((mark) => ({ kind: 'mark', way: middle(mark), word: mark.word }));
}

/** Where another line ends on this one, or crosses it. */
function junctionsOf({ track, line, numbers }: Telling): Step[] {
  const { cuts } = track.lines[line]!;
  return cuts.slice(1, -1).flatMap(({ way, node }): Step[] => {
    const met = othersAt(track, node, line, numbers);
    return met.length > 0 ? [{ kind: 'junction', way, numbers: met }] : [];
  });
}

function othersAt(track: Track, node: number, line: number, numbers: ReadonlyMap<number, number>): number[] {
  const lines = track.nodes[node]!.arms.map((arm) => track.edges[arm.edge]!.line);
  const others = [...new Set(lines)].filter((other) => other !== line);
  return others.map((other) => numbers.get(other)!).sort((a, b) => a - b);
}

function spotAt({ track, sheet, numbers, line }: Telling, way: Mm, at: PaperPoint): Spot {
  if (isIn(sheet.start, at)) return { kind: 'berth', which: 'start' };
  if (isIn(sheet.finish, at)) return { kind: 'berth', which: 'finish' };
  const { cuts } = track.lines[line]!;
  const cut = way === 0 ? cuts[0] : cuts.at(-1);
  const [number] = cut ? othersAt(track, cut.node, line, numbers) : [];
  return number === undefined ? { kind: 'paper', at } : { kind: 'line', number };
}
