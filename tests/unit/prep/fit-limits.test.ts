import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { changesOf, fittedKit, slowedKit } from '../../../shared/prep/fit-kit.ts';
import { bandsTried, CORNERS_TRIED, limitOf } from '../../../shared/prep/fit-limits.ts';

describe('limitOf', () => {
  it('is the last step that all robots made, up to the first that one did not', () => {
    expect(limitOf([6, 6, 5, 6, null], 6)).toMatchObject({ step: 1, met: true });
    expect(limitOf([6, 6, null, null], 6)).toMatchObject({ step: 1, met: false });
    expect(limitOf([6, 6], 6)).toMatchObject({ step: 1, met: false });
  });

  // Wilson's score interval of n of n ends at n/(n + z²), by hand from its formula: 6/(6 + 3.8415) = 0.6097.
  it('says what all of so few says of all robots', () => {
    expect(limitOf([6], 6)!.interval.low).toBeCloseTo(0.6097, 4);
    expect(limitOf([6], 6)!.interval.high).toBe(1);
  });

  it('is none where not even the first was made by all, or none has tried', () => {
    expect(limitOf([5, 6], 6)).toBeUndefined();
    expect(limitOf([null], 6)).toBeUndefined();
    expect(limitOf([0], 0)).toBeUndefined();
    expect(limitOf([], 6)).toBeUndefined();
  });
});

describe('what is tried', () => {
  it('gets harder from step to step', () => {
    const falls = (list: readonly number[]) => list.every((value, i) => i === 0 || value < list[i - 1]!);
    expect(falls(CORNERS_TRIED)).toBe(true);
    expect(bandsTried(DEMO_KIT)).toEqual([5.5, 5, 4.5, 4, 3.5, 3, 2.5, 2]);
    expect(bandsTried({ robot: { ...DEMO_KIT.robot, bandUnit: 1.2 } })).toEqual([1.2, 0.7]);
  });
});

describe('fittedKit', () => {
  const { paces } = DEMO_KIT.robot;
  const told = (value: number, spread: { error: number; low: number; high: number } | null) => ({
    value,
    spread,
    runs: 4,
    robots: 2,
  });
  const sure = { error: 1, low: 20, high: 60 };

  it('takes paces and wheel track that runs are sure of, to a tenth, and leaves the others', () => {
    const fit = {
      paces: [
        { pace: 'steady' as const, ...told(37.46, sure) },
        { pace: 'fast' as const, ...told(91, null) },
      ],
      track: { kind: 'told' as const, ...told(25.04, sure) },
    };
    const { robot, ...rest } = fittedKit(DEMO_KIT, { fit, corner: null, band: null });
    expect(robot).toEqual({ ...DEMO_KIT.robot, paces: { ...paces, steady: 37.5 }, wheelTrack: 25 });
    expect(rest).toEqual({ ...DEMO_KIT, robot: undefined, ...rest });
  });

  it('keeps wheels inside the outline, and a wheel track that laps do not tell', () => {
    const of = (kind: 'told' | 'not-told', value: number) =>
      fittedKit(DEMO_KIT, {
        fit: { paces: [], track: { kind, ...told(value, sure) } },
        corner: null,
        band: null,
      }).robot.wheelTrack;
    expect([of('told', 29), of('not-told', 5)]).toEqual([28, 24]);
  });

  it('makes limits the numbers of drawing rules, and what is untidy at least as mild', () => {
    const { rules, robot } = fittedKit(DEMO_KIT, { fit: null, corner: 45, band: 5.5 });
    expect(robot).toEqual(DEMO_KIT.robot);
    expect((rules.corner.mayStopBelow * 180) / Math.PI).toBeCloseTo(45, 9);
    expect(rules.corner.untidyBelow).toBe(DEMO_KIT.rules.corner.untidyBelow);
    expect([rules.bands.shortest, rules.bands.tidyShortest]).toEqual([5.5, 5.5]);
    expect(fittedKit(DEMO_KIT, { fit: null, corner: null, band: 3 }).rules.bands).toMatchObject({
      shortest: 3,
      tidyShortest: DEMO_KIT.rules.bands.tidyShortest,
    });
  });
});

describe('slowedKit', () => {
  // By hand: 20, 40, 60 and 80 mm/s over 1.25 are 16, 32, 48 and 64.
  it('divides every pace', () => {
    expect(slowedKit(DEMO_KIT, 1.25).robot.paces).toEqual({ creep: 16, steady: 32, brisk: 48, fast: 64 });
  });
});

describe('changesOf', () => {
  it('lists the numbers that differ, with what they were', () => {
    const after = fittedKit(slowedKit(DEMO_KIT, 1.25), { fit: null, corner: 60, band: 5.5 });
    const told = changesOf(DEMO_KIT, after).map(({ what, before, after: is }) => [what, before, is]);
    expect(told).toEqual([
      ['creep', 20, 16],
      ['steady', 40, 32],
      ['brisk', 60, 48],
      ['fast', 80, 64],
      ['corner', DEMO_KIT.rules.corner.mayStopBelow, expect.closeTo(Math.PI / 3, 12)],
      ['band', 4, 5.5],
      ['tidy-band', 5, 5.5],
    ]);
    expect(changesOf(DEMO_KIT, DEMO_KIT)).toEqual([]);
  });
});
