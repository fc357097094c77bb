import { type Kit, reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';
import { halfWidth } from '../odds/motion.ts';
import { MODEL } from '../run/model.ts';
import type { Rail } from './rails.ts';

/** A mark as the search places it: ways along its line, and its word in the line's direction. */
export interface PlacedMark {
  readonly line: number;
  readonly from: Mm;
  readonly to: Mm;
  readonly word: string;
}

/** A mark as it is met on a rail. */
export interface MetMark {
  readonly from: Mm;
  readonly to: Mm;
  readonly word: string;
  /** Index in the list of placed marks. */
  readonly index: number;
}

/** The marks on a rail in the order in which they are met. */
export function metOn(rail: Rail, marks: readonly PlacedMark[]): MetMark[] {
  const { line, low, high, along } = rail.edge;
  const met: MetMark[] = [];
  marks.forEach((mark, index) => {
    const middle = (mark.from + mark.to) / 2;
    if (mark.line !== line || middle < low || middle >= high) return;
    const from = along ? mark.from - low : high - mark.to;
    met.push({
      from,
      to: from + mark.to - mark.from,
      word: along ? mark.word : reversed(mark.word),
      index,
    });
  });
  return met.length > 1 ? met.sort((a, b) => a.from - b.from) : met;
}

/** A bend shorter than this does not throw the bar so far off. */
const SHORT_BEND: Mm = 6;

/**
 * Whether bands between two ways of a rail become a word: enough black before and after them, seen by a
 * bar that follows a line. `plain` is where the bar last saw anything else, `next` where it will again.
 */
export function isRead(rail: Rail, from: Mm, to: Mm, plain: Mm, next: Mm, kit: Kit): boolean {
  const { edge, end, blind } = rail;
  if (from - plain < MODEL.blackBefore || next < to + MODEL.blackAfter) return false;
  const turnsAway = end === 'junction' || end === 'corner';
  if (to + MODEL.blackAfter > edge.length - (turnsAway ? halfWidth(kit) : 0) && end !== 'joint') return false;
  return !blind.some((bend) => {
    const low = Math.max(bend.from, from - MODEL.blackBefore);
    return Math.min(bend.to, to + MODEL.blackAfter) - low > SHORT_BEND;
  });
}
