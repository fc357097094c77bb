import { useMemo, useState } from 'react';
import type { RoomState } from '../../shared/room/state.ts';
import type { PrintKind } from '../../shared/wire/print.ts';
import { offsetAt } from '../parts/dates.ts';
import { useDevice } from '../parts/device-settings.ts';
import type { Wanted } from '../parts/paper-file.ts';
import { useWishes } from './before/wishes.ts';
import { useDesk } from './desk-store.ts';
import { useReadyChallenges } from './kit/room-kit.ts';
import { type PaperChoice, PaperForm } from './paper-form.tsx';
import { PaperPreview } from './paper-preview.tsx';
import { PaperSave } from './paper-save.tsx';
import { useWholeWords } from './whole-words.ts';
import './paper.css';

/** Everything that goes to paper: what, how, a first look at it, and the file. */
export function PaperView({ room }: { readonly room: RoomState }) {
  const { print } = useWholeWords();
  const { team } = useDesk();
  const { language, units } = useDevice();
  const minutes = useWishes((wishes) => String(wishes.minutes));
  const [choice, setChoice] = useState<PaperChoice>(() => ({
    kind: 'sheet',
    paper: 'A4',
    lines: 'ink',
    marks: 'colour',
    key: 'no',
    ...(team === null ? {} : { team }),
  }));
  const first = useReadyChallenges(room).find(({ playable }) => playable)?.key;
  const offset = String(offsetAt(room.openedAt));
  const wanted = useMemo(
    () => completed({ ...choice, language, units, minutes, offset }, room, first),
    [choice, language, units, minutes, offset, room, first],
  );
  const asked = JSON.stringify(wanted);
  const [turned, setTurned] = useState({ asked, page: 1 });
  // Another print begins with its first page.
  const page = turned.asked === asked ? turned.page : 1;
  const change = (part: Partial<PaperChoice>) => setChoice((before) => ({ ...before, ...part }));
  return (
    <main className="desk-main paper">
      <section className="paper-choice" aria-labelledby="paper-title">
        <h2 id="paper-title">{print.page.title}</h2>
        <div className="paper-form">
          <PaperForm room={room} choice={choice} onChange={change} />
        </div>
        <PaperSave wanted={wanted} page={page} />
      </section>
      <PaperPreview wanted={wanted} page={page} onTurn={(to) => setTurned({ asked, page: to })} />
    </main>
  );
}

const OF_TEAMS: ReadonlySet<PrintKind> = new Set(['drawing', 'pack']);
const OF_CHALLENGES: ReadonlySet<PrintKind> = new Set([
  'sheet',
  'lesson-plan',
  'predict',
  'two-travellers',
  'mend',
]);

/**
 * Leaves out what does not belong to the kind; takes the first team and challenge where none is chosen.
 * Null where there is no team to print anything of.
 */
function completed(choice: Wanted, room: RoomState, first: string | undefined): Wanted | null {
  const { team, challenge, entry, minutes, page: _, ...rest } = choice;
  const known = room.teams.find(({ id }) => id === team) ?? room.teams[0];
  if (OF_TEAMS.has(choice.kind) && !known) return null;
  const named = challenge ?? (room.rounds.length === 0 ? first : undefined);
  return {
    ...rest,
    room: room.word,
    ...(choice.kind === 'lesson-plan' && minutes !== undefined ? { minutes } : {}),
    ...(OF_TEAMS.has(choice.kind) && known ? { team: known.id } : {}),
    ...(choice.kind === 'drawing' && entry !== undefined && known?.id === team ? { entry } : {}),
    ...(OF_CHALLENGES.has(choice.kind) && named !== undefined ? { challenge: named } : {}),
  };
}
