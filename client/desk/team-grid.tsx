import { type KeyboardEvent, useCallback, useRef, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { RoomState, Team, TeamId } from '../../shared/room/state.ts';
import { PacedLink } from '../parts/use-link.tsx';
import { onTeamsSheet } from '../parts/variants.ts';
import { useDesk } from './desk-store.ts';
import { urgencyOf } from './insight.ts';
import { TeamCard } from './team-card.tsx';
import './team-grid.css';

export interface TeamGridProps {
  readonly room: RoomState;
  readonly challenge: Challenge;
  readonly label: string;
}

const STEP_OF_KEY: Readonly<Record<string, 'before' | 'after' | 'up' | 'down'>> = {
  ArrowLeft: 'before',
  ArrowRight: 'after',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** Cards show what is new at most so often. */
const DRAWN_EVERY_MS = 1000;

/** All teams. One card is in the tab order; arrows go from card to card. */
export function TeamGrid({ room, challenge, label }: TeamGridProps) {
  const grid = useRef<HTMLElement>(null);
  const picked = useDesk((state) => state.team);
  const { teams, hold } = useOrder(room);
  const first = room.teams.some((team) => team.id === picked) ? picked : teams[0]?.id;
  // The same at each render: a card is drawn again only when something of its own has changed.
  const move = useCallback((event: KeyboardEvent) => {
    const step = STEP_OF_KEY[event.key];
    if (!step || !grid.current) return;
    event.preventDefault();
    const cards = [...grid.current.querySelectorAll<HTMLElement>('.team-card')];
    const from = cards.indexOf(document.activeElement as HTMLElement);
    const by = step === 'before' ? -1 : step === 'after' ? 1 : columnsOf(cards) * (step === 'up' ? -1 : 1);
    const to = cards[from + by];
    to?.focus();
    to?.click();
  }, []);
  return (
    <section className="team-grid" ref={grid} aria-label={label} {...hold}>
      <PacedLink everyMs={DRAWN_EVERY_MS}>
        {teams.map((team) => (
          <TeamCard
            key={team.id}
            room={room}
            team={team}
            challenge={onTeamsSheet(room, team, challenge)}
            picked={team.id === picked}
            inTabOrder={team.id === first}
            onKey={move}
          />
        ))}
      </PacedLink>
    </section>
  );
}

/**
 * The teams by who may need somebody, or by their berths. The order stands still while the pointer is over
 * the cards or the focus on one: nothing moves away under a hand.
 */
function useOrder(room: RoomState) {
  const { byNeed, glances } = useDesk();
  const [held, setHeld] = useState(false);
  const shown = useRef<readonly TeamId[]>([]);
  if (!held) {
    const place = ({ id }: Team) => (byNeed ? urgencyOf(glances[id]?.need) : 0);
    shown.current = [...room.teams].sort((a, b) => place(a) - place(b)).map(({ id }) => id);
  }
  const placeOf = ({ id }: Team) => {
    const place = shown.current.indexOf(id);
    return place < 0 ? shown.current.length : place;
  };
  const take = () => setHeld(true);
  const letGo = () => setHeld(false);
  const hold = { onPointerEnter: take, onPointerLeave: letGo, onFocus: take, onBlur: letGo };
  return { teams: [...room.teams].sort((a, b) => placeOf(a) - placeOf(b)), hold };
}

/** How many cards stand in the first row. */
function columnsOf(cards: readonly HTMLElement[]): number {
  const second = cards.findIndex((card) => card.offsetTop !== cards[0]?.offsetTop);
  return second < 0 ? cards.length : second;
}
