import type { ReactNode } from 'react';
import { textIn } from '../../../shared/documents/values.ts';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { drawsLines } from '../model.ts';
import { InkChoice } from './ink-choice.tsx';
import type { DrawingSession } from './session.ts';
import { useSessionState } from './use-session-state.ts';

/** One line under the paper: what the tool does, what the finger caught on, or why nothing happened. */
export function Hint({ session }: { readonly session: DrawingSession }) {
  const proposal = useSessionState(session, (state) => state.proposal);
  const words = useWords().tablet.building;
  const locale = useLocale();
  const { tool, pending, rub } = useSessionState(session, (state) => state.editor);
  const pen = useSessionState(session, (state) => state.pen);
  const refusal = useSessionState(session, (state) => state.refusal);
  const { sheet, play } = session.context;
  const most = refusal && 'most' in refusal ? refusal.most : 0;
  const how = tool === 'mark' && sheet.boxes ? words.howInBoxes : words.how(tool, drawsLines(play));
  let said: ReactNode = pending ? words.secondTap : how;
  if (refusal) said = words.notDone(refusal.code, most);
  if (proposal?.snap) {
    const { at, why, degrees = 0 } = proposal.snap;
    const berth = at === sheet.finish?.at ? sheet.finish : sheet.start;
    said = words.caught(why, textIn(berth.name, locale), degrees) ?? said;
  }
  if (proposal?.caught) said = words.bent(proposal.caught);
  return (
    <div className="hint" data-refused={refusal !== null && !proposal}>
      <p role="status">{said}</p>
      {tool === 'rub' && drawsLines(play) && (
        <div className="hint-choice" role="radiogroup" aria-label={words.rubWhat}>
          {(['piece', 'line'] as const).map((what) => (
            <label key={what} className="choice" data-chosen={rub === what}>
              <input
                type="radio"
                name="rub"
                className="tool-input"
                checked={rub === what}
                onChange={() => session.choose({ rub: what })}
              />
              {what === 'piece' ? words.rubPiece : words.rubLine}
            </label>
          ))}
        </div>
      )}
      {tool === 'bands' && <InkChoice session={session} />}
      {pen && (
        <button type="button" className="choice hint-pen" onClick={() => session.usesPen(false)}>
          {words.fingersDraw}
        </button>
      )}
    </div>
  );
}
