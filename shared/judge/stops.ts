import { type Action, actionOf, type Kit, reversed } from '../documents/kit.ts';
import type { MistakenReason } from '../documents/reason.ts';
import { type RunEventOf, TRACE_RATE, type Trace } from '../documents/trace.ts';
import type { Mm, Seconds } from '../geometry/units.ts';
import { eventsOf } from '../goals/predicate.ts';
import type { Layout } from '../track/layout.ts';
import { actionKey } from './questions.ts';

/** What an answer stands for: the truth, a mistake that is known of children, or just another row of the chart. */
export type AnswerIdea = 'right' | 'ink-mistaken' | 'other-row' | MistakenReason;

export interface StopAnswer {
  /** null: the chart has no such mark. */
  readonly action: Action | null;
  readonly idea: AnswerIdea;
}

/** A mark before which a drive stops, and what the class may think that it says. */
export interface Stop {
  /** Here the robot stands, and then it has read the mark; s of the run. */
  readonly at: Seconds;
  readonly readAt: Seconds;
  readonly mark: string | undefined;
  readonly word: string;
  /** In the order of the chart, so that their places tell nothing. */
  readonly answers: readonly StopAnswer[];
}

/** Answers that a class can hold in its head. */
const ANSWERS = 4;
/** How far the bar stands before the first band, and how much line a robot wants to see behind the last one. */
const BEFORE: Mm = 12;
const BEHIND: Mm = 8;

/** Every reading of a run as a stop, in order. What is right is what this run reads. */
export function stopsOf(trace: Trace, layout: Layout, kit: Kit): Stop[] {
  let earliest: Seconds = 0;
  return eventsOf(trace, 'read').map((read) => {
    const at = Math.max(earliest, standsAt(trace, read, layout));
    earliest = read.t;
    return { at, readAt: read.t, mark: read.mark, word: read.word, answers: answersTo(read, kit) };
  });
}

/** The last sample at which the bar is still before the mark. */
function standsAt({ samples }: Trace, { way, mark, t }: RunEventOf<'read'>, layout: Layout): Seconds {
  const laid = layout.marks.find(({ id }) => id === mark);
  const until = way - (laid ? laid.to - laid.from : 0) - BEHIND - BEFORE;
  const last = samples.way.findLastIndex((each, i) => each <= until && i <= t * TRACE_RATE);
  return Math.max(0, last) / TRACE_RATE;
}

function answersTo({ word, action }: RunEventOf<'read'>, kit: Kit): StopAnswer[] {
  const row =
    (idea: AnswerIdea) =>
    (other: string): StopAnswer => ({
      action: actionOf(kit, other) ?? null,
      idea,
    });
  const chart = kit.chart.map((each) => each.word);
  const found: StopAnswer[] = [
    { action: action ?? null, idea: 'right' },
    ...chart.filter((other) => other === reversed(word)).map(row('same-from-both-sides')),
    ...chart.filter((other) => inksApart(word, other) === 1).map(row('ink-mistaken')),
    ...chart.filter((other) => other[0] === word[0]).map(row('first-colour-counts')),
    ...chart.map(row('other-row')),
  ];
  return inChartOrder(kit, oneOfEach(found).slice(0, ANSWERS));
}

const keyOf = ({ action }: StopAnswer): string => (action ? actionKey(action) : '');

/** Of equal actions the first. Of each idea but the last one answer, as long as there are others. */
function oneOfEach(found: readonly StopAnswer[]): StopAnswer[] {
  const differ = found.filter((each, i) => found.findIndex((other) => keyOf(other) === keyOf(each)) === i);
  const isFirst = (each: StopAnswer, i: number) => differ.findIndex(({ idea }) => idea === each.idea) === i;
  return [...differ.filter(isFirst), ...differ.filter((each, i) => !isFirst(each, i))];
}

function inksApart(a: string, b: string): number {
  return a.length === b.length ? [...a].filter((ink, i) => ink !== b[i]).length : Number.POSITIVE_INFINITY;
}

function inChartOrder({ chart }: Kit, answers: readonly StopAnswer[]): StopAnswer[] {
  const keys = chart.map(({ action }) => actionKey(action));
  const place = (answer: StopAnswer) => (answer.action ? keys.indexOf(keyOf(answer)) : keys.length);
  return [...answers].sort((a, b) => place(a) - place(b));
}
