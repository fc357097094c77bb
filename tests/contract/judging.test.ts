import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { type JudgeTask, type Judging, startJudging } from '../../server/judging/judging.ts';
import judgeEntry from '../../server/judging/worker.ts';
import type { StoredDocument } from '../../server/log/event-log.ts';
import { storedAnswers, storedChallenge, storedDesign } from '../../server/rooms/documents.ts';
import { NO_ANSWERS } from '../../shared/documents/answers.ts';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { EMPTY_DESIGN } from '../../shared/documents/design.ts';
import { answerKey } from '../../shared/judge/predict.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';

/** What may be handed in: sound, faulty and empty drawings, or answers where the challenge is predicted. */
function handedIn(challenge: Challenge): Record<string, StoredDocument> {
  if (challenge.play === 'predict') {
    const key = [...answerKey(challenge)].map(([question, says]) => ({ question, says }));
    return { sound: storedAnswers({ version: 1, answers: key }), empty: storedAnswers(NO_ANSWERS) };
  }
  return {
    ...(challenge.model && { sound: storedDesign(challenge.model) }),
    ...(challenge.begin && { faulty: storedDesign(challenge.begin) }),
    empty: storedDesign(EMPTY_DESIGN),
  };
}

/** Ready challenges with what may be handed in for them, as rooms keep it. */
const TASKS: readonly (readonly [string, JudgeTask])[] = readyChallenges(DEMO_KIT).flatMap((ready) => {
  if (!ready.playable) return [];
  const challenge = storedChallenge(ready.challenge).body;
  return Object.entries(handedIn(ready.challenge)).map(
    ([name, { body }]) => [`${ready.key}, ${name}`, { challenge, design: body }] as const,
  );
});

const pool = startJudging({
  worker: fileURLToPath(new URL('../../server/judging/worker.ts', import.meta.url)),
  execArgv: ['--import', 'tsx'],
});
afterAll(() => pool.close());

const thread: Judging = { judge: async (task) => judgeEntry(task), close: async () => undefined };

describe('the judge in the pool and in the thread', () => {
  it.each(TASKS)('say the same, bit for bit, of %s', async (_, task) => {
    const [there, here] = await Promise.all([pool.judge(task), thread.judge(task)]);
    expect(JSON.stringify(there)).toBe(JSON.stringify(here));
  });

  it.each([['pool'], ['thread']])('in the %s refuses what is no document', async (where) => {
    const judging = where === 'pool' ? pool : thread;
    const [, sound] = TASKS[0]!;
    await expect(judging.judge({ ...sound, design: '{"version":1}' })).rejects.toThrow('not one');
  });
});
