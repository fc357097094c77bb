import { useMemo } from 'react';
import { type Action, actionOf, type Kit, reversed } from '../../../shared/documents/kit.ts';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { DrawingSession } from './session.ts';
import { useSessionState } from './use-session.ts';

/** One row of the tray: a word, and what it means from the other side if that differs. */
interface TrayRow {
  readonly word: string;
  readonly action: Action;
  readonly back: Action | null;
}

/** The kit's chart, one row a mark: the two readings of a one-way mark share a row. */
export function trayRows(kit: Kit): TrayRow[] {
  const rows: TrayRow[] = [];
  for (const { word, action } of kit.chart) {
    const other = reversed(word);
    if (rows.some((row) => row.word === other)) continue;
    const back = other === word ? null : (actionOf(kit, other) ?? null);
    rows.push({ word, action, back });
  }
  return rows;
}

/** What the class's marks mean, and which one a tap on a line places. */
export function Tray({ session }: { readonly session: DrawingSession }) {
  const words = useWords();
  const { kit } = session.context;
  const rows = useMemo(() => trayRows(kit), [kit]);
  const marking = useSessionState(session, ({ editor }) => editor.tool === 'mark');
  const word = useSessionState(session, ({ editor }) => editor.word);
  return (
    <section className="tray" aria-labelledby="tray-title">
      <h2 id="tray-title">{words.tablet.building.marks}</h2>
      <div className="tray-rows" role="radiogroup" aria-labelledby="tray-title">
        {rows.map((row) => (
          <label key={row.word} className="tray-row" data-chosen={marking && row.word === word}>
            <input
              type="radio"
              name="mark"
              className="tool-input"
              checked={marking && row.word === word}
              onChange={() => session.choose({ tool: 'mark', word: row.word })}
            />
            <span className="tray-name">
              {words.actions.name(row.action)}
              {row.back && ' ▸'}
            </span>
            <MarkPicture kit={kit} word={row.word} />
            <span className="tray-back">{row.back && <>◂ {words.actions.name(row.back)}</>}</span>
          </label>
        ))}
      </div>
    </section>
  );
}
