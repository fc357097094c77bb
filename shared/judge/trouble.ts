import type { Challenge } from '../documents/challenge.ts';
import { type Design, type Mark, wordOf } from '../documents/design.ts';
import { reversed } from '../documents/kit.ts';
import type { TrueReason } from '../documents/reason.ts';
import { TRACE_RATE, type Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import { pointAt } from '../geometry/path.ts';
import type { Mm, PaperPoint, Seconds } from '../geometry/units.ts';
import type { Layout } from '../track/layout.ts';
import type { Track } from '../track/track.ts';
import { type Judged, judge } from './judge.ts';

/** Why a run goes wrong first, and when and where that can be seen. */
export interface Trouble {
  readonly reason: TrueReason;
  readonly t: Seconds;
  readonly at: PaperPoint;
}

/**
 * What goes wrong first in each run of a drawing that is not met; undefined for all where it is. A mark
 * that only has to be turned round is found by turning it round.
 */
export function troublesOf(
  challenge: Challenge,
  design: Design,
  track: Track,
  { verdict, traces }: Judged,
): readonly (Trouble | undefined)[] {
  if (verdict.met) return traces.map(() => undefined);
  const turned = turnedMark(challenge, design, traces);
  return traces.map((trace) => {
    const met = turned && trace.events.find((event) => event.kind === 'read' && event.mark === turned);
    return met ? { reason: 'met-from-behind', ...momentOf(met) } : firstTrouble(trace, track);
  });
}

/** The mark that was read and makes the drawing right when it is turned round. */
function turnedMark(challenge: Challenge, design: Design, traces: readonly Trace[]): string | undefined {
  const read = new Set(traces.flatMap(({ events }) => events.map((e) => (e.kind === 'read' ? e.mark : ''))));
  const { marks } = design.drawing;
  const candidates = marks.filter((mark) => read.has(mark.id) && wordOf(mark) !== reversed(wordOf(mark)));
  return candidates.find((mark) => {
    const flipped = marks.map((one) => (one === mark ? turnedRound(one) : one));
    const drawing = { ...design.drawing, marks: flipped };
    return judge(challenge, { ...design, drawing }, 'live').verdict.met;
  })?.id;
}

/** The same block with its inks the other way round. */
function turnedRound(mark: Mark): Mark {
  const inks = mark.bands.map(({ ink }) => ink).reverse();
  return { ...mark, bands: mark.bands.map((band, i) => ({ ...band, ink: inks[i]! })) };
}

const momentOf = ({ t, x, y }: { readonly t: Seconds; readonly x: Mm; readonly y: Mm }) => ({
  t,
  at: { x, y },
});

function firstTrouble(trace: Trace, track: Track): Trouble {
  const end = trace.events.at(-1)!;
  const found = [
    ending(trace),
    ...trace.events.flatMap((event) => strange(event, track)),
    ...overlooked(trace, track.layout),
  ];
  const first = found.flatMap((one) => one ?? []).sort((a, b) => a.t - b.t)[0];
  return first ?? { reason: 'falls-short', ...momentOf(end) };
}

/** An ending that is a trouble of its own, where it began. */
function ending(trace: Trace): Trouble | undefined {
  const end = trace.events.at(-1)!;
  switch (trace.ending) {
    case 'never-started':
      return { reason: 'no-line-in-berth', ...momentOf(end) };
    case 'lost':
      return { reason: 'line-lost', ...lastAdvance(trace) };
    case 'stopped':
      return { reason: 'line-ends', ...lastAdvance(trace) };
    case 'off-paper':
      return { reason: 'off-paper', ...momentOf(end) };
    case 'time-up':
      return { reason: 'time-up', ...momentOf(end) };
    default:
      return undefined;
  }
}

/** Where the robot last came further along the drawing. */
function lastAdvance({ samples }: Trace): Pick<Trouble, 't' | 'at'> {
  const { way, x, y } = samples;
  const i = Math.max(0, way.indexOf(way.at(-1) ?? 0));
  return { t: i / TRACE_RATE, at: { x: x[i] ?? 0, y: y[i] ?? 0 } };
}

/** A junction that is seen within so much of a place is the one there. */
const JUNCTION_NEAR: Mm = 20;

/** A junction left to luck, or seen where there is none, or a word that the chart does not have. */
function strange(event: Trace['events'][number], { nodes }: Track): Trouble[] {
  if (event.kind === 'read' && event.action === undefined)
    return [{ reason: 'mark-unknown', ...momentOf(event) }];
  if (event.kind !== 'junction' || event.by !== 'chance') return [];
  const isThere = nodes.some(({ kind, at }) => kind === 'junction' && distance(at, event) <= JUNCTION_NEAR);
  return [{ reason: isThere ? 'left-to-luck' : 'taken-for-junction', ...momentOf(event) }];
}

/** The axle has been over a mark when it was this near to its middle. */
const OVER: Mm = 5;
/** A mark is understood within so much of being driven over; before that nothing can be said. */
const ABOUT: Seconds = 2;

/** Marks that were driven over for the first time without being read as what they are. */
function overlooked(trace: Trace, { lines, marks }: Layout): Trouble[] {
  return marks.flatMap((mark): Trouble[] => {
    const { path } = lines.find(({ id }) => id === mark.line)!;
    const middle = pointAt(path, (mark.from + mark.to) / 2);
    const { x, y } = trace.samples;
    const passed = x.findIndex((px, i) => distance({ x: px, y: y[i]! }, middle) < OVER);
    const t = passed / TRACE_RATE;
    if (passed < 0 || t + ABOUT / 2 > x.length / TRACE_RATE) return [];
    const read = trace.events.some(
      (event) =>
        event.kind === 'read' &&
        event.mark === mark.id &&
        Math.abs(event.t - t) <= ABOUT &&
        (event.word === mark.word || event.word === reversed(mark.word)),
    );
    return read ? [] : [{ reason: 'mark-overlooked', t, at: middle }];
  });
}
