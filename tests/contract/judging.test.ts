import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { type JudgeTask, type Judging, startJudging } from '../../server/judging/judging.ts';
import judgeEntry from '../../server/judging/worker.ts';
import { storedChallenge, storedDesign } from '../../server/rooms/documents.ts';
import { EMPTY_DESIGN } from '../../shared/documents/design.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';

/** Sound, faulty and empty drawings of ready challenges, as rooms keep them. */
const TASKS: readonly (readonly [string, JudgeTask])[] = readyChallenges(DEMO_KIT).flatMap((ready) => {
  if (!ready.playable) return [];
  const { challenge } = ready;
  const designs = { sound: challenge.model, faulty: challenge.begin, empty: EMPTY_DESIGN };
  return Object.entries(designs).flatMap(([name, design]) =>
    design
      ? [
          [
            `${ready.key}, ${name}`,
            { challenge: storedChallenge(challenge).body, design: storedDesign(design).body },
          ],
        ]
      : [],
  ) as [string, JudgeTask][];
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
