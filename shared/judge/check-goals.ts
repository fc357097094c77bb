import type { Challenge } from '../documents/challenge.ts';
import type { Formula, Moment, MomentPredicate, Predicate } from '../documents/formula.ts';
import type { ChallengeProblem, ChallengeProblemCode, DocumentPath } from '../documents/refusal.ts';
import type { Berth, Sheet } from '../documents/sheet.ts';

/** Per cent. Common robots differ by about 3 in speed: a window must reach 6 to either side of its middle. */
const FAIR_WINDOW = 6;

/** What is wrong with a challenge's goals: wishes for what the sheet lacks, and windows that luck decides. */
export function goalProblems({ goals, sheet, starts }: Challenge): ChallengeProblem[] {
  const twice = new Set(goals.map((goal) => goal.id)).size < goals.length;
  const problems = goals.flatMap((goal, i): ChallengeProblem[] => {
    const nobody = goal.start !== undefined && !starts.includes(goal.start);
    return [
      ...(nobody ? [{ path: ['goals', i, 'start'], code: 'start-missing' as const }] : []),
      ...formulaProblems(goal.formula, sheet, ['goals', i, 'formula']),
    ];
  });
  return [...(twice ? [{ path: ['goals'], code: 'same-id-twice' as const }] : []), ...problems];
}

function formulaProblems(formula: Formula | Moment, sheet: Sheet, path: DocumentPath): ChallengeProblem[] {
  const below = (part: Formula | Moment, ...step: DocumentPath) =>
    formulaProblems(part, sheet, [...path, ...step]);
  const here = (code: ChallengeProblemCode | undefined, ...step: DocumentPath): ChallengeProblem[] =>
    code ? [{ path: [...path, ...step], code }] : [];
  switch (formula.kind) {
    case 'and':
    case 'or':
      return formula.of.flatMap((part, i) => below(part, 'of', i));
    case 'not':
    case 'lasting':
      return below(formula.of, 'of');
    case 'always':
    case 'eventually': {
      const { from, to = Number.POSITIVE_INFINITY } = formula.window ?? { from: 0 };
      return [...here(windowProblem(from, to), 'window'), ...below(formula.of, 'of')];
    }
    case 'until':
      return [
        ...here(windowProblem(0, formula.within ?? Number.POSITIVE_INFINITY), 'within'),
        ...below(formula.hold, 'hold'),
        ...below(formula.until, 'until'),
      ];
    default:
      return here(wishProblem(formula, sheet));
  }
}

function wishProblem(wish: Predicate | MomentPredicate, sheet: Sheet): ChallengeProblemCode | undefined {
  switch (wish.kind) {
    case 'finish':
      return finishProblem(sheet);
    case 'park':
      return wish.area === undefined ? finishProblem(sheet) : areaProblem(sheet, wish.area);
    case 'in-area':
    case 'act-in':
      return areaProblem(sheet, wish.area);
    case 'gates':
      return wish.gates.every((id) => sheet.gates.some((gate) => gate.id === id))
        ? undefined
        : 'unknown-gate';
    case 'every-gate':
      return sheet.gates.length > 0 ? undefined : 'gates-missing';
    case 'keep-out':
      return sheet.keepOut.length > 0 ? undefined : 'keep-out-missing';
    case 'time':
      return finishProblem(sheet) ?? windowProblem(wish.from, wish.to);
    default:
      return undefined;
  }
}

/** Whether a run can arrive there. */
const isAim = (berth: Berth | undefined): boolean => berth !== undefined && !berth.startOnly;

const finishProblem = (sheet: Sheet): ChallengeProblemCode | undefined =>
  isAim(sheet.finish) ? undefined : 'finish-missing';

const areaProblem = (sheet: Sheet, area: string): ChallengeProblemCode | undefined =>
  sheet.areas.some(({ id }) => id === area) ? undefined : 'unknown-area';

function windowProblem(from: number, to: number): ChallengeProblemCode | undefined {
  if (to <= from) return 'window-empty';
  if (to === Number.POSITIVE_INFINITY) return undefined;
  // In whole hundredths, as files hold them, so that a window of exactly the least width is fair.
  const width = Math.round((to - from) * 100);
  const twiceMiddle = Math.round((to + from) * 100);
  return width * 100 < FAIR_WINDOW * twiceMiddle ? 'window-unfair' : undefined;
}
