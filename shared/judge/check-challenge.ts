import type { Challenge } from '../documents/challenge.ts';
import { type Formula, isPredicate, type Predicate } from '../documents/formula.ts';
import type { ChallengeProblem, ChallengeProblemCode } from '../documents/refusal.ts';
import type { Sheet } from '../documents/sheet.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { refusalOf } from './refusal.ts';

const LARGEST_SHEET = { w: 4000, h: 2000 } as const;

/** Per cent. Common robots differ by about 3 in speed: a window must reach 6 to either side of its middle. */
const FAIR_WINDOW = 6;

/** Every problem of a challenge; none means that it can be played and judged. */
export function checkChallenge(challenge: Challenge): ChallengeProblem[] {
  return [
    ...sheetProblems(challenge.sheet),
    ...playProblems(challenge),
    ...goalProblems(challenge),
    ...designProblems(challenge),
  ];
}

function sheetProblems(sheet: Sheet): ChallengeProblem[] {
  const problems: ChallengeProblem[] = [];
  if (sheet.w > LARGEST_SHEET.w || sheet.h > LARGEST_SHEET.h) {
    problems.push({ path: ['sheet'], code: 'sheet-too-large' });
  }
  const off = (p: PaperPoint) => p.x < 0 || p.y < 0 || p.x > sheet.w || p.y > sheet.h;
  const places: [string, readonly PaperPoint[]][] = [
    ['start', [sheet.start.at]],
    ['finish', sheet.finish ? [sheet.finish.at] : []],
    ['gates', sheet.gates.flatMap((gate) => [gate.a, gate.b])],
    ['areas', sheet.areas.flatMap((area) => area.polygon)],
    ['keepOut', sheet.keepOut.flatMap((area) => area.polygon)],
  ];
  for (const [part, points] of places) {
    if (points.some(off)) problems.push({ path: ['sheet', part], code: 'off-the-sheet' });
  }
  for (const part of ['gates', 'areas', 'keepOut'] as const) {
    if (idTwice(sheet[part])) problems.push({ path: ['sheet', part], code: 'same-id-twice' });
  }
  return problems;
}

const idTwice = (things: readonly { readonly id: string }[]): boolean =>
  new Set(things.map((thing) => thing.id)).size < things.length;

function playProblems({ play, sheet, starts, begin }: Challenge): ChallengeProblem[] {
  const problems: ChallengeProblem[] = [];
  if (play === 'fill-in' && sheet.given.lines.length === 0) {
    problems.push({ path: ['sheet', 'given', 'lines'], code: 'given-lines-missing' });
  }
  if (play === 'mend' && !begin) problems.push({ path: ['begin'], code: 'begin-missing' });
  if (starts.includes('finish') && !sheet.finish) problems.push({ path: ['starts'], code: 'finish-missing' });
  return problems;
}

function goalProblems({ goals, sheet }: Challenge): ChallengeProblem[] {
  const twice: ChallengeProblem[] = idTwice(goals) ? [{ path: ['goals'], code: 'same-id-twice' }] : [];
  const problems = goals.flatMap((goal, i) =>
    predicatesOf(goal.formula).flatMap((wish) => {
      const code = wishProblem(wish, sheet);
      return code ? [{ path: ['goals', i, 'formula'], code }] : [];
    }),
  );
  return [...twice, ...problems];
}

function predicatesOf(formula: Formula): Predicate[] {
  if (isPredicate(formula)) return [formula];
  return formula.kind === 'not' ? predicatesOf(formula.of) : formula.of.flatMap(predicatesOf);
}

function wishProblem(wish: Predicate, sheet: Sheet): ChallengeProblemCode | undefined {
  switch (wish.kind) {
    case 'finish':
      return sheet.finish ? undefined : 'finish-missing';
    case 'park':
      if (wish.area === undefined) return sheet.finish ? undefined : 'finish-missing';
      return sheet.areas.some((area) => area.id === wish.area) ? undefined : 'unknown-area';
    case 'gates':
      return wish.gates.every((id) => sheet.gates.some((gate) => gate.id === id))
        ? undefined
        : 'unknown-gate';
    case 'keep-out':
      return sheet.keepOut.length > 0 ? undefined : 'keep-out-missing';
    case 'time':
      return sheet.finish ? windowProblem(wish.from, wish.to) : 'finish-missing';
    default:
      return undefined;
  }
}

function windowProblem(from: number, to: number): ChallengeProblemCode | undefined {
  if (to <= from) return 'window-empty';
  // In whole hundredths, as files hold them, so that a window of exactly the least width is fair.
  const width = Math.round((to - from) * 100);
  const twiceMiddle = Math.round((to + from) * 100);
  return width * 100 < FAIR_WINDOW * twiceMiddle ? 'window-unfair' : undefined;
}

function designProblems(challenge: Challenge): ChallengeProblem[] {
  return (['begin', 'model'] as const).flatMap((part) => {
    const design = challenge[part];
    const refusal = design && refusalOf(challenge, design);
    return refusal ? [{ path: [part, ...refusal.path], code: refusal.code }] : [];
  });
}
