import type { Counted } from '../../shared/room/board.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { PageWording } from '../../shared/wording/wording.ts';
import { classFigures } from '../parts/figures.ts';
import { useWords } from '../parts/use-words.ts';
import { growthOf, type TeamGrowth } from './growth.ts';
import { Head } from './head.tsx';
import { MemberBadge, onTheWall } from './team-badge.tsx';
import './together.css';

/** The end: what the class did together, how far each team has come, and what has been counted back. */
export function Together({ room }: { readonly room: RoomState }) {
  const { board, scenes } = useWords();
  const { robots, caps } = room.board;
  const shown = onTheWall(room.teams);
  const grown = growthOf(room).filter(({ team }) => shown.includes(team));
  const size = sizeFor(grown.length);
  return (
    <>
      <Head title={board.close.title} word={room.word} />
      <div className="together" data-size={size}>
        <section className="together-class">
          <ul className="together-lines">
            {board.together(classFigures(room)).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          {robots === null && caps === null ? (
            <p className="together-count">{board.close.count}</p>
          ) : (
            <ul className="together-count">
              <Back counted={robots} said={scenes.closing.robots} />
              <Back counted={caps} said={scenes.closing.caps} />
            </ul>
          )}
        </section>
        <section>
          <h2 className="together-title">{scenes.closing.growth}</h2>
          <ul className="grown">
            {grown.map((each) => (
              <li key={each.team.id}>
                <MemberBadge team={each.team} size="0.85em" look={size === 'small' ? 'round' : 'word'} />
                <span>{saidOf(each, scenes, size === 'small')}</span>
              </li>
            ))}
          </ul>
        </section>
      </div>
    </>
  );
}

const sizeFor = (teams: number) => (teams <= 8 ? 'large' : teams <= 20 ? 'middle' : 'small');

interface BackProps {
  readonly counted: Counted | null;
  readonly said: (there: number, of: number) => string;
}

function Back({ counted, said }: BackProps) {
  return counted && <li data-whole={counted.there >= counted.of}>{said(counted.there, counted.of)}</li>;
}

/** The best that is true of it. */
function saidOf(
  { grown, met, entries }: TeamGrowth,
  { closing }: PageWording['scenes'],
  short: boolean,
): string {
  if (grown > 0) return short ? closing.grownShort(grown) : closing.grown(grown);
  if (met) return short ? closing.metShort : closing.met;
  return entries > 0 ? closing.drawings(entries) : closing.here;
}
