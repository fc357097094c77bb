import type { Challenge } from '../documents/challenge.ts';
import { DESIGN_LIMITS, type Design, type Drawing } from '../documents/design.ts';
import type { DesignRefusal } from '../documents/refusal.ts';
import { pathOf } from '../geometry/path.ts';
import { crowdRefusal } from './crowded.ts';

/** The first reason not to judge a design, or undefined. Drives nothing, so it may run at every stroke. */
export function refusalOf(challenge: Challenge, design: Design): DesignRefusal | undefined {
  const { drawing } = design;
  return (
    givenIdTaken(challenge.sheet.given, drawing) ??
    misplacedMark(challenge, drawing) ??
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

function misplacedMark({ sheet, kit }: Challenge, drawing: Drawing): DesignRefusal | undefined {
  const lengths = new Map([...sheet.given.lines, ...drawing.lines].map((l) => [l.id, pathOf(l).length]));
  const inks = new Set(kit.inks.map((ink) => ink.id));
  for (const [i, mark] of drawing.marks.entries()) {
    const path = ['drawing', 'marks', i];
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
