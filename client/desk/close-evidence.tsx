import { Download } from 'lucide-react';
import { useMemo } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { useDevice } from '../parts/device-settings.ts';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { usePaperFile } from '../parts/use-paper-file.ts';
import { evidencePath } from './session.ts';
import { useWholeWords } from './whole-words.ts';

/** What the lesson has shown, to be kept: pages for people and rows for a spreadsheet. */
export function EvidencePart({ room }: { readonly room: RoomState }) {
  const words = useWholeWords();
  const { desk } = words.evidence;
  const { page } = words.print;
  const { language, units } = useDevice();
  const wanted = useMemo(
    () => ({ kind: 'evidence', room: room.word, language, units }) as const,
    [room.word, language, units],
  );
  const { making, refusal, start, stop } = usePaperFile(wanted);
  return (
    <section className="close-evidence" aria-labelledby="close-evidence-title">
      <h2 id="close-evidence-title">{desk.title}</h2>
      <p className="close-save">
        <Button icon={<Icon of={Download} />} disabled={making !== null} onClick={start}>
          {desk.pdf}
        </Button>
        <a className="button" href={evidencePath(room.word)} download>
          <Icon of={Download} />
          {desk.csv}
        </a>
      </p>
      {making && (
        <p className="close-save">
          <label>
            {page.making(making.done, making.of)} <progress value={making.done} max={making.of} />
          </label>
          <Button onClick={stop}>{page.stop}</Button>
        </p>
      )}
      <Refused refusal={refusal} />
      <p className="desk-quiet">{desk.note}</p>
    </section>
  );
}
