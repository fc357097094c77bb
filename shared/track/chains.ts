import { TOLERANCE } from '../geometry/tolerances.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { leavingDirection, turnBetween } from './arms.ts';
import {
  cutLine,
  hasOverhang,
  type InkLine,
  isUnderMark,
  joinedLine,
  keyOf,
  turnedRound,
} from './ink-lines.ts';
import { numbersOf, smallestForm } from './line-form.ts';

export interface Chain {
  readonly line: InkLine;
  /** Comes back to its beginning, where nothing else ends or bends. */
  readonly isRing: boolean;
}

/**
 * Lines cut where three or more arms meet in a point or a line goes back over itself, and joined where two
 * ends of one width meet.
 */
export function chainsOf(drawn: readonly InkLine[]): Chain[] {
  const lines = uniqueLines(drawn);
  const arms = armCounts(lines);
  // What was drawn twice in other stretches, as a ring from another vertex, is the same parts now.
  const parts = uniqueLines(lines.flatMap((line) => cutLine(line, branchings(line, arms))));
  return assembled(parts, partnersOf(parts, armCounts(parts)));
}

/** A line drawn twice is drawn once; its marks stand together on the one that stays. */
export function uniqueLines(lines: readonly InkLine[]): InkLine[] {
  const alike = new Map<string, number>();
  for (const line of lines) alike.set(endsKey(line), (alike.get(endsKey(line)) ?? 0) + 1);
  const unique = new Map<string, InkLine>();
  lines.forEach((line, i) => {
    // Only lines with the same ends need a closer look.
    const single = alike.get(endsKey(line)) === 1;
    const key = single ? `${i}` : numbersOf(smallestForm(line, false)).join(' ');
    const before = unique.get(key);
    unique.set(key, before ? withMarksOf(before, line) : line);
  });
  return [...unique.values()];
}

const endsKey = ({ from, pieces }: InkLine): string =>
  [keyOf(from), keyOf(pieces.at(-1)!.to)].sort().join(' ');

function withMarksOf(line: InkLine, twice: InkLine): InkLine {
  const same = keyOf(line.from) === keyOf(twice.from);
  const { marks } = same || hasOverhang(twice) ? twice : turnedRound(twice);
  return { ...line, marks: [...line.marks, ...marks] };
}

function armCounts(lines: readonly InkLine[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const add = (p: PaperPoint, arms: number): void => {
    counts.set(keyOf(p), (counts.get(keyOf(p)) ?? 0) + arms);
  };
  for (const { from, pieces } of lines) {
    add(from, 1);
    pieces.forEach((piece, i) => {
      add(piece.to, i === pieces.length - 1 ? 1 : 2);
    });
  }
  return counts;
}

function branchings(line: InkLine, arms: ReadonlyMap<string, number>): number[] {
  const inner = line.pieces.slice(1).map((_, i) => i + 1);
  return inner.filter((i) => {
    const branches = (arms.get(keyOf(line.pieces[i - 1]!.to)) ?? 0) > 2;
    return (branches || isBackOver(line, i)) && !isUnderMark(line, line.path.starts[i]!);
  });
}

/** Whether the line goes back over itself from the vertex: drawn as two, the parts would not be joined. */
function isBackOver({ path }: InkLine, vertex: number): boolean {
  const way = path.starts[vertex]!;
  const turn = turnBetween(leavingDirection(path, way, false), leavingDirection(path, way, true));
  return Math.abs(turn) <= TOLERANCE.tangent;
}

interface End {
  readonly part: number;
  readonly last: boolean;
}

const endKey = ({ part, last }: End): string => `${part}${last ? '>' : '<'}`;

/** Which end goes on in which other end. */
function partnersOf(parts: readonly InkLine[], arms: ReadonlyMap<string, number>): ReadonlyMap<string, End> {
  const meeting = new Map<string, End[]>();
  parts.forEach((line, part) => {
    for (const last of [false, true]) {
      const key = keyOf(last ? line.pieces.at(-1)!.to : line.from);
      meeting.set(key, [...(meeting.get(key) ?? []), { part, last }]);
    }
  });
  const partners = new Map<string, End>();
  for (const [key, ends] of meeting) {
    const [a, b] = ends;
    if (!a || !b || ends.length > 2 || arms.get(key) !== 2 || !goesOn(parts, a, b)) continue;
    partners.set(endKey(a), b);
    partners.set(endKey(b), a);
  }
  return partners;
}

function goesOn(parts: readonly InkLine[], a: End, b: End): boolean {
  const one = parts[a.part]!;
  const two = parts[b.part]!;
  if (one.width !== two.width || hasOverhang(one) || hasOverhang(two)) return false;
  const turn = turnBetween(leaving(one, a.last), leaving(two, b.last));
  // A line back over itself is no longer line.
  return Math.abs(turn) > TOLERANCE.tangent;
}

const leaving = ({ path }: InkLine, last: boolean) => leavingDirection(path, last ? path.length : 0, !last);

function assembled(parts: readonly InkLine[], partners: ReadonlyMap<string, End>): Chain[] {
  const used = new Set<number>();
  return parts.flatMap((_, part) => {
    if (used.has(part)) return [];
    const { first, isRing } = beginningOf(part, partners);
    let line: InkLine | undefined;
    let begin: End | undefined = first;
    while (begin && !used.has(begin.part)) {
      used.add(begin.part);
      const next: InkLine = begin.last ? turnedRound(parts[begin.part]!) : parts[begin.part]!;
      line = line ? joinedLine(line, next) : next;
      begin = partners.get(endKey({ part: begin.part, last: !begin.last }));
    }
    return line ? [{ line, isRing }] : [];
  });
}

/** The end at which the chain of a part begins, found by going back from it. */
function beginningOf(part: number, partners: ReadonlyMap<string, End>): { first: End; isRing: boolean } {
  let first: End = { part, last: false };
  for (;;) {
    const before = partners.get(endKey(first));
    if (!before) return { first, isRing: false };
    first = { part: before.part, last: !before.last };
    if (first.part === part) return { first: { part, last: false }, isRing: true };
  }
}
