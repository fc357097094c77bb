import { describe, expect, it } from 'vitest';
import { drawn, line, mended, of, PIER, withRules } from './setting.ts';

/** Square across the pier at x, from 60 mm above it to `below` under it. */
const across = (x: number, below = 60, id = `across-${x}`) => line(id, [x, 40], [x, 100 + below]);

describe('R-junction-arms', () => {
  it('R-junction-arms is silent for a way of 25 mm to its loose end', () => {
    expect(of('R-junction-arms', drawn([PIER, across(150, 25)]))).toEqual([]);
  });

  it('R-junction-arms finds a way of 20 mm to its loose end', () => {
    expect(of('R-junction-arms', drawn([PIER, across(150, 20)]))).toMatchObject([
      { variant: 'end', measured: 20, allowed: 25, unit: 'mm', severity: 'untidy' },
    ]);
  });

  it('R-junction-arms: may stop where the arm is over before the axle is on the junction, 11 + 2.5 mm', () => {
    expect(of('R-junction-arms', drawn([PIER, across(150, 13.5)]))[0]?.severity).toBe('untidy');
    expect(of('R-junction-arms', drawn([PIER, across(150, 13.4)]))[0]?.severity).toBe('may-stop');
  });

  it('R-junction-arms is mended by ending an overdrawn line at the junction', () => {
    const [finding] = of('R-junction-arms', drawn([PIER, across(150, 8)]));
    expect(mended(finding).lines).toEqual([PIER, across(150, 0)]);
  });

  it('R-junction-arms is mended by leaving out a bit of line of its own', () => {
    const stub = line('stub', [150, 100], [150, 112]);
    const [finding] = of('R-junction-arms', drawn([PIER, stub]));
    expect(mended(finding).lines).toEqual([PIER]);
  });

  it('R-junction-arms finds two junctions 20 mm apart, once', () => {
    const [finding, ...others] = of('R-junction-arms', drawn([PIER, across(150), across(170)]));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({ variant: 'junction', measured: 20, place: { at: { x: 160, y: 100 } } });
    expect(of('R-junction-arms', drawn([PIER, across(150), across(175)]))).toEqual([]);
  });

  it('R-junction-arms finds a corner 18 mm behind a junction', () => {
    const bent = line('bent', [150, 100], [150, 118], [220, 118]);
    expect(of('R-junction-arms', drawn([PIER, bent]))).toMatchObject([{ variant: 'corner', measured: 18 }]);
  });

  it('R-junction-arms goes on over a joint of two lines', () => {
    const first = line('first', [150, 100], [150, 110]);
    const second = (to: number) => line('second', [150, 112], [150, to]);
    expect(of('R-junction-arms', drawn([PIER, first, second(160)]))).toEqual([]);
    expect(of('R-junction-arms', drawn([PIER, first, second(121)]))).toMatchObject([{ variant: 'end' }]);
  });

  it('R-junction-arms says nothing of given lines, but of a line drawn too near their junction', () => {
    const given = drawn([{ ...PIER, id: 'given' }, across(150, 10)]);
    expect(of('R-junction-arms', drawn([]), { sheet: { given } })).toEqual([]);
    const near = of('R-junction-arms', drawn([across(132)]), { sheet: { given } });
    expect(near).toMatchObject([{ variant: 'junction', measured: 18 }]);
  });

  it('R-junction-arms goes by the kit', () => {
    const kit = withRules({ junction: { armsApart: 1.3, armLength: 15, snap: 3 } });
    expect(of('R-junction-arms', drawn([PIER, across(150, 15)]), { kit })).toEqual([]);
    expect(of('R-junction-arms', drawn([PIER, across(150, 14.9)]), { kit })).toMatchObject([{ allowed: 15 }]);
  });
});
