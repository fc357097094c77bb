import { describe, expect, it } from 'vitest';
import type { Design } from '../../../shared/documents/design.ts';
import { TRACE_RATE } from '../../../shared/documents/trace.ts';
import { type FleetRobot, fleetOf } from '../../../shared/judge/fleet.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { poseAt } from '../../../shared/picture/replay.ts';
import { challengeOf } from '../../disturbed.ts';

const challenge = { ...challengeOf('one-fast-stretch'), weather: 'stormy' as const };
const { model } = challenge;
const pieces = [...fleetOf(challenge, model!, 'stormy')];
const robots: FleetRobot[] = pieces.flatMap((piece) => ('robot' in piece ? [piece.robot] : []));

describe('fleetOf', () => {
  it('drives twenty robots and then says where they left', () => {
    expect(pieces).toHaveLength(21);
    expect(robots.map(({ trace }) => trace.seed)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
    expect('frayed' in pieces.at(-1)!).toBe(true);
  });

  it('counts as the verdict of an entry in the same weather does', () => {
    const { steadiness } = judge(challenge, model!, 'entry').verdict;
    const strays = robots.flatMap(({ stray }) => stray ?? []);
    expect(strays).toEqual(steadiness!.strays);
    const last = pieces.at(-1)!;
    if ('frayed' in last) expect([last.frayed.same, last.frayed.of]).toEqual([steadiness!.same, 20]);
  });

  it('says when a robot is where it strays, or as near as it comes to a mark that it never meets', () => {
    const strayed = robots.filter(({ stray }) => stray);
    const away = ({ trace, stray }: FleetRobot, t: number) => {
      const { at } = poseAt(trace, t);
      return Math.hypot(at.x - stray!.at.x, at.y - stray!.at.y);
    };
    for (const robot of strayed) {
      const all = robot.trace.samples.x.map((_, i) => away(robot, i / TRACE_RATE));
      expect(away(robot, robot.straysAt!)).toBeLessThanOrEqual(Math.min(...all) + 3);
    }
    // The bar is 11 mm ahead of the axle.
    const near = strayed.filter((robot) => away(robot, robot.straysAt!) < 15);
    expect(near.length).toBeGreaterThan(strayed.length / 2);
    expect(robots.every(({ stray, straysAt }) => (stray === null) === (straysAt === null))).toBe(true);
  });

  it('drives nothing where the design is refused', () => {
    const line = model!.drawing.lines[0]!;
    const crowded: Design = {
      ...model!,
      drawing: { lines: Array.from({ length: 200 }, (_, i) => ({ ...line, id: `l${i}` })), marks: [] },
    };
    expect([...fleetOf(challenge, crowded, 'calm')]).toEqual([]);
  });
});
