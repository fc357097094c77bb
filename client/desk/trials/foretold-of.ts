import type { Verdict } from '../../../shared/documents/verdict.ts';
import type { Foretold } from '../../../shared/room/driving.ts';
import { RUN_RULES } from '../../../shared/run/model.ts';

/** What a verdict says beforehand of a real robot from the start berth; null where it says nothing of robots. */
export function foretoldOf({ steadiness, odds, runs }: Verdict): Foretold | null {
  if (!steadiness || steadiness.of === 0) return null;
  const { same, of } = steadiness;
  const own = runs.filter(({ start }) => start === 'start');
  const finish = odds?.find(({ start }) => start === 'start')?.finish ?? null;
  return { same, of, finish, seconds: own.length === 1 ? timeOf(own[0]!) : null };
}

/** Standing still is no matter of pace, and the record of a run goes on for a moment after it has arrived. */
function timeOf({ ending, duration, readings }: Verdict['runs'][number]): number | null {
  if (readings.some(({ action }) => action?.kind === 'wait')) return null;
  if (ending === 'finished') return duration - RUN_RULES.afterFinish;
  return ending === 'parked' ? duration - RUN_RULES.atRest : null;
}
