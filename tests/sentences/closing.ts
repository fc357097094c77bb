import { CLOSING_MISTAKES, type ClosingAsk, REAL_TROUBLES } from '../../shared/documents/closing-check.ts';
import { EVIDENCE_KINDS } from '../../shared/evidence/evidence.ts';
import { STANDARDS } from '../../shared/evidence/frameworks.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';
import { SPOKEN_SHEET } from './goals.ts';

/** The last questions of a lesson, and what the lesson has shown. */

const ASKS: readonly ClosingAsk[] = [
  {
    kind: 'mark',
    start: 'start',
    mark: 'm',
    choices: [{ key: 'park', kind: 'action', action: { kind: 'park' } }],
  },
  { kind: 'end', start: 'finish', choices: [{ key: 'chance', kind: 'chance' }] },
  {
    kind: 'why',
    start: 'start',
    at: { x: 1, y: 1 },
    choices: [{ key: 'line-lost', kind: 'reason', reason: 'line-lost' }],
  },
];
const NOWHERE: Extract<ClosingAsk, { kind: 'why' }> = {
  kind: 'why',
  start: 'start',
  choices: [{ key: 'falls-short', kind: 'reason', reason: 'falls-short' }],
};
const ANSWERS = ['chance', 'berth:finish'].map((right) => ({ right, mistakes: [] }));

export function ofClosing({ closing, evidence }: Wording): void {
  const { check, desk, board } = closing;
  for (const n of [0, 1, 2, 5]) {
    each([check.title, check.open], (say) => say(n));
    each([check.which, desk.answered, desk.ofTeam, desk.right, board.right], (say) => say(n, 5));
    each([desk.answered, desk.right, board.right], (say) => say(n, 1));
    desk.right(0, 0);
  }
  for (const ask of ASKS) {
    check.ask(ask, SPOKEN_SHEET);
    board.short(ask, SPOKEN_SHEET);
    check.choice(ask.choices[0]!, SPOKEN_SHEET);
    each(ANSWERS, (answer) => check.because(ask, answer, ['coral', '…']));
  }
  check.because(NOWHERE, ANSWERS[0]!, []);
  for (const real of REAL_TROUBLES) {
    check.ask({ ...NOWHERE, real }, SPOKEN_SHEET);
    board.short({ ...NOWHERE, real }, SPOKEN_SHEET);
  }
  each([check.sheet, check.should, check.said, check.right], (say) => say('…'));
  each(CLOSING_MISTAKES, (mistake) => [
    check.but(mistake),
    desk.mistake(mistake, 1),
    desk.mistake(mistake, 3),
  ]);
  each(EVIDENCE_KINDS, (kind) => [
    evidence.headline({ kind, shown: 7, of: 10 }),
    evidence.headline({ kind, shown: 0, of: 1 }),
    evidence.headline({ kind, shown: 1, of: 14 }),
    evidence.headline({ kind, shown: 0, of: 0 }),
    evidence.ofClass(kind, { shown: 1, of: 1 }),
    evidence.ofClass(kind, { shown: 3, of: 12 }),
    evidence.ofTeam(kind, { shown: 1, of: 1 }),
    evidence.ofTeam(kind, { shown: 3, of: 12 }),
  ]);
  each(STANDARDS, evidence.standard);
  evidence.title('plum-42', '2026-03-04');
}
