import { Anchor, MessageCircleQuestionMark, PencilOff, TabletSmartphone } from 'lucide-react';
import { Suspense, useState } from 'react';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { pointsSoFar } from '../../parts/figures.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { NoteButton } from '../notes/note-button.tsx';
import { ClosingScreen } from '../work.ts';
import { ConnectingScreen } from './connecting.tsx';
import './screens.css';

export interface CloseScreenProps {
  readonly room: RoomState;
  readonly team: Team;
}

/** The lesson ends: the last questions, where there are any, then what to put where. */
export function CloseScreen({ room, team }: CloseScreenProps) {
  const checks = room.checks.length;
  const [looked, setLooked] = useState(0);
  const isOpen = room.checks.at(-1)?.ended === false;
  if (!isOpen && looked === checks)
    return <Farewell room={room} team={team} onBack={checks > 0 ? () => setLooked(0) : null} />;
  return (
    <Suspense fallback={<ConnectingScreen />}>
      <ClosingScreen room={room} team={team} onDone={() => setLooked(checks)} />
    </Suspense>
  );
}

interface FarewellProps extends CloseScreenProps {
  /** Back to the answers, where there are any. */
  readonly onBack: (() => void) | null;
}

function Farewell({ room, team, onBack }: FarewellProps) {
  const words = useWords();
  const { closing } = words.tablet;
  const points = pointsSoFar(room, team.id);
  return (
    <main className="screen">
      <div className="screen-card">
        <EmblemBadge emblem={team.emblem} size={48} />
        <NoteButton room={room} team={team} />
        <h1>{closing.title}</h1>
        {points !== null && points > 0 && <p className="large-words">{closing.points(points)}</p>}
        <ul className="close-list">
          <li>
            <Icon of={Anchor} size={26} />
            {closing.robots}
          </li>
          <li>
            <Icon of={PencilOff} size={26} />
            {closing.caps}
          </li>
          <li>
            <Icon of={TabletSmartphone} size={26} />
            {closing.tablet}
          </li>
        </ul>
        {onBack && (
          <Button icon={<Icon of={MessageCircleQuestionMark} />} onClick={onBack}>
            {words.closing.check.again}
          </Button>
        )}
      </div>
    </main>
  );
}
