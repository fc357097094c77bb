import type { Finding, RuleId, Severity, Verdict } from '../../../shared/documents/verdict.ts';
import type { LessonRecord } from '../../../shared/evidence/record.ts';
import { DESK, type Move, roomAfter, SERVER, team } from '../room/arbitraries.ts';

/** Lessons made by hand: who did what, and what the judge said. */

export const joined = (...ids: string[]): Move[] => ids.map((id) => [SERVER, { kind: 'join', team: id }]);

/** The building of a challenge begins, `at` ms. */
export const round = (challenge: string, at = 2000): Move[] => [
  [DESK, { kind: 'choose-challenge', challenge, key: `key-${challenge}` }, at],
  [DESK, { kind: 'start-building', seconds: null }, at],
];
export const roundEnds: Move = [DESK, { kind: 'end-building' }];

let entries = 0;
/** A team hands in, and the judge says so at once; `found` by rule, as the verdict's document has it. */
export function handsIn(by: string, inRound: number, met: boolean, document: string, at = 2000): Move[] {
  const entry = `e${++entries}`;
  const points = met ? 100 : 0;
  return [
    [team(by), { kind: 'hand-in', round: inRound, entry, design: `d-${entry}` }, at],
    [SERVER, { kind: 'judge', entry, document, points, met }, at],
  ];
}

export const tries = (by: string, guess: 'makes-it' | 'fails' | 'not-sure', made: boolean): Move => [
  team(by),
  { kind: 'try', round: 0, guess, at: null, made },
];

const finding = ([rule, severity]: readonly [RuleId, Severity]): Finding => ({
  id: `${rule}-1`,
  rule,
  severity,
  place: { kind: 'point', at: { x: 1, y: 1 } },
});

/** A verdict of which only the findings count here. */
export const verdictWith = (...found: (readonly [RuleId, Severity])[]): Verdict => ({
  version: 1,
  engine: 1,
  level: 'entry',
  findings: found.map(finding),
  runs: [],
  goals: [],
  met: false,
  points: [],
  total: 0,
});

export const record = (
  moves: readonly Move[],
  rest: Partial<Omit<LessonRecord, 'room'>> = {},
): LessonRecord => ({
  room: roomAfter(...moves),
  verdicts: new Map(),
  answers: new Map(),
  challenges: new Map(),
  ...rest,
});
