import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { drawn, line, mark, mended, of, PIER, withRobot } from './setting.ts';

/** A way that leaves the pier to the right (down the sheet) at 110 mm, so that nothing leaves it to the left. */
const DOWN = line('down', [150, 100], [150, 170]);
const found = (word: string, at = 50) =>
  of('R-missing-arm', drawn([PIER, DOWN], [mark('m', 'pier', at, word)]));

describe('R-missing-arm', () => {
  // The demo chart: AV takes left and VA right; ACA goes straight on.
  it('R-missing-arm is silent for ways that there are', () => {
    expect(found('VA')).toEqual([]);
    expect(found('ACA')).toEqual([]);
  });

  it('R-missing-arm finds a mark that takes left where nothing leaves to the left', () => {
    expect(found('AV')).toMatchObject([
      { variant: 'no-left', severity: 'may-stop', place: { kind: 'mark', mark: 'm' } },
    ]);
  });

  it('R-missing-arm finds a mark that goes straight on where the line ends on another', () => {
    const bar = line('bar', [150, 40], [150, 160]);
    const stem = line('stem', [40, 100], [150, 100]);
    const found = of('R-missing-arm', drawn([bar, stem], [mark('m', 'stem', 50, 'ACA')]));
    expect(found).toMatchObject([{ variant: 'no-straight' }]);
  });

  it('R-missing-arm follows the choice over a corner, and forgets it for a later choice', () => {
    const bent = line('bent', [40, 100], [110, 100], [110, 60], [260, 60]);
    const down = line('down', [180, 60], [180, 130]);
    const at = (...marks: ReturnType<typeof mark>[]) => of('R-missing-arm', drawn([bent, down], marks));
    expect(at(mark('m', 'bent', 40, 'AV'))).toMatchObject([{ variant: 'no-left', place: { mark: 'm' } }]);
    expect(at(mark('m', 'bent', 40, 'AV'), mark('n', 'bent', 130, 'VA'))).toEqual([]);
  });

  it('R-missing-arm says nothing of a mark that no robot meets from that side', () => {
    // Met against its line the mark would take left; the robot comes along it and takes right.
    expect(found('VA')).toEqual([]);
    const back = { kit: withRobot({ looseEnd: 'turn-back' }) };
    const marks = [mark('m', 'pier', 150, 'VA')];
    // Coming back from the pier's end the robot reads AV, and DOWN leaves to its left.
    expect(of('R-missing-arm', drawn([PIER, DOWN], marks), back)).toEqual([]);
    const up = line('up', [150, 100], [150, 30]);
    expect(of('R-missing-arm', drawn([PIER, up], marks), back)).toMatchObject([{ variant: 'no-left' }]);
  });

  it('R-missing-arm mends the mark to the way nearest to what was wanted, its middle where it was', () => {
    // Instead of left: straight on, ACA, which is a band longer than AV.
    const [made] = mended(found('AV')[0]).marks;
    expect(made?.bands.map(({ ink }) => ink).join('')).toBe('ACA');
    expect(made?.at).toBeCloseTo(50 - 5.5 / 2, 2);
  });

  it('R-missing-arm mends a mark on a line that was drawn towards the robot', () => {
    const towards = line('pier', [260, 100], [40, 100]);
    const stem = line('stem', [150, 100], [150, 30]);
    // 220 − 50 − 11: as far from the berth as before. Read by the robot the bands VA are AV turned round.
    const lines = [
      line('pier', [150, 100], [40, 100]),
      line('bar', [150, 30], [150, 100]),
      line('on', [150, 100], [220, 100]),
    ];
    const drawing = drawn([towards, stem], [mark('m', 'pier', 159, 'AV')]);
    const [first] = of('R-missing-arm', drawing);
    expect(first).toMatchObject([{ variant: 'no-right' }][0]!);
    expect(
      mended(first)
        .marks[0]?.bands.map(({ ink }) => ink)
        .join(''),
    ).toBe('ACA');
    const tee = of('R-missing-arm', drawn([lines[0]!, lines[1]!, lines[2]!], [mark('m', 'pier', 49, 'AV')]));
    expect(tee).toMatchObject([{ variant: 'no-right' }]);
  });
});

describe('R-missing-arm says which mark to draw instead', () => {
  /** A street across the end of the pier: ways to the left and to the right, none straight on. */
  const street = line('street', [260, 40], [260, 160]);
  const [pier, back] = [line('pier', [40, 100], [260, 100]), line('back', [260, 100], [40, 100])];
  const leftOnly = { ...DEMO_KIT, chart: DEMO_KIT.chart.filter(({ word }) => word !== 'VA') };
  const straightOn = (on: typeof pier, kit = leftOnly) =>
    of('R-missing-arm', drawn([on, street], [mark('m', on.id, 90, 'ACA')]), { kit });

  it('R-missing-arm reads it as the robot meets it, on a line drawn either way', () => {
    const inks = (on: typeof pier) => mended(straightOn(on)[0]).marks[0]!.bands.map(({ ink }) => ink);
    expect([inks(pier), inks(back)]).toEqual([
      ['A', 'V'],
      ['V', 'A'],
    ]);
  });

  it('R-missing-arm prefers the shorter of two words for one way', () => {
    const chart = [{ word: 'CVA', action: { kind: 'choose', way: 'left' } } as const, ...leftOnly.chart];
    const [finding] = straightOn(pier, { ...leftOnly, chart });
    expect(mended(finding).marks[0]!.bands).toHaveLength(2);
    expect(finding?.remedy?.code).toBe('choose-way');
  });

  it('R-missing-arm says nothing of given marks', () => {
    const given = drawn([pier, street], [mark('m', 'pier', 90, 'ACA')]);
    expect(of('R-missing-arm', drawn([]), { kit: leftOnly, sheet: { given } })).toEqual([]);
  });
});
