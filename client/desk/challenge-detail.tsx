import type { Challenge } from '../../shared/documents/challenge.ts';
import { textIn } from '../../shared/documents/values.ts';
import { aimsOf } from '../parts/aims.ts';
import { Miniature } from '../parts/miniature.tsx';
import { useLocale } from '../parts/use-words.ts';
import { useWholeWords } from './whole-words.ts';
import './challenge-detail.css';

export interface ChallengeDetailProps {
  readonly challenge: Challenge;
  readonly title: string;
}

/** A challenge as the teacher needs it: picture, goals, and what to say about it. */
export function ChallengeDetail({ challenge, title }: ChallengeDetailProps) {
  const words = useWholeWords();
  const { desk } = words;
  const locale = useLocale();
  const { sheet, kit, note } = challenge;
  return (
    <section className="brief-detail" aria-label={title}>
      <h2>{textIn(challenge.sentence, locale)}</h2>
      <div className="desk-sheet">
        <Miniature sheet={sheet} kit={kit} drawing={challenge.begin?.drawing} label={title} />
      </div>
      <p>
        <strong>{desk.briefing.play(challenge.play)}.</strong> {desk.briefing.playSentence(challenge.play)}
      </p>
      <h3>{challenge.play === 'predict' ? desk.briefing.asked : desk.briefing.goals}</h3>
      <ul className="brief-goals">
        {aimsOf(challenge, words).map((aim) => (
          <li key={aim.id}>
            {aim.sentence}
            {!aim.must && <span className="desk-quiet"> {desk.briefing.also}</span>}
          </li>
        ))}
      </ul>
      {note && (
        <dl className="brief-note">
          <dt>{desk.briefing.teaches}</dt>
          <dd>{textIn(note.teaches, locale)}</dd>
          <dt>{desk.briefing.mistakes}</dt>
          <dd>{textIn(note.mistakes, locale)}</dd>
          <dt>{desk.briefing.ask}</dt>
          <dd>“{textIn(note.ask, locale)}”</dd>
        </dl>
      )}
    </section>
  );
}
