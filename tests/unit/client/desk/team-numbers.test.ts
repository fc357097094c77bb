import { describe, expect, it } from 'vitest';
import { typedDigit } from '../../../../client/desk/team-numbers.ts';

/** The number that digits typed one soon after the other stand for; a digit that still waits stands alone. */
function typed(digits: string, teams: number): number | null {
  let before = '';
  let last: number | null = null;
  for (const digit of digits) {
    const now = typedDigit(before, digit, teams);
    before = 'waits' in now ? now.waits : '';
    last = 'waits' in now ? Number(now.waits) : now.team;
  }
  return last;
}

describe('typedDigit', () => {
  it('up to nine teams every digit counts at once', () => {
    for (let team = 1; team <= 9; team++) expect(typedDigit('', String(team), 9)).toEqual({ team });
  });

  it('every team has its number, with 12 and with 40 teams', () => {
    for (const teams of [12, 40])
      for (let team = 1; team <= teams; team++) expect(typed(String(team), teams)).toBe(team);
  });

  it('only a digit that another number begins with waits', () => {
    expect(typedDigit('', '1', 12)).toEqual({ waits: '1' });
    expect(typedDigit('', '2', 12)).toEqual({ team: 2 });
    expect(typedDigit('', '4', 40)).toEqual({ waits: '4' });
    expect(typedDigit('', '5', 40)).toEqual({ team: 5 });
  });

  it('a second digit that makes no team’s number begins anew', () => {
    expect(typedDigit('1', '5', 12)).toEqual({ team: 5 });
    expect(typedDigit('4', '1', 40)).toEqual({ waits: '1' });
  });

  it('numbers of no team pick nothing', () => {
    expect([typedDigit('', '0', 40), typedDigit('', '7', 4)]).toEqual([{ team: null }, { team: null }]);
  });
});
