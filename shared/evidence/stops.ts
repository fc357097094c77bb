import type { ClosingMistake } from '../documents/closing-check.ts';
import type { Action, Kit } from '../documents/kit.ts';
import { type RunEventOf, TRACE_RATE, type Trace } from '../documents/trace.ts';
import type { Mm, Seconds } from '../geometry/units.ts';
import { eventsOf } from '../goals/predicate.ts';
import { actionKey } from '../judge/questions.ts';
import type { Layout } from '../track/layout.ts';
import { wrongMeanings } from './mark-choices.ts';

export interface StopAnswer {
  /** null: the chart has no such mark. */
  readonly action: Action | null;
  readonly right: boolean;
  /** What those may think who choose it; null for the right one, and where nothing is known. */
  readonly mistake: ClosingMistake | null;
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

/** The right one and those of known mistakes; where no mistake is likely, other rows of the chart. */
function answersTo({ word, action }: RunEventOf<'read'>, kit: Kit): StopAnswer[] {
  const wrong: Omit<StopAnswer, 'right'>[] = wrongMeanings(kit, word, action);
  const right: StopAnswer = { action: action ?? null, right: true, mistake: null };
  const others = kit.chart.filter((row) => keyOf(row) !== keyOf(right)).slice(0, OTHERS);
  const found = wrong.length > 0 ? wrong : others.map((row) => ({ action: row.action, mistake: null }));
  return inChartOrder(kit, [right, ...found.map((each) => ({ ...each, right: false }))]);
}

const OTHERS = 3;

const keyOf = ({ action }: Pick<StopAnswer, 'action'>): string => (action ? actionKey(action) : '');

function inChartOrder({ chart }: Kit, answers: readonly StopAnswer[]): StopAnswer[] {
  const keys = chart.map(keyOf);
  const place = (answer: StopAnswer) => (answer.action ? keys.indexOf(keyOf(answer)) : keys.length);
  return [...answers].sort((a, b) => place(a) - place(b));
}
