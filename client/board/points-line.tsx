import type { CSSProperties } from 'react';
import type { Team } from '../../shared/room/state.ts';
import type { TeamStanding } from '../parts/figures.ts';
import { type Place, stacked } from './stacked.ts';
import { MemberBadge } from './team-badge.tsx';
import './points-line.css';

export interface PointsLineProps {
  readonly rows: readonly TeamStanding[];
  /** Points at the right end. */
  readonly most: number;
  /** How high emblems may stand on one another; what would stand higher is counted. */
  readonly levels: number;
}

/** A marker stroke on which the emblems stand where their points are. The table beside it says the same. */
export function PointsLine({ rows, most, levels }: PointsLineProps) {
  const ranked = rows.filter((row) => row.rank !== null);
  const places = stacked(
    ranked.map((row) => ({ id: row.team.id, at: row.points / most })),
    levels,
  );
  const teams = new Map(ranked.map((row) => [row.team.id, row.team]));
  return (
    <div className="points-line" style={{ '--levels': levels } as CSSProperties} aria-hidden="true">
      <div className="points-line-rings">
        {places.map((place) => (
          <Ring key={place.id} place={place} team={teams.get(place.id)!} />
        ))}
      </div>
      <div className="points-line-stroke" />
      <div className="points-line-scale">
        {[0, 0.25, 0.5, 0.75, 1].map((share) => (
          <span key={share} style={{ left: `${share * 100}%` }}>
            {Math.round(share * most)}
          </span>
        ))}
      </div>
    </div>
  );
}

function Ring({ place, team }: { readonly place: Place; readonly team: Team }) {
  const where = { left: `${place.at * 100}%`, bottom: `calc(${place.level} * var(--ring))` };
  return (
    <span className="points-line-ring" style={where}>
      {place.others > 0 ? (
        <span className="points-line-count">+{place.others + 1}</span>
      ) : (
        <MemberBadge team={team} size="0.85em" look="round" />
      )}
    </span>
  );
}
