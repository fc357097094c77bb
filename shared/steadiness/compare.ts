import type { Cause } from '../documents/outlook.ts';
import type { Ending, RunEventOf } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { Story, Turn } from './story.ts';

/** Where two runs part, and why. */
export interface Parting {
  readonly cause: Cause;
  readonly at: PaperPoint;
  readonly mark?: string;
}

/** Robots that do the same do it within so much of one place. */
const SAME_PLACE: Mm = 15;
/** Where they park or stop may lie further apart, by their speeds. */
const SAME_END: Mm = 25;

/** Ways along the drawing of one place differ by less, until two runs part. */
const SAME_WAY: Mm = 40;

/**
 * Where a disturbed run parts from the undisturbed one that it follows; undefined where it obeys the same
 * marks at the same junctions and ends in the same place.
 */
export function partingOf(ideal: Story, disturbed: Story): Parting | undefined {
  const until = comparedUntil(ideal, disturbed);
  const theirs = disturbed.turns.filter((turn) => turn.way <= until);
  let next = 0;
  for (const turn of ideal.turns) {
    if (turn.way > until) break;
    const found = theirs.findIndex((other, i) => i >= next && isSame(turn, other));
    if (found < 0) {
      const parting = missing(turn, theirs.slice(next), disturbed.end);
      if (parting) return parting;
      continue;
    }
    const strange = theirs.slice(next, found).find(isRead);
    if (strange) return misread(strange);
    next = found + 1;
  }
  const strange = theirs.slice(next).find(isRead);
  if (strange) return misread(strange);
  return endsAlike(ideal.end, disturbed.end) ? undefined : endParting(disturbed.end);
}

/** Where time was up for both, the slower one has not come so far: that is no difference. */
function comparedUntil(ideal: Story, disturbed: Story): Mm {
  const timeUp = ideal.end.ending === 'time-up' && disturbed.end.ending === 'time-up';
  return timeUp ? Math.min(ideal.end.way, disturbed.end.way) - SAME_WAY : Number.POSITIVE_INFINITY;
}

/** Whether two turns are made at one place, and on one passage of it. */
const isHere = (a: Turn, b: Turn): boolean =>
  distance(a, b) <= SAME_PLACE && Math.abs(a.way - b.way) <= SAME_WAY;

/**
 * A junction at which a mark decides is the same only where the mark decides for the other one too. Junctions that
 * only one of them saw matter by what follows from them.
 */
function isSame(a: Turn, b: Turn): boolean {
  if (!isHere(a, b)) return false;
  if (a.kind === 'read') return b.kind === 'read' && a.word === b.word;
  if (a.kind === 'turn-back') return b.kind === 'turn-back';
  return b.kind === 'junction' && a.took === b.took && (a.by === 'mark') === (b.by === 'mark');
}

const isRead = (turn: Turn): turn is RunEventOf<'read'> => turn.kind === 'read';

const misread = (read: RunEventOf<'read'>): Parting => ({
  cause: 'mark-misread',
  at: placeOf(read),
  ...(read.mark === undefined ? {} : { mark: read.mark }),
});

const placeOf = ({ x, y }: PaperPoint): PaperPoint => ({ x, y });

/**
 * A turn of the undisturbed run is missing among those of the other one that are left: something else was done
 * at its place, or all was over before, or a mark was missed. A junction at which no mark decides may go
 * unseen: then it matters by what follows only.
 */
function missing(turn: Turn, left: readonly Turn[], end: RunEventOf<'end'>): Parting | undefined {
  const other = left.find((one) => one.kind === turn.kind && isHere(one, turn));
  if (other) return other.kind === 'read' ? misread(other) : { cause: 'other-branch', at: placeOf(other) };
  if (turn.kind === 'junction' && turn.by !== 'mark') return undefined;
  // Until they part, both have come the same way along the drawing.
  if (FAILS[end.ending] && end.way < turn.way + SAME_PLACE) return endParting(end);
  if (turn.kind !== 'read') return { cause: 'other-branch', at: placeOf(turn) };
  return { cause: 'mark-missed', at: placeOf(turn), ...(turn.mark === undefined ? {} : { mark: turn.mark }) };
}

const FAILS: Readonly<Partial<Record<Ending, Cause>>> = {
  lost: 'lost',
  'off-paper': 'off-paper',
  'time-up': 'time-up',
  'never-started': 'never-started',
};

const endParting = (end: RunEventOf<'end'>): Parting => ({
  cause: FAILS[end.ending] ?? 'other-end',
  at: placeOf(end),
});

function endsAlike(a: RunEventOf<'end'>, b: RunEventOf<'end'>): boolean {
  if (a.ending !== b.ending) return false;
  if (a.ending === 'finished' || a.ending === 'time-up') return true;
  return distance(a, b) <= SAME_END;
}
