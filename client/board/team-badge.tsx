import { CircleDashed } from 'lucide-react';
import type { RoomState, Team } from '../../shared/room/state.ts';
import { EmblemBadge, type EmblemBadgeProps } from '../parts/emblem-badge.tsx';
import { standingsOf, type TeamStanding } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';

/** Teams that the wall may speak of. */
export const onTheWall = <T extends Pick<Team, 'wall'>>(teams: readonly T[]): T[] =>
  teams.filter((team) => team.wall !== 'not-at-all');

/** The table without those who would rather not be in it; the others keep their ranks. */
export const standingsOnWall = (room: RoomState): TeamStanding[] =>
  standingsOf(room).filter(({ team }) => team.wall !== 'not-at-all');

export interface TeamBadgeProps extends Omit<EmblemBadgeProps, 'emblem'> {
  readonly team: Team;
}

/** A team's emblem, or no emblem where it would rather not be known by it. */
export function TeamBadge({ team, ...look }: TeamBadgeProps) {
  const { board } = useWords();
  if (team.wall === 'shown') return <EmblemBadge emblem={team.emblem} {...look} />;
  const size = look.size ?? 22;
  if (look.look === 'round')
    return (
      <span className="emblem-round">
        <Icon of={CircleDashed} size={size} label={board.aTeam} />
      </span>
    );
  return (
    <span className="emblem">
      <Icon of={CircleDashed} size={size} />
      {board.aTeam}
    </span>
  );
}
