import { describe, expect, it } from 'vitest';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { OpenJunction } from '../../../shared/documents/outlook.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { oddsFrom, oddsOf } from '../../../shared/odds/odds.ts';
import { runChain } from '../../../shared/odds/run-chain.ts';
import { idealRuns } from '../../../shared/run/ideal-runs.ts';
import { SAME_LIGHT, worldOf } from '../../../shared/run/world.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { Pen } from '../../sweeps/pen.ts';
import {
  chainOn,
  endingsOf,
  FORK,
  fromStart,
  LIMIT,
  lighthouseAt,
  oddsOn,
  RING,
  type Scene,
  SHEET,
  STREET,
  WHIRL,
  WHIRL_FORKS,
} from './tracks.ts';

const worldIn = ({ sheet, drawing, kit = DEMO_KIT }: Scene) => worldOf(layOut(sheet, drawing), sheet, kit);

const driven = (scene: Scene) =>
  oddsFrom(runChain(worldIn(scene), 'start', SAME_LIGHT)!, 'runs', 'start', LIMIT);

function oddsBy(scene: Scene, limit = LIMIT) {
  const { sheet, drawing, kit = DEMO_KIT } = scene;
  const runs = idealRuns(worldIn(scene), { starts: ['start'], limit }).traces;
  const question = { start: 'start', limit, ambient: SAME_LIGHT, runs } as const;
  return oddsOf(worldIn(scene), buildTrack(layOut(sheet, drawing), kit), question)!;
}

/** mm between where the track and the run say that something is. */
const NEAR = 15;
const apart = (a: Placed, b: Placed) => Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y);
type Placed = { readonly at: PaperPoint };
const facing = (a: OpenJunction, b: OpenJunction) => a.heading.x * b.heading.x + a.heading.y * b.heading.y;

describe('runChain', () => {
  it.each([
    ['fork', FORK],
    ['ring', RING],
    ['street', STREET],
    ['whirl', WHIRL],
  ])('drives every stretch of the %s once and says what the track says', (_, scene) => {
    const [said, found] = [oddsOn(scene), driven(scene)];
    expect(found.finish).toBeCloseTo(said.finish, 12);
    expect(found.endless).toBe(0);
    expect(Math.abs(found.inTime.meanTime! - said.inTime.meanTime!)).toBeLessThan(0.3);
    expect(found.endings).toHaveLength(said.endings.length);
    for (const end of said.endings) {
      const same = found.endings.filter((one) => one.ending === end.ending && apart(one, end) < NEAR);
      expect(same).toMatchObject([{ probability: expect.closeTo(end.probability, 12) }]);
    }
    expect(found.open).toHaveLength(said.open.length);
    for (const junction of said.open) {
      const same = found.open.filter((one) => apart(one, junction) < NEAR && facing(one, junction) > 0.95);
      const arms = junction.arms.map((arm) => ({ ...arm, finish: expect.closeTo(arm.finish, 12) }));
      expect(same).toMatchObject([{ met: expect.closeTo(junction.met, 12), arms }]);
    }
  });

  it('finds a ring, and turning to and fro, to be endless', () => {
    const start = { ...SHEET.start, at: { x: 140, y: 150 }, heading: -Math.PI / 2 };
    const ring = new Pen().to(140, 150, -90).arc(60, 180).arc(60, 180).drawing();
    expect(driven({ sheet: { ...SHEET, start }, drawing: ring }).endless).toBe(1);
    const kit: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, looseEnd: 'turn-back' } };
    expect(driven({ sheet: SHEET, drawing: fromStart().straight(40).drawing(), kit }).endless).toBe(1);
  });

  it('tells the same place at another pace from one where the robot has been', () => {
    expect(runChain(worldIn(WHIRL), 'start', SAME_LIGHT)!.forks).toHaveLength(WHIRL_FORKS);
    expect(chainOn(WHIRL).forks).toHaveLength(WHIRL_FORKS);
  });

  it('starts nowhere where there is no line', () => {
    const drawing = new Pen().to(30, 40).straight(200).drawing();
    expect(endingsOf(driven({ sheet: SHEET, drawing }))).toEqual(['never-started 1.0000']);
  });
});

describe('oddsOf', () => {
  it('trusts the track where undisturbed runs do the same', () => {
    for (const scene of [FORK, RING, STREET]) expect(oddsBy(scene).basis).toBe('track');
  });

  it('drives where they do otherwise: a corner of 25 degrees loses robots', () => {
    // By the model's description between a quarter and a half come round corners of 20 to 30 degrees.
    const drawing = fromStart().straight(150).turn(155).straight(110).drawing();
    const odds = oddsBy({ sheet: lighthouseAt(84, 104), drawing });
    expect(odds.basis).toBe('runs');
    expect(odds.endings.some(({ ending }) => ending === 'lost')).toBe(true);
    const sum = odds.endings.reduce((total, { probability }) => total + probability, odds.endless);
    expect(sum).toBeCloseTo(1, 12);
  });
});
