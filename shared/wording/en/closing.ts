import type {
  ClosingAnswer,
  ClosingAsk,
  ClosingChoice,
  ClosingMistake,
  RealTrouble,
} from '../../documents/closing-check.ts';
import type { Sheet } from '../../documents/sheet.ts';
import { numbers } from './numbers.ts';
import { questions } from './questions.ts';
import { reasons } from './reasons.ts';

const { capital, counted, words } = numbers;

/** What teachers read of what a wrong answer may come from. */
const MISTAKES: Readonly<Record<ClosingMistake, string>> = {
  'sees-the-sheet': 'the robot would have to see the whole sheet',
  'knows-the-wish': 'the robot would have to know the goal',
  'acts-at-once': 'a mark would have to act where it stands',
  'same-from-both-sides': 'one side was taken for the other',
  'first-colour-counts': 'only the first colour was looked at',
  'shortest-way': 'the robot would have to look for the shortest way',
  'got-tired': 'nothing on the paper was looked for',
  'one-ink-mistaken': 'one ink was taken for another',
};

const REAL: Readonly<Record<RealTrouble, string>> = {
  lost: 'A real robot lost the line.',
  'other-branch': 'A real robot took another way.',
};
const whyAsked = (real: RealTrouble | undefined): string =>
  `${real ? REAL[real] : 'This does not work yet.'} Why?`;
const whySaid = (real: RealTrouble | undefined): string =>
  real ? `${REAL[real]} The reason:` : 'It does not work yet, because:';

/** The last questions of a lesson, as children read them. */
const check = {
  title: (n: number): string => (n === 1 ? 'One last question' : `${capital(words(n))} last questions`),
  which: (n: number, of: number): string => `Question ${n} of ${of}`,
  how: 'Tap an answer. You can change it until your teacher ends.',
  open: (n: number): string => `${counted(n, 'question', 'questions')} to go`,
  done: 'All answered. You can still change them.',
  sheet: (sentence: string): string => `A drawing of your class. It should: ${sentence}`,
  ask: (ask: ClosingAsk, sheet: Sheet): string =>
    ask.kind === 'why' ? whyAsked(ask.real) : questions.ask({ id: '', ...ask }, sheet),
  should: (sentence: string): string => `What it is for: ${sentence}`,
  choice: (choice: ClosingChoice, sheet: Sheet): string =>
    choice.kind === 'reason' ? reasons.said(choice.reason) : questions.choice(choice, sheet),
  ended: 'The answers',
  said: (answer: string): string => `You said: ${answer}`,
  nothingSaid: 'You gave no answer here.',
  right: (answer: string): string => `It is: ${answer}`,
  yes: 'Yes, that is right.',
  /** Why the right answer is right. */
  because: (ask: ClosingAsk, { right }: ClosingAnswer, inks: readonly string[]): string => {
    if (ask.kind === 'mark') return `It meets ${numbers.list(inks)}, in this order.`;
    if (ask.kind === 'why')
      return ask.at ? 'Look at the ring: you can see it there.' : 'Read again what it is for.';
    return reasons.said(right === 'chance' ? 'left-to-luck' : 'all-as-drawn');
  },
  /** Why a wrong one can't be. */
  but: (mistake: ClosingMistake): string =>
    mistake === 'one-ink-mistaken'
      ? 'Look at each colour: one of them is another one.'
      : reasons.but(mistake),
  onward: 'Go on',
  again: 'See the questions again',
};

/** The desk's part. */
const desk = {
  title: 'Closing check',
  note: 'Questions that the engine makes of drawings of this class, without saying whose they are. Wrong answers come from known mistakes. Once they are asked they can be printed too.',
  count: 'Questions, at most',
  start: 'Ask on the tablets',
  again: 'Ask new questions',
  making: 'Looking for questions',
  answered: (n: number, of: number): string =>
    `${n} of ${counted(of, 'team has', 'teams have')} answered everything`,
  ofTeam: (n: number, of: number): string => `${n} of ${of}`,
  end: 'End, and say what is right',
  paper: 'Answered on paper',
  paperTeam: 'Team',
  paperHow: 'Tap what the team ticked, also after the end. The engine marks it.',
  toPaper: 'Questions and key (PDF)',
  right: (n: number, of: number): string =>
    of === 0 ? 'Nobody answered' : `${n} of ${counted(of, 'team', 'teams')} right`,
  mistake: (mistake: ClosingMistake, n: number): string =>
    `${MISTAKES[mistake]}: ${counted(n, 'team', 'teams')}`,
  show: 'Show the result on the board, without teams',
};

/** The board's part. */
const board = {
  asked: 'Last questions',
  /** A few words for a question, that the right answer follows. */
  short: (ask: ClosingAsk, sheet: Sheet): string =>
    ask.kind === 'why' ? whySaid(ask.real) : questions.short({ id: '', ...ask }, sheet),
  open: 'They are on your tablets.',
  result: 'What we know',
  right: (n: number, of: number): string => `${n} of ${counted(of, 'team', 'teams')}`,
};

export const closing = { check, desk, board };
