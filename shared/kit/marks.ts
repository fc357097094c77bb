import { type Action, type ChartRow, reversed } from '../documents/kit.ts';
import { isTwoWay } from './words.ts';

/** One row of a chart as people read it: a mark, and what it means from each of its ends. */
export interface MarkRow {
  readonly word: string;
  readonly action: Action;
  /** Met from the other side; null where the chart says nothing of that, or the mark reads the same. */
  readonly back: Action | null;
}

/** A chart mark by mark, in its order; words that stand there twice stay two rows. */
export function marksOf(chart: readonly ChartRow[]): MarkRow[] {
  const left = [...chart];
  const marks: MarkRow[] = [];
  for (let row = left.shift(); row; row = left.shift()) {
    const { word, action } = row;
    const other = isTwoWay(word) ? -1 : left.findIndex((each) => each.word === reversed(word));
    const [back] = other < 0 ? [] : left.splice(other, 1);
    marks.push({ word, action, back: back?.action ?? null });
  }
  return marks;
}

/** The chart of these marks: two words where a mark has two meanings. */
export const chartOf = (marks: readonly MarkRow[]): ChartRow[] =>
  marks.flatMap(({ word, action, back }) => [
    { word, action },
    ...(back === null || isTwoWay(word) ? [] : [{ word: reversed(word), action: back }]),
  ]);
