import { describe, expect, it } from 'vitest';
import { blankChallenge } from '../../../../../client/desk/builder/blank.ts';
import {
  type Handle,
  handlesOf,
  isFull,
  moved,
  type PlaceKind,
  placesOf,
  withMoreCorners,
  withNewPlace,
  withoutPlace,
} from '../../../../../client/desk/builder/places.ts';
import type { Sheet } from '../../../../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../../../../shared/kit/demo-kit.ts';
import { PLACE_TEXTS } from '../../../../../shared/wording/fresh.ts';

const { sheet: blank } = blankChallenge('own-1', DEMO_KIT);
const withOne = (kind: PlaceKind): Sheet => withNewPlace(blank, kind, PLACE_TEXTS).sheet;
const handle = (sheet: Sheet, kind: PlaceKind, part: Handle['part'], corner = 0): Handle =>
  handlesOf(sheet).find((each) => each.place.kind === kind && each.part === part && each.corner === corner)!;

describe('places of a sheet', () => {
  it('are added in free spots with ids and names of their own, and taken away', () => {
    let sheet = blank;
    for (const kind of ['finish', 'gate', 'gate', 'area', 'area', 'keep-out', 'box'] as const)
      sheet = withNewPlace(sheet, kind, PLACE_TEXTS).sheet;
    expect(placesOf(sheet).map(({ kind }) => kind)).toEqual([
      'start',
      'finish',
      'gate',
      'gate',
      'area',
      'area',
      'keep-out',
      'box',
    ]);
    expect(new Set(sheet.gates.map(({ id }) => id)).size).toBe(2);
    expect(new Set(sheet.areas.map(({ name }) => name.en)).size).toBe(2);
    const middles = handlesOf(sheet).filter(({ part }) => part === 'all');
    expect(new Set(middles.map(({ at }) => `${at.x} ${at.y}`)).size).toBe(8);
    for (const place of placesOf(sheet)) sheet = withoutPlace(sheet, place);
    // Robots have to set out from somewhere.
    expect(placesOf(sheet)).toEqual([{ kind: 'start', id: '' }]);
  });

  it('move as a whole, as far as the paper goes', () => {
    const sheet = withOne('area');
    const all = handle(sheet, 'area', 'all');
    const { polygon } = moved(sheet, all, { x: all.at.x + 10, y: all.at.y }).areas[0]!;
    expect(polygon.map(({ x }, i) => x - sheet.areas[0]!.polygon[i]!.x)).toEqual([10, 10, 10, 10]);
    const edge = moved(sheet, all, { x: -500, y: 5000 }).areas[0]!.polygon;
    expect([Math.min(...edge.map(({ x }) => x)), Math.max(...edge.map(({ y }) => y))]).toEqual([0, 210]);
  });

  it('move by a corner or an end alone', () => {
    const sheet = withOne('gate');
    const { gates } = moved(sheet, handle(sheet, 'gate', 'corner', 1), { x: 300, y: 12.345 });
    expect(gates[0]).toMatchObject({ a: sheet.gates[0]!.a, b: { x: 297, y: 12.35 } });
  });

  it('a box is pulled by a corner, and stays upright and no smaller than 12 mm', () => {
    const sheet = withOne('box');
    const [first] = sheet.boxes!;
    const { at, w, h } = first!;
    const pulled = (corner: number, to: { x: number; y: number }) =>
      moved(sheet, handle(sheet, 'box', 'corner', corner), to).boxes![0]!;
    expect(pulled(0, { x: at.x - 10, y: at.y - 5 })).toMatchObject({
      at: { x: at.x - 10, y: at.y - 5 },
      w: w + 10,
      h: h + 5,
    });
    expect(pulled(1, { x: at.x + w + 8, y: at.y + 6 })).toMatchObject({
      at: { x: at.x, y: at.y + 6 },
      w: w + 8,
      h: h - 6,
    });
    // Past the opposite corner.
    expect(pulled(2, { x: 0, y: 0 })).toMatchObject({ at, w: 12, h: 12 });
    expect(pulled(3, { x: 290, y: 0 })).toMatchObject({ at: { x: at.x + w - 12, y: at.y }, w: 12, h: 12 });
    const all = handle(sheet, 'box', 'all');
    expect(moved(sheet, all, { x: 0, y: all.at.y + 5 }).boxes![0]).toMatchObject({
      at: { x: 0, y: at.y + 5 },
      w,
      h,
    });
  });

  it('a box that a file has smaller than that keeps its size where it is pulled in, and stays on the sheet', () => {
    const small = { id: 's', name: { en: 'Marks' }, at: { x: 0, y: 0 }, w: 8, h: 6 };
    const sheet = { ...blank, boxes: [small] };
    const pulled = (corner: number, to: { x: number; y: number }) =>
      moved(sheet, handle(sheet, 'box', 'corner', corner), to).boxes;
    expect(pulled(0, { x: 5, y: 5 })).toEqual([small]);
    expect(pulled(2, { x: 0, y: 20 })).toEqual([{ ...small, h: 20 }]);
  });

  it('boxes are at most twelve, and a sheet whose last one is taken away says nothing of boxes', () => {
    let sheet = blank;
    for (let n = 1; n <= 12; n++) {
      expect(isFull(sheet, 'box')).toBe(false);
      sheet = withNewPlace(sheet, 'box', PLACE_TEXTS).sheet;
    }
    expect(isFull(sheet, 'box')).toBe(true);
    for (const { id } of sheet.boxes!) sheet = withoutPlace(sheet, { kind: 'box', id });
    expect(sheet).toEqual(blank);
    expect('boxes' in sheet).toBe(false);
  });

  it('turn a berth: eighths catch, unless that is switched off', () => {
    const { at } = blank.start;
    const turn = (x: number, y: number, free = false) => {
      const { heading } = moved(blank, handle(blank, 'start', 'heading'), { x, y }, free).start;
      return Math.round((heading * 18_000) / Math.PI) / 100;
    };
    expect([turn(at.x + 50, at.y + 2), turn(at.x + 50, at.y + 50), turn(at.x, at.y - 40)]).toEqual([
      0, 45, -90,
    ]);
    // arctan(2/50) is 2.29°.
    expect(turn(at.x + 50, at.y + 2, true)).toBe(2.29);
  });

  it('get one more corner in the middle of the longest side', () => {
    const polygon = [
      { x: 0, y: 0 },
      { x: 60, y: 0 },
      { x: 60, y: 20 },
    ];
    const area = { id: 'a', name: { en: 'Quay' }, polygon };
    // From (60, 20) back to (0, 0) is the longest.
    expect(withMoreCorners(area).polygon).toEqual([...polygon, { x: 30, y: 10 }]);
  });
});
