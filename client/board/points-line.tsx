import type { CSSProperties } from 'react';
import { EmblemBadge } from '../parts/emblem-badge.tsx';
import type { TeamStanding } from '../parts/figures.ts';
import './points-line.css';

export interface PointsLineProps {
  readonly rows: readonly TeamStanding[];
  /** Points at the right end. */
  readonly most: number;
}

/** How wide an emblem's ring is, as a share of the line: nearer ones are stacked. */
const RING = 0.085;

/** A marker stroke on which the emblems stand where their points are. */
export function PointsLine({ rows, most }: PointsLineProps) {
  const placed = stacked(
    rows.filter((row) => row.rank !== null).map((row) => ({ row, at: row.points / most })),
  );
  const height = Math.max(0, ...placed.map(({ level }) => level)) + 1;
  return (
    <div
      className="points-line"
      style={{ '--levels': Math.min(height, 4) } as CSSProperties}
      aria-hidden="true"
    >
      <div className="points-line-rings">
        {placed.map(({ row, at, level }) => (
          <span
            key={row.team.id}
            className="points-line-ring"
            style={{ left: `${at * 100}%`, bottom: `calc(${level} * var(--ring))` }}
          >
            <EmblemBadge emblem={row.team.emblem} size="0.85rem" look="round" />
          </span>
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

interface Placed {
  readonly row: TeamStanding;
  /** Share of the line, 0 to 1. */
  readonly at: number;
  /** 0 stands on the line, 1 on another emblem. */
  readonly level: number;
}

/** Each emblem on the lowest level on which it covers no other. */
export function stacked(places: readonly Omit<Placed, 'level'>[]): Placed[] {
  const placed: Placed[] = [];
  for (const place of places) {
    const near = placed.filter((other) => Math.abs(other.at - place.at) < RING).map((other) => other.level);
    let level = 0;
    while (near.includes(level)) level++;
    placed.push({ ...place, level });
  }
  return placed;
}
