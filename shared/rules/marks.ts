import type { Kit } from '../documents/kit.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import type { EdgeMark, Track } from '../track/track.ts';
import type { RuleView } from './context.ts';

/** A mark as a robot meets it: in one direction, at the fastest pace possible there. */
export interface Meeting {
  readonly edge: number;
  readonly mark: EdgeMark;
  /** Index into PACES. */
  readonly pace: number;
}

/** Every mark in each direction from which a robot can come to it. */
export function meetings(view: RuleView): Meeting[] {
  const { track, travel } = view;
  return track.edges.flatMap((edge) =>
    edge.marks.flatMap((mark) => {
      const pace = travel.paceAt(edge.index, mark);
      return pace === undefined ? [] : [{ edge: edge.index, mark, pace }];
    }),
  );
}

/** The team's own marks. */
export const ownMarks = (view: RuleView): LaidMark[] => view.track.layout.marks.filter((mark) => !mark.given);

const lengthOf = (mark: LaidMark): Mm => mark.to - mark.from;

/** A single ink that is long enough to be followed like line: no mark at all. */
export const isColouredStretch = (mark: LaidMark, kit: Kit): boolean =>
  mark.bands.length === 1 && lengthOf(mark) > kit.rules.bands.colouredFrom - TOLERANCE.samePoint;

/** A single ink that is neither a band nor a stretch. */
export const isLoneInk = (mark: LaidMark, kit: Kit): boolean =>
  mark.bands.length === 1 &&
  lengthOf(mark) > kit.rules.bands.unknownFrom - TOLERANCE.samePoint &&
  !isColouredStretch(mark, kit);

/** Read as bands in a row, so that the rules of bands and of room beside marks apply. */
export const isMark = (mark: LaidMark): boolean => mark.bands.length > 1;

/** Whether a mark lies over a junction, a corner or a line's end, and over which. */
export function nodeUnder(track: Track, mark: LaidMark): 'junction' | 'corner' | 'end' | undefined {
  const line = track.lines.find((l) => l.line.id === mark.line)!;
  const slack = TOLERANCE.step;
  const under = line.cuts
    .filter((cut) => cut.way > mark.from + slack && cut.way < mark.to - slack)
    .map((cut) => track.nodes[cut.node]!.kind);
  if (under.includes('junction')) return 'junction';
  if (under.includes('corner')) return 'corner';
  return under.includes('end') || mark.to > line.line.path.length + slack ? 'end' : undefined;
}

/** The tightest radius under a mark; infinite on straight line. */
export function radiusUnder(track: Track, mark: LaidMark): Mm {
  const { path } = track.lines.find((l) => l.line.id === mark.line)!.line;
  let tightest = Number.POSITIVE_INFINITY;
  path.pieces.forEach((piece, i) => {
    const start = path.starts[i]!;
    const overlaps = start < mark.to - TOLERANCE.step && start + piece.length > mark.from + TOLERANCE.step;
    if (overlaps && piece.kind === 'arc') tightest = Math.min(tightest, piece.radius);
  });
  return tightest;
}
