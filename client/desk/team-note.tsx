import { Send } from 'lucide-react';
import { type FormEvent, useId, useState } from 'react';
import { HINTS, type Hint, LONGEST_NOTE, type NoteWords } from '../../shared/room/coaching.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { Button } from '../parts/button.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useLink } from '../parts/use-link.tsx';
import { useDesk } from './desk-store.ts';
import { useWholeWords } from './whole-words.ts';
import './team-note.css';

/** A few words for one team: a ready-made hint, or what the teacher writes. */
export function TeamNoteDialog({ room }: { readonly room: RoomState }) {
  const { desk, emblems } = useWholeWords();
  const { noteTo, openNote } = useDesk();
  const team = room.teams.find((each) => each.id === noteTo);
  return (
    <Dialog
      open={team !== undefined}
      title={desk.coaching.to(team ? emblems.name(team.emblem) : '')}
      closeWord={desk.close}
      onClose={() => openNote(null)}
    >
      {team && <NoteForm key={team.id} team={team} onSent={() => openNote(null)} />}
    </Dialog>
  );
}

interface NoteFormProps {
  readonly team: Team;
  readonly onSent: () => void;
}

/** What is written goes before what is chosen. */
function NoteForm({ team, onSent }: NoteFormProps) {
  const { coaching } = useWholeWords().desk;
  const [hint, setHint] = useState<Hint | null>(null);
  const [text, setText] = useState('');
  const { send, refusal, busy } = useSendNote(team);
  const own = text.trim();
  const words: NoteWords | null = own !== '' ? { kind: 'text', text: own } : hint && { kind: 'hint', hint };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (words && (await send(words))) onSent();
  };
  return (
    <form className="team-note" onSubmit={(event) => void submit(event)}>
      <HintChoice chosen={own === '' ? hint : null} onChoose={setHint} />
      <OwnWords text={text} onChange={setText} />
      <Button look="primary" type="submit" icon={<Icon of={Send} />} disabled={!words || busy}>
        {coaching.send}
      </Button>
      <Refused refusal={refusal} />
    </form>
  );
}

/** Sends words to a team, and offers to take them back. */
function useSendNote(team: Team) {
  const { desk, emblems } = useWholeWords();
  const { ask, refusal, busy } = useAsk();
  const link = useLink();
  const offerUndo = useDesk((state) => state.offerUndo);
  const send = async (words: NoteWords) => {
    if (!(await ask({ kind: 'send-note', team: team.id, words }))) return false;
    const back = () => {
      const sent = link.state().room?.coaching.notes.findLast((note) => note.team === team.id);
      if (sent) void link.command({ kind: 'take-note-back', note: sent.number });
    };
    offerUndo({ said: desk.undo.noteSent(emblems.name(team.emblem)), back });
    return true;
  };
  return { send, refusal, busy };
}

interface HintChoiceProps {
  readonly chosen: Hint | null;
  readonly onChoose: (hint: Hint) => void;
}

function HintChoice({ chosen, onChoose }: HintChoiceProps) {
  const { desk, tablet } = useWholeWords();
  const name = useId();
  return (
    <fieldset className="note-hints">
      <legend>{desk.coaching.ready}</legend>
      {HINTS.map((hint) => (
        <label key={hint} className="note-hint" data-on={hint === chosen}>
          <input type="radio" name={name} checked={hint === chosen} onChange={() => onChoose(hint)} />
          {tablet.notes.hint(hint)}
        </label>
      ))}
    </fieldset>
  );
}

function OwnWords({ text, onChange }: { readonly text: string; readonly onChange: (text: string) => void }) {
  const { coaching } = useWholeWords().desk;
  const id = useId();
  return (
    <div className="note-own">
      <label htmlFor={id}>{coaching.own}</label>
      <textarea
        id={id}
        rows={2}
        maxLength={LONGEST_NOTE}
        value={text}
        aria-describedby={`${id}-how`}
        onChange={(event) => onChange(event.target.value)}
      />
      <p id={`${id}-how`} className="desk-quiet">
        {coaching.noNames} {coaching.left(LONGEST_NOTE - text.length)}
      </p>
    </div>
  );
}
