import type { Challenge } from '../documents/challenge.ts';
import { DESIGN_LIMITS, type Design, type Drawing, type Line, type Mark } from '../documents/design.ts';
import type { DesignRefusal, DocumentPath } from '../documents/refusal.ts';
import { pathOf } from '../geometry/path.ts';
import { sizeProblems } from '../kit/check-numbers.ts';
import { crowdRefusal } from './crowded.ts';

/**
 * The first reason not to judge a design, or undefined: on this challenge nothing could be driven, or the
 * design does not suit its sheet. Drives nothing, so it may run at every stroke.
 */
export const refusalOf = (challenge: Challenge, design: Design): DesignRefusal | undefined =>
  undrivable(challenge) ?? designRefusal(challenge, design);

function undrivable({ sheet, kit, starts, goals }: Challenge): DesignRefusal | undefined {
  if (starts.includes('finish') && !sheet.finish) return { code: 'finish-missing', path: ['starts'] };
  const i = goals.findIndex(({ start }) => start !== undefined && !starts.includes(start));
  if (i >= 0) return { code: 'start-missing', path: ['goals', i, 'start'] };
  const [size] = sizeProblems(kit);
  return size && { code: 'size-zero', path: ['kit', ...size.path] };
}

/** The first reason why a design does not suit a challenge that is sound in itself, or undefined. */
export function designRefusal(challenge: Challenge, design: Design): DesignRefusal | undefined {
  const { drawing } = design;
  return (
    givenIdTaken(challenge.sheet.given, drawing) ??
    misplacedMark(
      challenge,
      drawing.marks,
      [...challenge.sheet.given.lines, ...drawing.lines],
      ['drawing'],
    ) ??
    overSize(challenge, drawing) ??
    crowdRefusal(challenge.sheet, drawing)
  );
}

function givenIdTaken(given: Drawing, drawing: Drawing): DesignRefusal | undefined {
  for (const kind of ['lines', 'marks'] as const) {
    const taken = new Set(given[kind].map((thing) => thing.id));
    const i = drawing[kind].findIndex((thing) => taken.has(thing.id));
    const thing = drawing[kind][i];
    if (thing) return { code: 'id-already-given', path: ['drawing', kind, i, 'id'], id: thing.id };
  }
  return undefined;
}

/** The first mark that stands on none of these lines, past its end, or in an ink that the kit lacks. */
export function misplacedMark(
  { kit }: Challenge,
  marks: readonly Mark[],
  lines: readonly Line[],
  within: DocumentPath,
): DesignRefusal | undefined {
  const lengths = new Map(lines.map((line) => [line.id, pathOf(line).length]));
  const inks = new Set(kit.inks.map((ink) => ink.id));
  for (const [i, mark] of marks.entries()) {
    const path = [...within, 'marks', i];
    const length = lengths.get(mark.line);
    if (length === undefined) {
      return { code: 'mark-without-line', path: [...path, 'line'], mark: mark.id, line: mark.line };
    }
    if (mark.at > length) {
      return {
        code: 'mark-past-end',
        path: [...path, 'at'],
        mark: mark.id,
        measured: mark.at,
        allowed: length,
      };
    }
    const strange = mark.bands.findIndex((band) => !inks.has(band.ink));
    const band = mark.bands[strange];
    if (band) {
      const where = [...path, 'bands', strange, 'ink'];
      return { code: 'unknown-ink', path: where, mark: mark.id, ink: band.ink };
    }
  }
  return undefined;
}

/** What is given and what is drawn share one sheet, and the engine is budgeted for the two together. */
function overSize({ sheet }: Challenge, drawing: Drawing): DesignRefusal | undefined {
  const all = [sheet.given, drawing];
  const pieces = all.reduce((sum, d) => sum + d.lines.reduce((n, line) => n + line.pieces.length, 0), 0);
  if (pieces > DESIGN_LIMITS.pieces) {
    const path = ['drawing', 'lines'];
    return { code: 'too-many-pieces', path, measured: pieces, allowed: DESIGN_LIMITS.pieces };
  }
  const marks = all.reduce((sum, d) => sum + d.marks.length, 0);
  return marks > DESIGN_LIMITS.marks ? tooManyMarks(marks, DESIGN_LIMITS.marks) : undefined;
}

const tooManyMarks = (measured: number, allowed: number): DesignRefusal => ({
  code: 'too-many-marks',
  path: ['drawing', 'marks'],
  measured,
  allowed,
});
