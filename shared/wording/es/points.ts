import type { Challenge } from '../../documents/challenge.ts';
import { GOAL_REASON, type PointLine } from '../../documents/verdict.ts';
import { goals } from './goals.ts';
import { numbers } from './numbers.ts';

/** What a part of the points is for, beside the goals. */
const MERITS: Readonly<
  Record<string, { readonly name: string; readonly because: (line: PointLine) => string }>
> = {
  steadiness: {
    name: 'robots que lo logran',
    because: ({ measured = 0, allowed = 0 }) =>
      `${measured} de ${allowed} robots un poco distintos ${numbers.plural(measured, 'hace', 'hacen')} lo mismo.`,
  },
  thrift: {
    name: 'poca tinta',
    because: ({ measured = 0, allowed = 0, withheld }) => {
      const cost = `El dibujo cuesta ${numbers.short(measured, 0)} (mm de línea, y 20 por marca)`;
      const best = numbers.short(allowed, 0);
      if (measured > allowed || withheld) return `${cost}; el mejor que conocemos cuesta ${best}.`;
      return measured < allowed
        ? `${cost}; el mejor que conocíamos costaba ${best}.`
        : `${cost}, como el mejor que conocemos.`;
    },
  },
};

/** Why a line gives what it gives. A goal says it by its margin. */
function because(line: PointLine): string | undefined {
  const merit = MERITS[line.reason];
  if (!merit) return undefined;
  return line.withheld
    ? `${merit.because(line)} Cuenta cuando se cumplen todos los objetivos obligatorios y nada para al robot.`
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
  got: (line: PointLine): string => `${line.got} de ${line.of}`,
};
