import { useDeferredValue, useMemo } from 'react';
import { layOut } from '../../../shared/track/layout.ts';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { Hear } from '../../parts/hear.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { asText, inWords, type SheetInWords as Told } from './sentences.ts';
import './reading.css';

export interface SheetInWordsProps {
  readonly session: DrawingSession;
  /** Whether it is also shown. */
  readonly open: boolean;
  readonly onClose: () => void;
}

/** The drawing as lists, always there for those who hear the page, and in a dialog for those who look. */
export function SheetInWords({ session, open, onClose }: SheetInWordsProps) {
  const words = useWords();
  const locale = useLocale();
  const { sheet, kit } = session.context;
  const design = useDeferredValue(useSessionState(session, ({ editor }) => editor.design));
  const told = useMemo(
    () => inWords(layOut(sheet, design.drawing), { sheet, kit, words, locale }),
    [sheet, kit, design, words, locale],
  );
  const { reading } = words;
  return (
    <>
      {!open && (
        <section className="only-read-aloud" aria-label={reading.title}>
          <h2>{reading.title}</h2>
          <Lists told={told} />
        </section>
      )}
      <Dialog open={open} title={reading.title} closeWord={reading.close} onClose={onClose}>
        <div className="in-words">
          <Hear text={asText(told)} />
          <Lists told={told} />
        </div>
      </Dialog>
    </>
  );
}

function Lists({ told }: { readonly told: Told }) {
  const { reading } = useWords();
  return (
    <>
      <h3>{reading.onSheet}</h3>
      <ul>
        {told.places.map((place) => (
          <li key={place}>{place}</li>
        ))}
      </ul>
      <h3>{reading.drawn}</h3>
      {told.lines.length === 0 && <p>{reading.nothing}</p>}
      <ol>
        {told.lines.map(({ line, steps }) => (
          <li key={line}>
            {line}
            <ol>
              {steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ol>
          </li>
        ))}
      </ol>
    </>
  );
}
