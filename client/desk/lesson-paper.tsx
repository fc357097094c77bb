import { Download } from 'lucide-react';
import { type ReactNode, useMemo } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { offsetAt } from '../parts/dates.ts';
import { useDevice } from '../parts/device-settings.ts';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { usePaperFile } from '../parts/use-paper-file.ts';
import { useWholeWords } from './whole-words.ts';
import './lesson-paper.css';

export interface LessonPaperProps {
  readonly room: RoomState;
  readonly kind: 'evidence' | 'picture';
  readonly label: string;
  /** Stands beside the button. */
  readonly children?: ReactNode;
}

/** Saves a PDF about the whole lesson, with a bar while it is being made. */
export function LessonPaper({ room, kind, label, children }: LessonPaperProps) {
  const { page } = useWholeWords().print;
  const { language, units } = useDevice();
  const { word, openedAt } = room;
  const wanted = useMemo(
    () => ({ kind, room: word, language, units, offset: String(offsetAt(openedAt)) }) as const,
    [kind, word, openedAt, language, units],
  );
  const { making, refusal, start, stop } = usePaperFile(wanted);
  return (
    <>
      <p className="lesson-paper">
        <Button icon={<Icon of={Download} />} disabled={making !== null} onClick={start}>
          {label}
        </Button>
        {children}
      </p>
      {making && (
        <p className="lesson-paper">
          <label>
            {page.making(making.done, making.of)} <progress value={making.done} max={making.of} />
          </label>
          <Button onClick={stop}>{page.stop}</Button>
        </p>
      )}
      <Refused refusal={refusal} />
    </>
  );
}
