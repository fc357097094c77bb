import type { Challenge } from '../documents/challenge.ts';
import type { ChallengeProblem } from '../documents/refusal.ts';
import type { MarkBox, Sheet } from '../documents/sheet.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { checkKit } from '../kit/check-kit.ts';
import { isOverInk } from '../rules/ink-budget.ts';
import { isOverMarks } from '../rules/mark-budget.ts';
import { ruleContext } from '../rules/rules.ts';
import { BAND_SPREAD } from '../track/layout.ts';
import { boxCorners } from '../track/mark-boxes.ts';
import { goalProblems } from './check-goals.ts';
import { designRefusal, misplacedMark } from './refusal.ts';

const LARGEST_SHEET = { w: 4000, h: 2000 } as const;

/** Every problem of a challenge; none means that it can be played and judged. */
export function checkChallenge(challenge: Challenge): ChallengeProblem[] {
  return [
    ...kitProblems(challenge),
    ...sheetProblems(challenge.sheet),
    ...boxProblems(challenge),
    ...givenProblems(challenge),
    ...playProblems(challenge),
    ...goalProblems(challenge),
    ...askProblems(challenge),
    ...designProblems(challenge),
  ];
}

/** What a person is to weigh in a kit is no reason against a challenge. */
const kitProblems = ({ kit }: Challenge): ChallengeProblem[] =>
  checkKit(kit).flatMap(({ severity, path, code }) =>
    severity === 'wrong' ? [{ path: ['kit', ...path], code }] : [],
  );

/** Given marks stand on given lines, like drawn ones on any. */
function givenProblems(challenge: Challenge): ChallengeProblem[] {
  const { marks, lines } = challenge.sheet.given;
  const refusal = misplacedMark(challenge, marks, lines, ['sheet', 'given']);
  return refusal ? [{ path: refusal.path, code: refusal.code }] : [];
}

function sheetProblems(sheet: Sheet): ChallengeProblem[] {
  const problems: ChallengeProblem[] = [];
  const { boxes = [] } = sheet;
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
    ['boxes', boxes.flatMap(boxCorners)],
  ];
  for (const [part, points] of places) {
    if (points.some(off)) problems.push({ path: ['sheet', part], code: 'off-the-sheet' });
  }
  for (const part of ['gates', 'areas', 'keepOut', 'boxes'] as const) {
    if (idTwice(sheet[part] ?? [])) problems.push({ path: ['sheet', part], code: 'same-id-twice' });
  }
  return problems;
}

/** A box takes in the smallest mark that robots of the kit read, lying or upright. */
function boxProblems({ sheet: { boxes = [] }, kit: { rules } }: Challenge): ChallengeProblem[] {
  const long = rules.bands.least * rules.bands.shortest;
  const wide = rules.lineWidth.least + 2 * BAND_SPREAD;
  const isTooSmall = ({ w, h }: MarkBox): boolean =>
    Math.min(w, h) < Math.min(long, wide) || Math.max(w, h) < Math.max(long, wide);
  return boxes.flatMap((box, i): ChallengeProblem[] =>
    isTooSmall(box) ? [{ path: ['sheet', 'boxes', i], code: 'box-too-small' }] : [],
  );
}

const idTwice = (things: readonly { readonly id: string }[]): boolean =>
  new Set(things.map((thing) => thing.id)).size < things.length;

function playProblems({ play, sheet, starts, begin, goals, asks }: Challenge): ChallengeProblem[] {
  const problems: ChallengeProblem[] = [];
  if ((play === 'fill-in' || play === 'predict') && sheet.given.lines.length === 0) {
    problems.push({ path: ['sheet', 'given', 'lines'], code: 'given-lines-missing' });
  }
  if (play === 'mend' && !begin) problems.push({ path: ['begin'], code: 'begin-missing' });
  if (play === 'predict' && !asks) problems.push({ path: ['asks'], code: 'asks-missing' });
  if (play !== 'predict' && goals.length === 0) problems.push({ path: ['goals'], code: 'goals-missing' });
  if (starts.includes('finish') && !sheet.finish) problems.push({ path: ['starts'], code: 'finish-missing' });
  return problems;
}

/** Questions are about travellers who set out, places that are on the sheet and marks that are given. */
function askProblems({ asks = [], sheet, starts }: Challenge): ChallengeProblem[] {
  const areaMissing = (id: string): boolean => !sheet.areas.some((area) => area.id === id);
  return asks.flatMap((ask, i): ChallengeProblem[] => {
    const path = ['asks', i];
    if (!starts.includes(ask.start)) return [{ path: [...path, 'start'], code: 'start-missing' }];
    if (ask.kind === 'pace' && areaMissing(ask.area)) {
      return [{ path: [...path, 'area'], code: 'unknown-area' }];
    }
    if (ask.kind !== 'how-many') return [];
    if (ask.place.kind === 'area' && areaMissing(ask.place.area)) {
      return [{ path: [...path, 'place'], code: 'unknown-area' }];
    }
    const noBerth = ask.place.kind === 'berth' && ask.place.berth === 'finish' && !sheet.finish;
    return noBerth ? [{ path: [...path, 'place'], code: 'finish-missing' }] : [];
  });
}

function designProblems(challenge: Challenge): ChallengeProblem[] {
  return (['begin', 'model'] as const).flatMap((part): ChallengeProblem[] => {
    const design = challenge[part];
    if (!design) return [];
    const refusal = designRefusal(challenge, design);
    if (refusal) return [{ path: [part, ...refusal.path], code: refusal.code }];
    const { sheet, kit, starts, limits } = challenge;
    const context = ruleContext(sheet, design.drawing, kit, starts, limits);
    const ink: ChallengeProblem = { path: [part, 'drawing', 'lines'], code: 'too-much-ink' };
    const marks: ChallengeProblem = { path: [part, 'drawing', 'marks'], code: 'too-many-marks' };
    return [...(isOverInk(context) ? [ink] : []), ...(isOverMarks(context) ? [marks] : [])];
  });
}
