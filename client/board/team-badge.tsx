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

/** Beside a drawing: the team's emblem once it has agreed to that, and no emblem before. */
export const TeamBadge = ({ team, ...look }: TeamBadgeProps) => (
  <Badge emblem={team.wall === 'shown' ? team.emblem : null} {...look} />
);

/** In a list of all teams: the emblem, unless the team asked to be without it. */
export const MemberBadge = ({ team, ...look }: TeamBadgeProps) => (
  <Badge emblem={team.wall === 'no-emblem' ? null : team.emblem} {...look} />
);

interface BadgeProps extends Omit<EmblemBadgeProps, 'emblem'> {
  readonly emblem: string | null;
}

function Badge({ emblem, ...look }: BadgeProps) {
  const { board } = useWords();
  if (emblem !== null) return <EmblemBadge emblem={emblem} {...look} />;
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
