import { Anchor, PencilOff, TabletSmartphone } from 'lucide-react';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { pointsSoFar } from '../../parts/figures.ts';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import './screens.css';

/** The lesson ends: what to put where. */
export function CloseScreen({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { closing } = useWords().tablet;
  const points = pointsSoFar(room, team.id);
  return (
    <main className="screen">
      <div className="screen-card">
        <EmblemBadge emblem={team.emblem} size={48} />
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
      </div>
    </main>
  );
}
