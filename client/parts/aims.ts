import type { Challenge } from '../../shared/documents/challenge.ts';
import { questionsOf } from '../../shared/judge/questions.ts';
import type { PageWording } from '../../shared/wording/wording.ts';

export interface Aim {
  readonly id: string;
  readonly sentence: string;
  readonly must: boolean;
}

/** What a challenge wants: its goals, or what it asks where it is predicted, each sentence once. */
export function aimsOf(challenge: Challenge, words: PageWording): Aim[] {
  const { play, goals, sheet } = challenge;
  if (play !== 'predict')
    return goals.map((goal) => ({
      id: goal.id,
      sentence: words.goals.sentence(goal.formula, sheet, goal.start),
      must: goal.must,
    }));
  const asked = questionsOf(challenge).map((question) => words.questions.ask(question, sheet));
  return [...new Set(asked)].map((sentence) => ({ id: sentence, sentence, must: true }));
}
