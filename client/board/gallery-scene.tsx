import { useRef } from 'react';
import type { Hung } from '../../shared/room/board.ts';
import type { Entry, RoomState, Team } from '../../shared/room/state.ts';
import { useBox } from '../canvas/use-fitted.ts';
import { entryOf, teamOf } from '../parts/figures.ts';
import { Miniature } from '../parts/miniature.tsx';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { useWords } from '../parts/use-words.ts';
import { onSheetOfHung } from '../parts/variants.ts';
import { hangingOf } from './gallery-grid.ts';
import { Head } from './head.tsx';
import { TeamBadge } from './team-badge.tsx';
import { useCurrentChallenge } from './use-challenge.ts';
import { useRem } from './use-rem.ts';
import './gallery-scene.css';

/** Drawings side by side, to be looked at: no points, no order but that of the berths. */
export function GalleryScene({ room }: { readonly room: RoomState }) {
  const { board, scenes } = useWords();
  const current = useCurrentChallenge(room);
  const frame = useRef<HTMLUListElement>(null);
  const box = useBox(frame);
  const rem = useRem();
  const { gallery } = room.board;
  const sheet = current?.challenge.sheet ?? { w: 297, h: 210 };
  const { columns, width } = hangingOf(gallery.length, sheet.w / sheet.h, {
    width: box?.width ?? 0,
    height: box?.height ?? 0,
    gap: GAP * rem,
    words: WORDS * rem,
  });
  // As many beside each other as were reckoned with; fewer in the last row stand in its middle.
  const wide = columns * Math.floor(width) + (columns - 1) * GAP * rem;
  const aside = Math.max(0, ((box?.width ?? 0) - wide) / 2 - 1);
  return (
    <>
      <Head title={current?.sentence ?? board.show.title} word={scenes.gallery(gallery.length)} />
      <ul className="gallery" ref={frame} style={{ gap: `${GAP}rem`, paddingInline: aside }}>
        {gallery.map((hung) => (
          <Place key={hung.entry} room={room} hung={hung} width={Math.floor(width)} />
        ))}
      </ul>
    </>
  );
}

/** rem: between sheets, and what the words under a sheet take. */
const GAP = 0.7;
const WORDS = 1.5;

interface PlaceProps {
  readonly room: RoomState;
  readonly hung: Hung;
  readonly width: number;
}

function Place({ room, hung, width }: PlaceProps) {
  const entry = entryOf(room, hung.entry);
  const team = entry && teamOf(room, entry.team);
  if (!entry || !team) return null;
  return (
    <li className="gallery-place" style={{ width }}>
      <Drawn room={room} entry={entry} team={team} hung={hung} width={width} />
      <TeamBadge team={team} size="1.15em" />
    </li>
  );
}

interface DrawnProps {
  readonly room: RoomState;
  readonly entry: Entry;
  readonly team: Team;
  readonly hung: Hung;
  readonly width: number;
}

function Drawn({ room, entry, team, hung, width }: DrawnProps) {
  const { board, emblems, scenes } = useWords();
  const chosen = hereOf(useDocument('challenge', room.rounds[entry.round]?.challenge ?? null));
  const drawn = hereOf(useDocument('design', hung.design));
  if (!chosen || !drawn) return <span className="gallery-empty" />;
  const { sheet, kit } = onSheetOfHung(hung, entry, chosen);
  const name = team.wall === 'shown' ? emblems.name(team.emblem) : board.aTeam;
  return (
    <Miniature
      sheet={sheet}
      kit={kit}
      drawing={drawn.drawing}
      width={width}
      label={scenes.drawingOf(name, entry.number)}
    />
  );
}
