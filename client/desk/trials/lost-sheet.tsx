import type { MouseEvent } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Trial } from '../../../shared/room/driving.ts';
import type { Team } from '../../../shared/room/state.ts';
import { Miniature } from '../../parts/miniature.tsx';
import { useWholeWords } from '../whole-words.ts';

interface LostSheetProps {
  readonly challenge: Challenge;
  readonly design: Design | null;
  readonly team: Team;
  /** Of the same drawing, for the places where robots were lost before. */
  readonly trials: readonly Trial[];
  readonly onTap: (at: { readonly x: number; readonly y: number } | null) => void;
}

/** The drawing, to be tapped where the robot was lost. A key has no place, so it notes none. */
export function LostSheet({ challenge, design, team, trials, onTap }: LostSheetProps) {
  const { driving, emblems } = useWholeWords();
  const { sheet, kit, begin } = challenge;
  const tapped = (event: MouseEvent<HTMLButtonElement>) => {
    if (event.detail === 0) return onTap(null);
    const box = event.currentTarget.getBoundingClientRect();
    const within = (share: number, long: number) => Math.round(Math.min(1, Math.max(0, share)) * long);
    onTap({
      x: within((event.clientX - box.left) / box.width, sheet.w),
      y: within((event.clientY - box.top) / box.height, sheet.h),
    });
  };
  const r = Math.max(sheet.w, sheet.h) / 40;
  const places = trials.flatMap(({ outcome, at }) =>
    outcome.kind === 'lost' && outcome.at ? [{ ...outcome.at, key: at }] : [],
  );
  return (
    <figure className="trial-sheet">
      <figcaption>{driving.lostHere}</figcaption>
      <button type="button" aria-label={driving.sheet(emblems.name(team.emblem))} onClick={tapped}>
        <Miniature sheet={sheet} kit={kit} drawing={design?.drawing ?? begin?.drawing} names />
        <svg viewBox={`0 0 ${sheet.w} ${sheet.h}`} aria-hidden="true" focusable="false">
          {places.map(({ x, y, key }) => (
            <circle key={key} className="trial-lost" cx={x} cy={y} r={r} strokeWidth={r / 2.5} />
          ))}
        </svg>
      </button>
    </figure>
  );
}
