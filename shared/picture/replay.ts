import { type Action, PACES, type Pace } from '../documents/kit.ts';
import { type RunEventOf, TRACE_RATE, type Trace } from '../documents/trace.ts';
import { norm } from '../geometry/exact-math.ts';
import { directionAt, pathFoot, pointAt } from '../geometry/path.ts';
import type { Direction } from '../geometry/piece.ts';
import type { Mm, PaperPoint, Seconds } from '../geometry/units.ts';
import type { LaidLine, Layout } from '../track/layout.ts';

/** Where a robot stands at one moment of a run; `at` is the middle of the axle. */
export interface Pose {
  readonly at: PaperPoint;
  readonly heading: Direction;
  readonly pace: Pace;
  readonly way: Mm;
}

/** Length of a run, s. */
export function durationOf(trace: Trace): Seconds {
  const sampled = (trace.samples.x.length - 1) / TRACE_RATE;
  return Math.max(0, sampled, trace.events.at(-1)?.t ?? 0);
}

/** The robot at time `t`, between two samples; outside the run, its first or last place. */
export function poseAt(trace: Trace, t: Seconds): Pose {
  const { x, y, cos, sin, way, pace } = trace.samples;
  const last = x.length - 1;
  const step = Math.min(Math.max(t * TRACE_RATE, 0), last);
  const i = Math.min(Math.floor(step), Math.max(last - 1, 0));
  const j = Math.min(i + 1, last);
  const f = step - i;
  const between = (values: readonly number[]) => values[i]! * (1 - f) + values[j]! * f;
  const c = between(cos);
  const s = between(sin);
  const size = norm(c, s) || 1;
  return {
    at: { x: between(x), y: between(y) },
    heading: { x: c / size, y: s / size },
    pace: PACES[pace[f < 1 ? i : j]!] ?? 'steady',
    way: between(way),
  };
}

/** A mark being read: what was met, and what it does, from `t` on. */
export interface ReplayReading {
  readonly t: Seconds;
  readonly word: string;
  /** Middle of the mark, or the place of the reading where no drawn mark is known. */
  readonly at: PaperPoint;
  readonly mark: string | undefined;
  readonly along: boolean;
  readonly action: Action | undefined;
  readonly already: boolean;
  readonly pace: Pace;
  /** When its action began; absent where the run ended before, or the mark does nothing. */
  readonly actedAt: Seconds | undefined;
}

/** Where a mark acts: a tick across the line. */
export interface ReplayAct {
  readonly t: Seconds;
  readonly at: PaperPoint;
  readonly along: Direction;
  readonly action: Action;
}

/** A part of one line that was driven at pace fast, as ways along it by time. */
export interface FastPart {
  readonly line: LaidLine;
  readonly t: readonly Seconds[];
  readonly s: readonly Mm[];
}

export interface Replay {
  readonly trace: Trace;
  readonly duration: Seconds;
  readonly readings: readonly ReplayReading[];
  readonly acts: readonly ReplayAct[];
  readonly fast: readonly FastPart[];
}

/** A foot further off than this belongs to another line or to none. */
const BESIDE: Mm = 9;
/** A jump along the line longer than this starts a new part: a loop closed, or a crossing taken. */
const JUMP: Mm = 20;

/** Works out once what a replay shows of a run over the drawing in `layout`. */
export function replayOf(trace: Trace, layout: Layout): Replay {
  return {
    trace,
    duration: durationOf(trace),
    readings: readingsOf(trace, layout),
    acts: trace.events
      .filter((event): event is RunEventOf<'act'> => event.kind === 'act')
      .map((event) => ({ t: event.t, action: event.action, ...onLine(event, layout, trace) })),
    fast: fastParts(trace, layout),
  };
}

function readingsOf(trace: Trace, layout: Layout): ReplayReading[] {
  const acted = new Map<number, Seconds>();
  for (const event of trace.events) if (event.kind === 'act') acted.set(event.read, event.t);
  return trace.events.flatMap((event, index) => {
    if (event.kind !== 'read') return [];
    const { t, word, mark, along, action, already, pace } = event;
    const at = middleOf(mark, layout) ?? { x: event.x, y: event.y };
    return [{ t, word, mark, along, action, already, pace, at, actedAt: acted.get(index) }];
  });
}

