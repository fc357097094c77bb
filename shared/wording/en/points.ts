import type { Challenge } from '../../documents/challenge.ts';
import { GOAL_REASON, type PointLine } from '../../documents/verdict.ts';
import { goals } from './goals.ts';
import { numbers } from './numbers.ts';

/** What a part of the points is for, beside the goals. */
const MERITS: Readonly<
  Record<string, { readonly name: string; readonly because: (line: PointLine) => string }>
> = {
  steadiness: {
    name: 'robots that make it',
    because: ({ measured = 0, allowed = 0 }) =>
      `${measured} of ${allowed} slightly different robots do as the undisturbed one.`,
  },
  thrift: {
    name: 'little ink',
    because: ({ measured = 0, allowed = 0, withheld }) => {
      const cost = `The drawing costs ${numbers.short(measured, 0)} (mm of line, and 20 a mark)`;
      const best = numbers.short(allowed, 0);
      if (measured > allowed || withheld) return `${cost}; the best we know costs ${best}.`;
      return measured < allowed ? `${cost}; the best we knew cost ${best}.` : `${cost}, as the best we know.`;
    },
  },
};

/** Why a line gives what it gives. A goal says it by its margin. */
function because(line: PointLine): string | undefined {
  const merit = MERITS[line.reason];
  if (!merit) return undefined;
  return line.withheld
    ? `${merit.because(line)} It counts once every goal that must be met is met and nothing stops the robot.`
    : merit.because(line);
}

/** What the points were for; a reason that this page is too old to know is said as it is. */
function reason(line: PointLine, challenge: Pick<Challenge, 'goals' | 'sheet'>): string {
  const id = line.reason.startsWith(GOAL_REASON) ? line.reason.slice(GOAL_REASON.length) : undefined;
  const goal = challenge.goals.find((one) => one.id === id);
  return goal ? goals.short(goal.formula, challenge.sheet) : (MERITS[line.reason]?.name ?? line.reason);
}

/** Why points were given: codes of `shared/points`. */
export const points = {
  reason,
  because,
  got: (line: PointLine): string => `${line.got} of ${line.of}`,
};
