import { weatherOf } from '../../shared/library/conditions.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { aimsOf } from '../parts/aims.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { SheetPicture } from './sheet-picture.tsx';
import { useCurrentChallenge } from './use-challenge.ts';
import './brief-scene.css';

/** The goal in one sentence, the sheet, and what must come true. */
export function BriefScene({ room }: { readonly room: RoomState }) {
  const words = useWords();
  const { board } = words;
  const current = useCurrentChallenge(room);
  if (!current) return <Head title={board.brief.soon} />;
  const { challenge, sentence } = current;
  const weather = room.conditions.weather ?? weatherOf(challenge);
  return (
    <>
      <Head title={sentence} word={room.word} />
      <div className="brief">
        <SheetPicture challenge={challenge} label={sentence} />
        <section className="brief-side">
          <h2>{challenge.play === 'predict' ? board.brief.asked : board.brief.goals}</h2>
          <ul className="brief-goals">
            {aimsOf(challenge, words).map((aim) => (
              <li key={aim.id}>{aim.sentence}</li>
            ))}
          </ul>
          <p className="brief-time">{board.brief.seconds(challenge.limits.time)}</p>
          {challenge.play !== 'predict' && weather !== 'calm' && (
            <p className="brief-time">{words.foretelling.drivenIn(weather)}</p>
          )}
          {room.rounds.at(-1)?.varied && <p className="brief-time">{board.brief.varied}</p>}
        </section>
      </div>
    </>
  );
}
