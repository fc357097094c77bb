import { type RefObject, useEffect, useId, useRef, useState } from 'react';
import { chartOf, type MarkRow, marksOf } from '../../../shared/kit/marks.ts';
import { NoNames } from '../../parts/no-names.tsx';
import { useWholeWords } from '../whole-words.ts';
import { ChartFiles } from './chart-files.tsx';
import { ChartRowFields } from './chart-row.tsx';
import { useEditing } from './fields.tsx';

/** The chart as rows to type in: the last one is empty, and becomes a mark with its first letter. */
export function ChartSection() {
  const { chart: words } = useWholeWords().kit;
  const { kit } = useEditing();
  const { marks, setMark } = useMarks();
  const { table, goTo } = useFocusedRow();
  const noNames = useId();
  const numbers = Array.from({ length: marks.length + 1 }, (_, i) => i + 1);
  return (
    <div className="kit-chart">
      <p>{words.how}</p>
      <p className="desk-quiet">{words.keys}</p>
      <div className="kit-wide">
        <table className="kit-table" ref={table}>
          <thead>
            <tr>
              <th scope="col">{words.mark}</th>
              <th scope="col">{words.picture}</th>
              <th scope="col">{words.meaning}</th>
              <th scope="col">{words.back}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {numbers.map((number) => (
              <ChartRowFields
                key={number}
                number={number}
                mark={marks[number - 1] ?? null}
                noNames={noNames}
                at={chartOf(marks.slice(0, number - 1)).length}
                onChange={(mark) => setMark(number, mark)}
                onNext={() => goTo(number + 1)}
              />
            ))}
          </tbody>
        </table>
      </div>
      <NoNames id={noNames} />
      <p role="status">{marks.length === 0 ? words.none : words.count(marks.length, kit.chart.length)}</p>
      <ChartFiles />
    </div>
  );
}

/**
 * The marks row by row, as they were typed: a word that has the letters of another one for the moment, or
 * its reverse, stays in its own row. Undo and files bring rows of their own.
 */
function useMarks() {
  const { kit, change } = useEditing();
  const [typed, setTyped] = useState(() => marksOf(kit.chart));
  const isTyped = JSON.stringify(chartOf(typed)) === JSON.stringify(kit.chart);
  const marks = isTyped ? typed : marksOf(kit.chart);
  /** Another mark in a row, a new one behind the last row, or (null) none. */
  const setMark = (number: number, mark: MarkRow | null) => {
    const next = marks.toSpliced(number - 1, 1, ...(mark === null ? [] : [mark]));
    setTyped(next);
    const place = mark === null ? `chart of ${next.length}` : `chart.${number}`;
    change(place, { ...kit, chart: chartOf(next) });
  };
  return { marks, setMark };
}

/** Moves the focus to the word of a row, once it is there. */
function useFocusedRow(): { table: RefObject<HTMLTableElement | null>; goTo: (number: number) => void } {
  const table = useRef<HTMLTableElement>(null);
  const [wanted, setWanted] = useState<{ readonly number: number } | null>(null);
  useEffect(() => {
    if (wanted === null) return;
    const rows = table.current?.tBodies[0]?.rows;
    rows?.[Math.min(wanted.number, rows.length) - 1]?.querySelector('input')?.focus();
  }, [wanted]);
  return { table, goTo: (number) => setWanted({ number }) };
}
