import type { Piece } from '../../shared/documents/design.ts';
import { distance } from '../../shared/geometry/exact-math.ts';
import { fitStroke } from '../../shared/geometry/fitting/fit-stroke.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { addRun, endOf } from './lines.ts';
import { drawsLines, type EditContext, type Edited, refused } from './model.ts';
import { roundPoint } from './quantise.ts';
import { type Snap, type SnapQuery, snapEnd } from './snap.ts';

/** How far from an end a stroke gives way so that the end meets its place without a kink. */
const GIVES: Mm = 40;
/** A stroke that comes back to its own beginning closes, if it is longer than this. */
const LOOP: Mm = 60;
/** Two samples closer than this are one. */
const STILL: Mm = 0.05;

export interface Ends {
  readonly from: Snap;
  readonly to: Snap;
}

/** What the two ends of a stroke catch on. */
function endsOfStroke(samples: readonly PaperPoint[], query: SnapQuery): Ends {
  const first = samples[0]!;
  const last = samples.at(-1)!;
  const from = snapEnd(first, query);
  const closes = !query.free && distance(last, from.at) <= query.reach && lengthOf(samples) > LOOP;
  return { from, to: closes ? { at: from.at, why: 'end' } : snapEnd(last, query) };
}

/** Fits a freehand stroke, pulls its ends to what they caught on, and adds it to the drawing. */
export function addStroke(samples: readonly PaperPoint[], query: SnapQuery): Edited {
  if (!drawsLines(query.context.play)) return refused('only-marks');
  const apart = samples.filter((p, i) => i === 0 || distance(p, samples[i - 1]!) > STILL);
  if (apart.length < 2) return refused('too-short');
  const ends = endsOfStroke(apart, query);
  const fitted = fitStroke(pulled(apart, ends));
  if (!fitted) return refused('too-short');
  const run = pinned(fitted.from, fitted.pieces, ends);
  return addRun(query.design, query.context, run.from, run.pieces);
}

function lengthOf(samples: readonly PaperPoint[]): Mm {
  return samples.slice(1).reduce((sum, p, i) => sum + distance(p, samples[i]!), 0);
}

/** Moves both ends of the samples onto their places; the shift fades out along the stroke. */
function pulled(samples: readonly PaperPoint[], ends: Ends): PaperPoint[] {
  const total = lengthOf(samples);
  const fade = Math.min(GIVES, total / 2) || 1;
  const first = samples[0]!;
  const last = samples.at(-1)!;
  let way = 0;
  return samples.map((p, i) => {
    if (i > 0) way += distance(p, samples[i - 1]!);
    const a = Math.max(0, 1 - way / fade);
    const b = Math.max(0, 1 - (total - way) / fade);
    return {
      x: p.x + a * (ends.from.at.x - first.x) + b * (ends.to.at.x - last.x),
      y: p.y + a * (ends.from.at.y - first.y) + b * (ends.to.at.y - last.y),
    };
  });
}

/** The fitted run with its ends exactly where they caught; free ends stay as fitted. */
function pinned(
  from: PaperPoint,
  pieces: readonly Piece[],
  ends: Ends,
): { readonly from: PaperPoint; readonly pieces: readonly Piece[] } {
  const begin = ends.from.why === 'free' ? from : ends.from.at;
  const end = ends.to.why === 'free' ? endOf({ from, pieces: [...pieces] }) : ends.to.at;
  const last = pieces.length - 1;
  return {
    from: roundPoint(begin),
    pieces: pieces.map((piece, i) => (i === last ? { ...piece, to: roundPoint(end) } : piece)),
  };
}

/** Adds one straight. */
export const addStraight = (
  design: SnapQuery['design'],
  context: EditContext,
  from: PaperPoint,
  to: PaperPoint,
): Edited => addRun(design, context, from, [{ to, bulge: 0 }]);
