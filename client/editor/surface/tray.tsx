import { useMemo } from 'react';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { DrawingSession } from './session.ts';
import { trayRows } from './tray-rows.ts';
import { useSessionState } from './use-session-state.ts';

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
