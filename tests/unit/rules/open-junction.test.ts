import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { openJunction } from '../../../shared/rules/open-junction.ts';
import { ruleContext } from '../../../shared/rules/rules.ts';
import { drawn, line, PIER, SHEET } from './setting.ts';

/** Two crossings of the pier, and a corner between them. */
const CROSSED = [
  PIER,
  line('one', [110, 60], [110, 140]),
  line('two', [200, 60], [200, 140]),
  line('elbow', [140, 30], [160, 30], [160, 80]),
];
const openAt = (x: number, y: number, lines = CROSSED) =>
  openJunction(ruleContext(SHEET, drawn(lines), DEMO_KIT).track, { x, y }, 16);

describe('R-open-junction', () => {
  it('R-open-junction names the junction where the robot decided, and how many runs are followed', () => {
    expect(openAt(192, 103)).toEqual({
      id: 'R-open-junction@200,100',
      rule: 'R-open-junction',
      severity: 'may-stop',
      allowed: 16,
      unit: 'count',
      place: { kind: 'point', at: { x: 200, y: 100 } },
      remedy: { code: 'decide-junction' },
    });
    expect(openAt(118, 97).place.at).toEqual({ x: 110, y: 100 });
  });

  it('R-open-junction takes no corner for one, and the very place where there is none', () => {
    expect(openAt(160, 40).place.at).toEqual({ x: 200, y: 100 });
    expect(openAt(160, 40, [PIER]).place.at).toEqual({ x: 160, y: 40 });
  });
});
