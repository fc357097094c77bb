import * as fc from 'fast-check';
import type { Choice, Question } from '../../shared/documents/question.ts';
import type { GoalResult } from '../../shared/documents/verdict.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { formulas } from '../formulas.ts';
import { SEED } from '../seed.ts';
import { each } from './each.ts';
import { ACTIONS } from './runs.ts';

const PLACES = readyChallenges(DEMO_KIT).flatMap((one) => (one.playable ? [one.challenge] : []));
const name = (english: string, spanish: string) => ({ en: english, es: spanish });
const SQUARE = [
  { x: 0, y: 0 },
  { x: 9, y: 0 },
  { x: 9, y: 9 },
];
/** A sheet with every kind of place, for goals that the library does not use. */
export const SPOKEN_SHEET = {
  ...PLACES[0]!.sheet,
  gates: [
    { id: 'market', name: name('Fish market', 'Mercado de pescado'), a: SQUARE[0]!, b: SQUARE[1]! },
    { id: 'bakery', name: name('Bakery', 'Panadería'), a: SQUARE[0]!, b: SQUARE[1]! },
  ],
  areas: [{ id: 'landing', name: name('Ferry landing', 'Embarcadero'), polygon: SQUARE }],
  keepOut: [{ id: 'bank', name: name('Sandbank', 'Banco de arena'), polygon: SQUARE }],
};

export function ofGoals({ goals, points }: Wording): void {
  for (const { goals: wishes, sheet } of PLACES)
    for (const { formula, start } of wishes) {
      goals.sentence(formula, sheet, start);
      goals.short(formula, sheet, start);
    }
  const any = fc.sample(formulas, { seed: SEED, numRuns: 200 });
  for (const formula of any) {
    goals.sentence(formula, SPOKEN_SHEET);
    goals.sentence(formula, SPOKEN_SHEET, 'finish');
    goals.short(formula, SPOKEN_SHEET);
    for (const margin of [-12, -1, 0, 1, 240])
      for (const unit of ['mm', 's', 'count'] as const)
        for (const side of ['above', 'below'] as const) {
          const by =
            formula.kind === 'and' || formula.kind === 'or'
              ? (formula.of[0]?.kind ?? 'finish')
              : formula.kind;
          const result = { id: 'g', met: margin >= 0, margin, unit, side, by } as unknown as GoalResult;
          goals.margin(result, formula);
        }
  }
  const formula = { kind: 'finish' } as const;
  const result = { id: 'g', met: false, margin: -30, unit: 'mm', by: 'finish' } as unknown as GoalResult;
  each(
    [
      { missed: 1, of: 3 },
      { missed: 2, of: 2 },
      { missed: 3, of: 3 },
    ],
    (ways) => goals.far(result, formula, ways),
  );
  each(
    [
      { ...result, leftToLuck: true },
      { ...result, open: true },
    ],
    (one) => goals.margin(one as GoalResult, formula),
  );
  const challenge = PLACES.find(({ goals: wishes }) => wishes.length > 0)!;
  for (const reason of ['steadiness', 'thrift', `goal:${challenge.goals[0]!.id}`])
    for (const [measured, allowed] of [
      [18, 20],
      [20, 20],
      [1, 2],
      [30, 20],
    ] as const)
      for (const withheld of [undefined, true] as const) {
        const line = { reason, got: 5, of: 10, measured, allowed, withheld } as unknown as Parameters<
          typeof points.got
        >[0];
        points.reason(line, challenge);
        points.because(line);
        points.got(line);
      }
}

export function ofQuestions({ questions }: Wording): void {
  const sheet = SPOKEN_SHEET;
  const place = { kind: 'area', area: 'landing' } as const;
  const asked = [
    { kind: 'end' },
    { kind: 'mark', mark: 'm' },
    { kind: 'pace', area: 'landing' },
    { kind: 'how-many', place, of: 20 },
    { kind: 'how-many', place: { kind: 'berth', berth: 'finish' }, of: 4 },
  ];
  for (const start of ['start', 'finish'] as const)
    for (const one of asked) {
      const question = { id: 'q', start, choices: [], ...one } as unknown as Question;
      questions.ask(question, sheet);
      questions.short(question, sheet);
    }
  const choices = [
    { kind: 'berth', berth: 'finish' },
    place,
    { kind: 'loose-end', letter: 'B' },
    ...ACTIONS.map((action) => ({ kind: 'action', action })),
    ...(['creep', 'fast'] as const).map((pace) => ({ kind: 'pace', pace })),
    { kind: 'never' },
    { kind: 'elsewhere' },
    { kind: 'chance' },
  ];
  for (const choice of choices) questions.choice({ key: 'k', ...choice } as Choice, sheet);
}
