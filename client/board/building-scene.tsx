import { Check, MessageCircleQuestionMark, PencilLine, Play, Unplug } from 'lucide-react';
import { type RoomState, type Team, timeIn } from '../../shared/room/state.ts';
import type { Doing } from '../../shared/wire/protocol.ts';
import { entriesOf } from '../parts/figures.ts';
import { GoalRows } from '../parts/goal-rows.tsx';
import { Icon, type IconShape } from '../parts/icon.tsx';
import { useLinkState } from '../parts/use-link.tsx';
import { useServerTime } from '../parts/use-server-time.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { SheetPicture } from './sheet-picture.tsx';
import { StandingsSide } from './standings.tsx';
import { StandingsScene } from './standings-scene.tsx';
import { MemberBadge, onTheWall } from './team-badge.tsx';
import { useCurrentChallenge } from './use-challenge.ts';
import './building-scene.css';

/** While teams build: a word a team, no drawings. The rule under the goal gets shorter with the time. */
export function BuildingScene({ room }: { readonly room: RoomState }) {
  const { board } = useWords();
  const current = useCurrentChallenge(room);
  const time = useTime(room);
  const size = sizeFor(room.teams.length);
  // A whole hall fills the board: the words make room for the table while the desk shows it.
  if (size === 'small' && room.standingsShown) return <StandingsScene room={room} />;
  const handedIn = room.teams.filter((team) => entriesOf(room, team.id).length > 0).length;
  return (
    <>
      <Head
        title={current?.sentence ?? board.building.title}
        word={time.words}
        note={room.teams.length > 0 ? board.building.handedIn(handedIn, room.teams.length) : room.word}
        rule={time.left}
      />
      <div className="building">
        <ul className="doings" data-size={size}>
          {onTheWall(room.teams).map((team) => (
            <TeamDoing key={team.id} room={room} team={team} />
          ))}
        </ul>
        <aside className="building-side">
          {room.standingsShown ? (
            <StandingsSide room={room} />
          ) : (
            current && (
              <>
                <SheetPicture challenge={current.challenge} label={current.sentence} />
                <GoalRows challenge={current.challenge} />
              </>
            )
          )}
        </aside>
      </div>
    </>
  );
}

const sizeFor = (teams: number) => (teams <= 8 ? 'large' : teams <= 14 ? 'middle' : 'small');

function useTime(room: RoomState): { readonly words: string; readonly left: number | null } {
  const { board } = useWords();
  const { building } = room;
  const now = timeIn(room, useServerTime(building && !building.ended ? 1000 : null));
  if (!building || building.ended) return { words: board.building.over, left: 0 };
  if (building.until === null) return { words: board.building.noLimit, left: null };
  const left = building.until - now;
  const whole = Math.max(1, building.until - building.since);
  return { words: board.building.timeLeft(left), left: Math.min(1, Math.max(0, left / whole)) };
}

const ICONS: Readonly<Record<Doing, IconShape>> = {
  drawing: PencilLine,
  answering: MessageCircleQuestionMark,
  trying: Play,
  'handed-in': Check,
  away: Unplug,
};

function TeamDoing({ room, team }: { readonly room: RoomState; readonly team: Team }) {
  const { board } = useWords();
  const said = useLinkState((state) => state.doings[team.id]);
  const handedIn = entriesOf(room, team.id).length > 0;
  // Once pens are down, what a team has handed in says more than that it draws on.
  const over = room.building?.ended === true;
  const doing: Doing = over && handedIn ? 'handed-in' : (said ?? (handedIn ? 'handed-in' : 'drawing'));
  return (
    <li className="doing" data-doing={doing} data-handed-in={handedIn}>
      <MemberBadge team={team} size="1.5em" />
      <span className="doing-word">
        {board.building.doing(doing)}
        <Icon of={ICONS[doing]} size="1em" />
      </span>
    </li>
  );
}
