import { Mail } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Note } from '../../../shared/room/coaching.ts';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import type { PageWording } from '../../../shared/wording/wording.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { entryOf } from '../../parts/figures.ts';
import { Hear } from '../../parts/hear.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLink } from '../../parts/use-link.tsx';
import { useWords } from '../../parts/use-words.ts';
import './note-button.css';

/**
 * A note from the desk waits here: it covers nothing and stops nobody, and stays until the team has put
 * it away.
 */
export function NoteButton({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { notes, building } = useWords().tablet;
  const announce = useAnnounce();
  const link = useLink();
  const [open, setOpen] = useState(false);
  const waiting = room.coaching.notes.filter((note) => note.team === team.id && !note.away);
  const newest = waiting.at(-1)?.number;
  useEffect(() => {
    if (newest !== undefined) announce(notes.title);
  }, [newest, announce, notes]);
  if (waiting.length === 0) return null;
  const putAway = () => {
    setOpen(false);
    for (const { number } of waiting) void link.command({ kind: 'put-note-away', note: number });
  };
  return (
    <>
      <Button className="note-button" icon={<Icon of={Mail} size={24} />} onClick={() => setOpen(true)}>
        {notes.title}
      </Button>
      <Dialog
        open={open}
        title={notes.title}
        closeWord={building.close}
        onClose={() => setOpen(false)}
        foot={
          <Button look="primary" onClick={putAway}>
            {notes.putAway}
          </Button>
        }
      >
        <ul className="notes">
          {waiting.map((note) => (
            <NoteText key={note.number} note={note} room={room} />
          ))}
        </ul>
      </Dialog>
    </>
  );
}

function NoteText({ note, room }: { readonly note: Note; readonly room: RoomState }) {
  const said = sentencesOf(note, room, useWords().tablet.notes);
  return (
    <li className="note-text">
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <Hear text={said.join('. ')} />
    </li>
  );
}

function sentencesOf({ words }: Note, room: RoomState, notes: PageWording['tablet']['notes']): string[] {
  switch (words.kind) {
    case 'text':
      return [words.text];
    case 'hint':
      return [notes.hint(words.hint)];
    case 'returned':
      return [notes.back(entryOf(room, words.entry)?.number ?? 0), notes.returned(words.reason)];
    case 'sheet':
      return [notes.sheet(words.variant)];
  }
}
