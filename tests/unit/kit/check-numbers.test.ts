import { describe, expect, test } from 'vitest';
import { type DrawingRules, type Kit, USUAL_TOLERANCES } from '../../../shared/documents/kit.ts';
import { radians } from '../../../shared/geometry/exact-math.ts';
import { checkKit } from '../../../shared/kit/check-kit.ts';
import { numberProblems } from '../../../shared/kit/check-numbers.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { hindrances, withProfile } from '../../../shared/kit/versions.ts';
import { KITS } from '../../kits.ts';

const withRules = (change: Partial<DrawingRules>, kit: Kit = DEMO_KIT): Kit => ({
  ...kit,
  rules: { ...kit.rules, ...change },
});
const found = (kit: Kit) => numberProblems(kit).map(({ code, path }) => `${code} ${path.join('.')}`);
const { bands, junction, actionReady, lineWidth, corner } = DEMO_KIT.rules;

describe('numberProblems', () => {
  test.each(KITS)('finds nothing in the kit $id', (kit) => expect(numberProblems(kit)).toEqual([]));

  test.each(['curveRadius', 'clearance', 'sheetMargin', 'beforeMark', 'afterMark', 'straightFrom'] as const)(
    'a rule of length 0 is wrong: %s',
    (rule) => expect(found(withRules({ [rule]: 0 }))).toEqual([`size-zero rules.${rule}`]),
  );

  test('lengths of 0 inside of rules are wrong, each at its place', () => {
    const kit = withRules({
      lineWidth: { ...lineWidth, least: 0 },
      actionReady: { ...actionReady, creep: 0 },
      bands: { ...bands, shortest: 0, unknownFrom: 0 },
      junction: { ...junction, armLength: 0, snap: 0 },
      endFromEdge: 0,
    });
    expect(found(kit)).toEqual([
      'size-zero rules.lineWidth.least',
      'size-zero rules.endFromEdge',
      'size-zero rules.actionReady.creep',
      'size-zero rules.bands.shortest',
      'size-zero rules.bands.unknownFrom',
      'size-zero rules.junction.armLength',
      'size-zero rules.junction.snap',
    ]);
  });

  test('bands may have to stand edge to edge', () => {
    expect(found(withRules({ bands: { ...bands, gap: 0, overlap: 0 } }))).toEqual([]);
  });

  test('what is less than what it follows is wrong, with the place that it is compared with', () => {
    const { robot } = DEMO_KIT;
    const slow = withProfile(DEMO_KIT, { ...robot, paces: { ...robot.paces, brisk: 30 } });
    expect(numberProblems(slow)).toEqual([
      {
        code: 'out-of-order',
        path: ['robot', 'paces', 'brisk'],
        than: ['robot', 'paces', 'steady'],
        severity: 'wrong',
      },
    ]);
    expect(found(withProfile(DEMO_KIT, { ...robot, topWheelSpeed: 70 }))).toEqual([
      'out-of-order robot.topWheelSpeed',
    ]);
    expect(found(withRules({ bands: { ...bands, least: 5 } }))).toEqual(['out-of-order rules.bands.most']);
    expect(found(withRules({ corner: { ...corner, untidyBelow: radians(40) } }))).toEqual([
      'out-of-order rules.corner.untidyBelow',
    ]);
  });

  test('counts, angles and shares outside of what can be are wrong, with the range', () => {
    expect(found(withRules({ bands: { ...bands, least: 0 } }))).toEqual(['out-of-range rules.bands.least']);
    expect(found(withRules({ bands: { ...bands, most: 9 } }))).toEqual(['out-of-range rules.bands.most']);
    const wide = withRules({ junction: { ...junction, armsApart: radians(181) } });
    expect(numberProblems(wide)).toMatchObject([{ code: 'out-of-range', least: 0, most: radians(180) }]);
    const tolerances = { ...USUAL_TOLERANCES, commonSpeed: -0.01, aside: 11 };
    expect(found(withProfile(DEMO_KIT, { ...DEMO_KIT.robot, tolerances }))).toEqual([
      'out-of-range robot.tolerances.aside',
      'out-of-range robot.tolerances.commonSpeed',
    ]);
    expect(found(withRules({ inkLighter: 22 }))).toEqual(['out-of-range rules.inkLighter']);
  });
});

test('checkKit has what numberProblems finds', () => {
  const kit = withRules({ clearance: 0 });
  expect(checkKit(kit)).toEqual(numberProblems(kit));
});

describe('versions of a kit', () => {
  test('withProfile changes the robot alone', () => {
    const profile = { ...DEMO_KIT.robot, wheelTrack: 23.6 };
    const { robot, ...rest } = withProfile(DEMO_KIT, profile);
    expect(robot).toBe(profile);
    const { robot: _, ...before } = DEMO_KIT;
    expect(rest).toEqual(before);
  });

  test('hindrances are what is wrong, not what a person is to weigh', () => {
    const close = { ...DEMO_KIT, line: { color: '#201030' }, inks: DEMO_KIT.inks.slice(0, 2) };
    const chart = DEMO_KIT.chart.filter(({ word }) => !word.includes('V'));
    expect(hindrances({ ...close, chart })).toEqual([]);
    const dark = { ...DEMO_KIT, inks: DEMO_KIT.inks.with(2, { ...DEMO_KIT.inks[2]!, color: '#201030' }) };
    expect(checkKit(dark).map(({ severity }) => severity)).toEqual(['caution']);
    expect(hindrances(dark)).toEqual([]);
    expect(hindrances(withRules({ clearance: 0 }, dark))).toHaveLength(1);
  });
});
