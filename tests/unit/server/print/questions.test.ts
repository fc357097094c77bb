import { describe, expect, it } from 'vitest';
import { type QuestionKind, questionSheet } from '../../../../server/print/questions.ts';
import { readyNamed } from '../../../../server/rooms/ready.ts';
import { judge } from '../../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../../shared/library/ready.ts';

const named = (key: string) => readyNamed(key)!.challenge;
const asked = (key: string, kind: QuestionKind) => {
  const sheet = questionSheet(named(key), kind);
  if (typeof sheet === 'string' || sheet.kind !== 'asked') throw new Error(`no questions: ${String(sheet)}`);
  return sheet;
};

describe('questions on paper', () => {
  it('ask two travellers about one mark: faster to the one, slower to the other', () => {
    // The chart: C A is faster, met from the other side A C is slower.
    const { questions, key } = asked('two-travellers', 'two-travellers');
    expect(questions.map(({ id }) => [id, key.get(id)])).toEqual([
      ['mark-start-mark', 'pace-by:1'],
      ['mark-finish-mark', 'pace-by:-1'],
    ]);
  });

  it('make a prediction of any drawing: each mark as its maker meant it, and the end in the berth', () => {
    const { questions, key } = asked('one-fast-stretch', 'predict');
    // C A, C A and A V A on the way from the boathouse to the lighthouse: faster twice, then steady.
    expect(questions.map(({ id }) => key.get(id))).toEqual([
      'pace-by:1',
      'pace-by:1',
      'pace-to:steady',
      'berth:finish',
    ]);
  });

  it('keep what a challenge asks by itself', () => {
    const { questions } = asked('end-of-the-line', 'predict');
    expect(questions.map(({ kind }) => kind)).toEqual(['end']);
  });

  it('say why there are none', () => {
    expect(questionSheet(named('end-of-the-line'), 'mend')).toBe('nothing-drawn');
    expect(questionSheet(named('end-of-the-line'), 'two-travellers')).toBe('one-end');
    const bare = named('first-line');
    const { model: _, ...unknown } = bare;
    expect(questionSheet(unknown, 'predict')).toBe('nothing-drawn');
  });

  it.each(readyChallenges(DEMO_KIT).flatMap((one) => (one.playable && one.challenge.model ? [one.key] : [])))(
    'find in %s a fault that the judge confirms, or say that there is none',
    (key) => {
      const challenge = named(key);
      const sheet = questionSheet(challenge, 'mend');
      if (typeof sheet === 'string') return expect(sheet).toBe('no-fault');
      if (sheet.kind !== 'mend') throw new Error('not a sheet to mend');
      const verdictOf = (drawing: typeof sheet.faulty) =>
        judge(challenge, { version: 1, drawing }, 'live').verdict;
      const { met, findings } = verdictOf(sheet.faulty);
      // A begun drawing may fail for some robots only: then a finding says so.
      expect(met && findings.length === 0).toBe(false);
      expect(verdictOf(sheet.sound).met).toBe(true);
    },
  );
});
