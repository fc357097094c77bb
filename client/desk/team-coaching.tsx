import { MessageSquare } from 'lucide-react';
import type { Note } from '../../shared/room/coaching.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { titleOfRule } from '../../shared/wording/rule-title.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { Button } from '../parts/button.tsx';
import { useDates } from '../parts/dates.ts';
import { currentRound } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { useWholeWords } from './whole-words.ts';
import './team-coaching.css';

interface Props {
  readonly room: RoomState;
  readonly team: Team;
}

/** What the desk can do for a team, and has said to it. */
export function TeamCoaching({ room, team }: Props) {
  const { coaching } = useWholeWords().desk;
  const { openNote, keysOn } = useDesk();
  const say = () => openNote(team.id);
  useKeys({ m: say }, keysOn);
  return (
    <div className="team-coaching">
      <Button icon={<Icon of={MessageSquare} />} shortcut="M" onClick={say}>
        {coaching.say}
      </Button>
      <GentlerForm room={room} team={team} />
      <Said room={room} team={team} />
      <Tried room={room} team={team} />
    </div>
  );
}

function GentlerForm({ room, team }: Props) {
  const { coaching } = useWholeWords().desk;
  const { ask, refusal, busy } = useAsk();
  const on = room.coaching.gentler.includes(team.id);
  if (!room.rounds[currentRound(room)]?.gentler)
    return on ? <p className="desk-quiet">{coaching.gentlerNone}</p> : null;
  return (
    <>
      <label className="gentler">
        <input
          type="checkbox"
          checked={on}
          disabled={busy}
          onChange={() => void ask({ kind: 'set-gentler', team: team.id, on: !on })}
        />
        <span>
          {coaching.gentler}
          <span className="desk-quiet">{coaching.gentlerHow}</span>
        </span>
      </label>
      <Refused refusal={refusal} />
    </>
  );
}

function Said({ room, team }: Props) {
  const { coaching } = useWholeWords().desk;
  const said = room.coaching.notes.filter((note) => note.team === team.id);
  if (said.length === 0) return null;
  return (
    <details className="team-said">
      <summary>
        {coaching.said} ({said.length})
      </summary>
      <ul>
        {said.map((note) => (
          <SaidNote key={note.number} note={note} />
        ))}
      </ul>
    </details>
  );
}

function SaidNote({ note }: { readonly note: Note }) {
  const { desk, tablet } = useWholeWords();
  const { words, away, at } = note;
  const when = useDates().time(at);
  const text = saidIn(words, tablet.notes);
  return (
    <li>
      {text}{' '}
      <span className="desk-quiet">
        {when}, {away ? desk.coaching.isAway : desk.coaching.onTablet}
      </span>
    </li>
  );
}

function saidIn(words: Note['words'], notes: Wording['tablet']['notes']): string {
  switch (words.kind) {
    case 'text':
      return `“${words.text}”`;
    case 'hint':
      return notes.hint(words.hint);
    case 'returned':
      return notes.returned(words.reason);
    case 'sheet':
      return notes.sheet(words.variant);
  }
}

/** Its tries of this challenge, the newest first: what it foretold, and what came. */
function Tried({ room, team }: Props) {
  const words = useWholeWords();
  const { desk, foretelling, learning } = words;
  const tries = room.tries.filter((one) => one.team === team.id && one.round === currentRound(room));
  if (tries.length === 0) return null;
  const numbered = tries.map((one, i) => ({ one, number: i + 1 })).reverse();
  return (
    <details className="team-said">
      <summary>
        {desk.coaching.tried} ({tries.length})
      </summary>
      <ol reversed>
        {numbered.map(({ one, number }) => (
          <li key={number} value={number}>
            {learning.tried(foretelling.guess(one.guess), one.made)}
            {one.found && <span className="desk-quiet">: {titleOfRule(one.found, words)}</span>}
          </li>
        ))}
      </ol>
    </details>
  );
}
