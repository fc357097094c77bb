import { describe, expect, it } from 'vitest';
import { blankChallenge } from '../../../../../client/desk/builder/blank.ts';
import {
  type Handle,
  handlesOf,
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
    for (const kind of ['finish', 'gate', 'gate', 'area', 'area', 'keep-out'] as const)
      sheet = withNewPlace(sheet, kind, PLACE_TEXTS).sheet;
    expect(placesOf(sheet).map(({ kind }) => kind)).toEqual([
      'start',
      'finish',
      'gate',
      'gate',
      'area',
      'area',
      'keep-out',
    ]);
    expect(new Set(sheet.gates.map(({ id }) => id)).size).toBe(2);
    expect(new Set(sheet.areas.map(({ name }) => name.en)).size).toBe(2);
    const middles = handlesOf(sheet).filter(({ part }) => part === 'all');
    expect(new Set(middles.map(({ at }) => `${at.x} ${at.y}`)).size).toBe(7);
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
