import { describe, expect, test } from 'vitest';
import { questionsOf } from '../../../shared/judge/predict.ts';
import { wording } from '../../../shared/wording/wording.ts';
import { challengeOf } from '../../disturbed.ts';

const { questions, goals } = wording('en');
const asked = (key: string) => {
  const challenge = challengeOf(key);
  return questionsOf(challenge).map((question) => questions.ask(question, challenge.sheet));
};

describe('questions', () => {
  test('each kind is one plain question about one traveller', () => {
    expect(asked('two-travellers')).toEqual([
      'What does this mark say to the robot from the Boathouse?',
      'How does the robot from the Boathouse drive over the Pier?',
      'What does this mark say to the robot from the Lighthouse?',
      'How does the robot from the Lighthouse drive over the Beach?',
    ]);
    expect(asked('no-mark-at-the-junction')).toEqual([
      'Where does the robot from the Boathouse end?',
      '20 robots start from the Boathouse. How many do you expect at the Lighthouse?',
    ]);
  });

  test('answers say places, actions, paces, and what nobody can know', () => {
    const challenge = { ...challengeOf('two-travellers'), asks: challengeOf('two-travellers').asks };
    const [mark, pace] = questionsOf(challenge);
    const said = (question: typeof mark) =>
      question && 'choices' in question
        ? question.choices.map((choice) => questions.choice(choice, challenge.sheet))
        : [];
    expect(said(mark).slice(0, 3)).toEqual(['faster', 'slower', 'take left']);
    expect(said(pace)).toEqual([
      'on tiptoe',
      'steady',
      'brisk',
      'fast',
      'nothing: it does not come there or does not read it',
      'nobody knows: it is left to chance',
    ]);
    const line = challengeOf('end-of-the-line');
    const [end] = questionsOf(line);
    const places =
      end?.kind === 'end' ? end.choices.map((choice) => questions.choice(choice, line.sheet)) : [];
    expect(places.slice(0, 5)).toEqual([
      'at the Boathouse',
      'at the Lighthouse',
      'at the Sandbank',
      'at the Fish market',
      'where line end A is',
    ]);
  });

  test('the result counts right answers', () => {
    expect(questions.result(1, 1)).toBe('Right.');
    expect(questions.result(4, 4)).toBe('All 4 right.');
    expect(questions.result(0, 4)).toBe('0 of 4 right.');
  });
});

test('a goal for one of two travellers says whose it is', () => {
  const { goals: wishes, sheet } = challengeOf('two-jobs');
  expect(wishes.map((goal) => goals.sentence(goal.formula, sheet, goal.start))).toEqual([
    'From the Boathouse: be in the Lighthouse at some moment.',
    'From the Ferry: be in the Bakery at some moment.',
    'Use at most three marks and draw at most 56 cm of line.',
  ]);
  expect(goals.short({ kind: 'keep-out' }, sheet, 'finish')).toBe('From the Ferry: keep out');
});
