import { Download } from 'lucide-react';
import type { RoomState } from '../../shared/room/state.ts';
import { Icon } from '../parts/icon.tsx';
import { LessonPaper } from './lesson-paper.tsx';
import { evidencePath } from './session.ts';
import { useWholeWords } from './whole-words.ts';

/** What the lesson has shown, to be kept: pages for people and rows for a spreadsheet. */
export function EvidencePart({ room }: { readonly room: RoomState }) {
  const { desk } = useWholeWords().evidence;
  return (
    <section className="close-evidence" aria-labelledby="close-evidence-title">
      <h2 id="close-evidence-title">{desk.title}</h2>
      <LessonPaper room={room} kind="evidence" label={desk.pdf}>
        <a className="button" href={evidencePath(room.word, room.openedAt)} download>
          <Icon of={Download} />
          {desk.csv}
        </a>
      </LessonPaper>
      <p className="desk-quiet">{desk.note}</p>
    </section>
  );
}