/** The middle of a mark on its line. */
export function middleOf(mark: string | undefined, layout: Layout): PaperPoint | undefined {
  const laid = layout.marks.find((candidate) => candidate.id === mark);
  const line = layout.lines.find((candidate) => candidate.id === laid?.line);
  return laid && line ? pointAt(line.path, (laid.from + laid.to) / 2) : undefined;
}

/** The place on the nearest line; off every line, the place itself, across the robot's heading. */
function onLine(event: RunEventOf<'act'>, layout: Layout, trace: Trace): Pick<ReplayAct, 'at' | 'along'> {
  return (
    footOnLine({ x: event.x, y: event.y }, layout) ?? {
      at: { x: event.x, y: event.y },
      along: poseAt(trace, event.t).heading,
    }
  );
}

/** The nearest place on a line and the line's direction there, or nothing within reach. */
export function footOnLine(p: PaperPoint, layout: Layout): Pick<ReplayAct, 'at' | 'along'> | undefined {
  const best = nearest(p, layout.lines);
  if (!best) return undefined;
  return { at: pointAt(best.line.path, best.s), along: directionAt(best.line.path, best.s) };
}

function nearest(p: PaperPoint, lines: readonly LaidLine[]): { line: LaidLine; s: Mm } | undefined {
  let best: { line: LaidLine; s: Mm; distance: Mm } | undefined;
  for (const line of lines) {
    const foot = pathFoot(line.path, p);
    if (foot.distance <= (best?.distance ?? BESIDE)) best = { line, s: foot.s, distance: foot.distance };
  }
  return best;
}

/** Times at which the commanded pace is fast, from the exact events. */
function fastSpans(trace: Trace): [Seconds, Seconds][] {
  const spans: [Seconds, Seconds][] = [];
  let since = trace.samples.pace[0] === PACES.indexOf('fast') ? 0 : undefined;
  for (const event of trace.events) {
    if (event.kind !== 'pace' && event.kind !== 'end') continue;
    if (since !== undefined) spans.push([since, event.t]);
    since = event.kind === 'pace' && event.pace === 'fast' ? event.t : undefined;
  }
  if (since !== undefined) spans.push([since, durationOf(trace)]);
  return spans;
}

/**
 * Where the axle was while the pace was fast: the sensors reach over corners, and the ticks of marks
 * stand where the axle was too.
 */
function fastParts(trace: Trace, layout: Layout): FastPart[] {
  return fastSpans(trace).flatMap(([from, to]) => partsBetween(trace, layout, from, to));
}

function partsBetween(trace: Trace, layout: Layout, from: Seconds, to: Seconds): FastPart[] {
  const parts: { line: LaidLine; t: Seconds[]; s: Mm[] }[] = [];
  const steps = Math.ceil((to - from) * TRACE_RATE);
  for (let i = 0; i <= steps; i++) {
    const t = Math.min(from + i / TRACE_RATE, to);
    const { at } = poseAt(trace, t);
    const part = parts.at(-1);
    const kept = part && footNear(part.line, at, part.s.at(-1)!);
    const found = kept ?? nearest(at, layout.lines);
    if (!found) continue;
    if (kept && part) {
      part.t.push(t);
      part.s.push(kept.s);
    } else parts.push({ line: found.line, t: [t], s: [found.s] });
  }
  return parts.filter((part) => part.t.length > 1);
}

/** The foot on the line followed so far, unless it is far off or far along. */
function footNear(line: LaidLine, p: PaperPoint, before: Mm): { line: LaidLine; s: Mm } | undefined {
  const foot = pathFoot(line.path, p);
  const step = foot.s > before ? foot.s - before : before - foot.s;
  return foot.distance <= BESIDE / 2 && step <= JUMP ? { line, s: foot.s } : undefined;
}
