import { describe, expect, it } from 'vitest';
import { glanceAt, type Need, urgencyOf } from '../../../../client/desk/insight.ts';
import type { Finding, RuleId } from '../../../../shared/documents/verdict.ts';
import type { Try } from '../../../../shared/room/state.ts';
import { challengeNamed } from '../../../browser/room.ts';
import { roomState } from '../link/fakes.ts';

const challenge = challengeNamed('one-fast-stretch');
const design = challenge.model!;
const rounds = [{ challenge: 'c', key: 'k', varied: false }];

const finding: Finding = {
  id: 'f',
  rule: 'R-before-mark',
  severity: 'may-stop',
  place: { kind: 'point', at: { x: 1, y: 1 } },
};
const tried = (rule: RuleId | null, made = false): Try => ({
  team: 't',
  round: 0,
  guess: 'makes-it',
  at: null,
  made,
  because: null,
  ...(rule && { found: { rule } }),
});
const needWith = (tries: readonly Try[], findings: readonly Finding[] = [finding]): Need | null =>
  glanceAt({
    room: roomState(1, { rounds, tries, phase: 'build' }),
    team: 't',
    design,
    findings,
    doing: 'drawing',
    challenge,
    now: 0,
  }).need;

describe('a team may need somebody', () => {
  const same = tried('R-before-mark');

  it('whose last three tries had the finding that its drawing still has', () => {
    expect(needWith([same, same, same])).toEqual({ kind: 'same', tries: 3, finding });
    expect(needWith([tried('R-corner'), same, same, same, same])).toEqual({
      kind: 'same',
      tries: 4,
      finding,
    });
  });

  it('not while it finds something else each time, or has mended that', () => {
    expect(needWith([same, same, tried('R-corner')])).toMatchObject({ kind: 'tries' });
    expect(needWith([same, same])).toBeNull();
    expect(needWith([same, same, same], [])).toEqual({ kind: 'tries', tries: 3 });
    expect(needWith([same, same, tried(null, true)], [])).toBeNull();
  });

  it('and those stand first who make the same mistake again and again', () => {
    const needs = [null, { kind: 'away' }, { kind: 'same', tries: 3, finding }, { kind: 'empty' }] as const;
    expect([...needs].sort((a, b) => urgencyOf(a) - urgencyOf(b)).map((need) => need?.kind)).toEqual([
      'same',
      'empty',
      'away',
      undefined,
    ]);
  });
});
