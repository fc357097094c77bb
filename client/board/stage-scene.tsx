import { textIn } from '../../shared/documents/values.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { entriesOf } from '../parts/figures.ts';
import { useStageLook } from '../parts/stage-clock.ts';
import { canLieOnTop, useStage } from '../parts/use-stage.ts';
import { useLocale, useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { Heat } from './stage-heat.tsx';
import { Single } from './stage-single.tsx';
import { MemberBadge, onTheWall, TeamBadge } from './team-badge.tsx';
import { useCurrentChallenge } from './use-challenge.ts';
import { WhatIfSign } from './what-if-sign.tsx';
import './stage-scene.css';

/** A drawing being driven, or up to four on one clock. */
export function StageScene({ room }: { readonly room: RoomState }) {
  const { board, stage: words } = useWords();
  const current = useCurrentChallenge(room);
  const stage = useStage(room);
  const { onTop } = useStageLook();
  const locale = useLocale();
  const title = current?.sentence ?? board.show.title;
  if (!stage) return <Head title={title} word={board.show.loading} />;
  const first = stage[0];
  const heat = stage.length > 1;
  const together = heat && onTop && canLieOnTop(stage) ? words.onTop : board.show.heat;
  // On a mirrored sheet the goal may say right for left.
  const own = first && !heat ? textIn(first.challenge.sentence, locale) : title;
  return (
    <>
      <Head
        title={own}
        word={heat || !first ? together : <TeamBadge team={first.team} size="1.4em" />}
        {...(heat || !first ? {} : { note: board.show.entry(first.entry.number) })}
      />
      <div className="stage-all">
        <WhatIfSign stage={stage} />
        {heat ? <Heat stage={stage} /> : first && <Single room={room} staged={first} />}
      </div>
    </>
  );
}

/** Showing has begun, nothing is on the stage yet. */
export function BeforeStage({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const current = useCurrentChallenge(room);
  const ready = onTheWall(room.teams).filter((team) => entriesOf(room, team.id).length > 0);
  return (
    <>
      <Head title={current?.sentence ?? board.show.title} word={board.show.title} />
      <div className="before-stage" data-many={ready.length > 12}>
        <p>{board.show.soon}</p>
        <p className="before-stage-note">{board.show.soonNote}</p>
        <ul>
          {ready.map((team) => (
            <li key={team.id}>
              <MemberBadge team={team} size="1.5em" />
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}
