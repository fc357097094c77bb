import * as z from 'zod/mini';
import { Bulge, Coordinate, Id, Length, Point } from './values.ts';

/** The most that one drawing may hold; the rules engine is budgeted for these. */
export const DESIGN_LIMITS = { pieces: 500, lines: 200, marks: 100, bandsInMark: 8 } as const;

/** One straight or arc, from wherever the line has come to, to `to`. */
export const Piece = z.strictObject({ to: Point, bulge: Bulge });

export const Line = z.strictObject({
  id: Id,
  width: Length,
  from: Point,
  pieces: z.array(Piece).check(z.minLength(1), z.maxLength(DESIGN_LIMITS.pieces)),
});

/** One block of ink. `gap` is the white before the band, negative where it overlaps the one before. */
export const Band = z.strictObject({
  ink: z.string().check(z.regex(/^[A-Z]$/)),
  length: Length,
  gap: Coordinate,
});

/** A mark on line `line` (of the design or given); `at` is the way along the line to its first band. */
export const Mark = z.strictObject({
  id: Id,
  line: Id,
  at: Length,
  bands: z.array(Band).check(z.minLength(1), z.maxLength(DESIGN_LIMITS.bandsInMark)),
});

const samePlace = (a: { x: number; y: number }, b: { x: number; y: number }) => a.x === b.x && a.y === b.y;

type DrawnLine = z.output<typeof Line>;

function lineWithoutLength(line: DrawnLine): boolean {
  let from = line.from;
  return line.pieces.some((piece) => {
    const nowhere = samePlace(from, piece.to);
    from = piece.to;
    return nowhere;
  });
}

const idsDiffer = (things: readonly { id: string }[]) =>
  new Set(things.map((t) => t.id)).size === things.length;

/** Lines and marks, as a team draws them and as a sheet gives them. */
export const Drawing = z
  .strictObject({
    lines: z.array(Line).check(z.maxLength(DESIGN_LIMITS.lines)),
    marks: z.array(Mark).check(z.maxLength(DESIGN_LIMITS.marks)),
  })
  .check(
    z.refine((d) => !d.lines.some(lineWithoutLength), { error: 'line-of-length-zero', path: ['lines'] }),
    z.refine((d) => d.lines.reduce((n, line) => n + line.pieces.length, 0) <= DESIGN_LIMITS.pieces, {
      error: 'too-many-pieces',
      path: ['lines'],
    }),
    z.refine((d) => idsDiffer(d.lines), { error: 'same-id-twice', path: ['lines'] }),
    z.refine((d) => idsDiffer(d.marks), { error: 'same-id-twice', path: ['marks'] }),
  );

export const Design = z.strictObject({ version: z.literal(1), drawing: Drawing });

export type Piece = z.output<typeof Piece>;
export type Line = z.output<typeof Line>;
export type Band = z.output<typeof Band>;
export type Mark = z.output<typeof Mark>;
export type Drawing = z.output<typeof Drawing>;
export type Design = z.output<typeof Design>;

/** The inks of a mark, one letter a band, in the direction of its line. */
export const wordOf = ({ bands }: Pick<Mark, 'bands'>): string => bands.map(({ ink }) => ink).join('');

/** The way in mm along a line that bands take up, without the white before the first. */
export const lengthOfBands = (bands: readonly Band[]): number =>
  bands.reduce((sum, band, i) => sum + band.length + (i === 0 ? 0 : band.gap), 0);

export const EMPTY_DRAWING: Drawing = { lines: [], marks: [] };
export const EMPTY_DESIGN: Design = { version: 1, drawing: EMPTY_DRAWING };
