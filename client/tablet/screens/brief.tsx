import { Suspense } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { weatherOf } from '../../../shared/library/conditions.ts';
import type { RoomState, Team } from '../../../shared/room/state.ts';
import { aimsOf } from '../../parts/aims.ts';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { Hear } from '../../parts/hear.tsx';
import { Miniature } from '../../parts/miniature.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { NoteButton } from '../notes/note-button.tsx';
import { HowPictures } from '../work.ts';
import './screens.css';

export interface BriefScreenProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly challenge: Challenge;
}

/** What has to come true, and the sheet on which it will. */
export function BriefScreen({ room, team, challenge }: BriefScreenProps) {
  const words = useWords();
  const { briefing, building, predicting } = words.tablet;
  const sentence = textIn(challenge.sentence, useLocale());
  const aims = aimsOf(challenge, words);
  const weather = weatherOf(challenge);
  return (
    <main className="page-screen">
      <header className="page-head">
        <EmblemBadge emblem={team.emblem} size={34} />
        <NoteButton room={room} team={team} />
      </header>
      <div className="brief">
        <div className="brief-words">
          <h1>{sentence}</h1>
          <h2>{challenge.play === 'predict' ? predicting.asked : briefing.goals}</h2>
          <ul className="brief-goals">
            {aims.map((aim) => (
              <li key={aim.id}>{aim.sentence}</li>
            ))}
          </ul>
          {challenge.play !== 'predict' && weather !== 'calm' && <p>{words.foretelling.drivenIn(weather)}</p>}
          <p className="quiet-words">{briefing.listen}</p>
          <Hear text={[sentence, ...aims.map((aim) => aim.sentence)].join(' ')} />
        </div>
        <div className="brief-sheet">
          <Miniature
            sheet={challenge.sheet}
            kit={challenge.kit}
            drawing={challenge.begin?.drawing}
            names
            label={building.sheet(sentence)}
          />
          <Suspense fallback={null}>
            <HowPictures challenge={challenge} />
          </Suspense>
        </div>
      </div>
    </main>
  );
}
