import { describe, expect, it } from 'vitest';
import { drivingPages } from '../../../../server/print/driving.ts';
import { COLORS } from '../../../../server/print/page.ts';
import { FAINT, outOfSight } from '../../../../server/print/sheet.ts';
import { printTools } from '../../../../server/print/tools.ts';
import { readyNamed } from '../../../../server/rooms/ready.ts';
import { pathFoot } from '../../../../shared/geometry/path.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { layOut } from '../../../../shared/track/layout.ts';
import type { LineLook, MarkLook } from '../../../../shared/wire/print.ts';
import { placed } from './items.ts';

const { title, challenge } = readyNamed('one-fast-stretch')!;
const { drawing } = challenge.model!;
const layout = layOut(challenge.sheet, drawing);
const [line] = layout.lines;
const inks = new Set(DEMO_KIT.inks.map(({ color }) => color));

async function things(lines: LineLook, marks: MarkLook) {
  const sheet = { challenge, title, id: 'a'.repeat(64), drawing, emblem: 'bell' };
  const [page, ...others] = drivingPages(sheet, { paper: 'A4', lines, marks }, await printTools());
  expect(others).toEqual([]);
  return placed(page!.items);
}
const isOnLine = (p: { x: number; y: number }) => pathFoot(line!.path, p).distance < 4;

/** Light of an sRGB colour (IEC 61966-2-1), and what paper with it returns, as DEVELOPERS.md says of inks. */
function returned(color: string): number {
  const s = Number.parseInt(color.slice(1, 3), 16) / 255;
  const light = s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  return 0.04 + 0.81 * light;
}

describe('a sheet that a robot drives on', () => {
  it('has bands of plain colour: no rim, hatch or letter lies on them', async () => {
    const all = await things('ink', 'colour');
    const onLine = all.filter(({ points }) => points.length > 0 && points.every(isOnLine));
    const looks = onLine.map(({ item }) =>
      item.kind === 'path' ? (item.fill ?? item.stroke?.color) : item.kind,
    );
    const words = layout.marks.flatMap(({ bands }) => bands.map(({ ink }) => ink));
    const bands = words.map((ink) => DEMO_KIT.inks.find(({ id }) => id === ink)!.color);
    expect(looks).toEqual([DEMO_KIT.line.color, ...layout.marks.map(() => COLORS.white), ...bands]);
  });

  it('leaves the places of marks white where they are to be painted, with rungs outside the line', async () => {
    const all = await things('ink', 'paint');
    const onLine = all.filter(({ points }) => points.length > 0 && points.every(isOnLine));
    expect(onLine.some(({ item }) => item.kind === 'path' && inks.has(item.fill ?? ''))).toBe(false);
    const mark = layout.marks[0]!;
    // One rung at each end of each band, on both sides; bands that touch share theirs.
    const rungs = all.filter(
      ({ item, points }) =>
        item.kind === 'path' &&
        item.stroke?.square &&
        item.stroke.color === FAINT.color &&
        points.every((p) => {
          const foot = pathFoot(line!.path, p);
          return (
            foot.distance > line!.width / 2 &&
            foot.distance < 8 &&
            foot.s > mark.from - 1 &&
            foot.s < mark.to + 1
          );
        }),
    );
    expect(rungs).toHaveLength(2 * (mark.bands.length + 1));
  });

  it('shows a line that is to be drawn as pale dots along its middle', async () => {
    const all = await things('dots', 'colour');
    const strokes = all.flatMap(({ item }) => (item.kind === 'path' && item.stroke ? [item.stroke] : []));
    expect(strokes.some(({ width }) => width >= 4)).toBe(false);
    expect(strokes.filter(({ dash, width }) => dash?.[0] === 0 && width < 1)).toHaveLength(1);
  });

  it('prints whatever is dark out of sight of every sensor that follows a line', async () => {
    for (const lines of ['ink', 'dots'] as const) {
      const dark = (await things(lines, 'paint')).filter(
        ({ item }) =>
          (item.kind === 'path' && (item.stroke?.color ?? item.fill) === COLORS.ink) || item.kind === 'text',
      );
      // The outer sensors lie two pitches beside the middle; their footprint fades within 2.4 mm.
      const sight = 2 * DEMO_KIT.robot.sensorPitch + 2.4;
      expect(sight).toBeLessThan(outOfSight(DEMO_KIT));
      const near = dark.filter(({ item, points }) =>
        item.kind === 'path' && item.stroke && item.stroke.width >= 4
          ? false
          : points.some((p) => pathFoot(line!.path, p).distance < sight),
      );
      expect(near.map(({ item }) => item)).toEqual([]);
    }
  });

  it('frames boxes for marks at true size, as pale as all that may cross a line, with their name out of sight', async () => {
    const box = { id: 'b', name: { en: 'Bracket' }, at: { x: 100, y: 40 }, w: 60, h: 130 };
    const boxed = { ...challenge, sheet: { ...challenge.sheet, boxes: [box] } };
    const sheet = { challenge: boxed, title, id: 'a'.repeat(64), drawing, emblem: 'bell' };
    const [page] = drivingPages(sheet, { paper: 'A4', lines: 'ink', marks: 'colour' }, await printTools());
    const all = placed(page!.items);
    const corner = (x: number, y: number) =>
      all.filter(({ points }) => points.some((p) => p.x === x && p.y === y));
    for (const [x, y] of [
      [100, 40],
      [160, 40],
      [160, 170],
      [100, 170],
    ] as const) {
      const looks = corner(x, y).map(({ item }) => item.kind === 'path' && item.stroke);
      // The dashed frame and the whole corner.
      expect(looks).toMatchObject([FAINT, FAINT]);
    }
    const name = all.find(({ item }) => item.kind === 'text' && item.text === 'Bracket')!;
    const near = name.points.filter((p) => pathFoot(line!.path, p).distance < outOfSight(DEMO_KIT));
    expect(near).toEqual([]);
  });

  it('draws what crosses a line so thin and pale that it reads less than the robot takes for line', () => {
    // A stroke under a Gaussian footprint of 0.8 mm, at its middle: width / (0.8 √2π) of its depth.
    const depth = (0.85 - returned(FAINT.color)) / (0.85 - 0.06);
    const reading = (FAINT.width / (0.8 * Math.sqrt(2 * Math.PI))) * depth;
    expect(reading).toBeLessThan(0.08);
  });
});
