import { BookOpen, Eye, PencilLine } from 'lucide-react';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { Icon, type IconShape } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import './roles.css';

export const ROLES = ['pen', 'chart', 'lookout'] as const;
export type Role = (typeof ROLES)[number];

const ICONS: Readonly<Record<Role, IconShape>> = { pen: PencilLine, chart: BookOpen, lookout: Eye };

/** Who has which role, from the left seat to the right one: each role moves on by one seat at each hand-in. */
export const rolesAfter = (handedIn: number): readonly Role[] =>
  ROLES.map((_, seat) => ROLES[(seat + ROLES.length - (handedIn % ROLES.length)) % ROLES.length]!);

/** How often a team has handed in, over the whole lesson. */
export const handedInBy = (room: RoomState, team: Team): number =>
  room.entries.filter((entry) => entry.team === team.id).length;

/** Pen, chart and lookout, as the children sit: passed on each time that something is handed in. */
export function Roles({ handedIn }: { readonly handedIn: number }) {
  const { together } = useWords();
  return (
    <section className="roles" aria-label={together.roles}>
      <p>{handedIn > 0 ? together.passOn : together.begin}</p>
      <ol>
        {rolesAfter(handedIn).map((role, seat) => (
          <li key={role}>
            <Icon of={ICONS[role]} size={30} />
            <strong>{together.role(role)}</strong>
            <span className="quiet-words">{together.seat(seat)}</span>
          </li>
        ))}
      </ol>
      <p className="quiet-words">{together.pair}</p>
    </section>
  );
}
