import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../shared/documents/design.ts';
import { type Kit, PACES } from '../../shared/documents/kit.ts';
import { agrees } from '../../shared/odds/agreement.ts';
import { roadMap } from '../../shared/odds/roads.ts';
import { trackChain } from '../../shared/odds/track-chain.ts';
import { idealRuns } from '../../shared/run/ideal-runs.ts';
import { worldOf } from '../../shared/run/world.ts';
import { buildTrack } from '../../shared/track/graph.ts';
import { layOut } from '../../shared/track/layout.ts';
import { KITS } from '../kits.ts';
import '../seed.ts';
import { Pen } from '../sweeps/pen.ts';
import { lighthouseAt, type Scene } from '../unit/odds/tracks.ts';

const LIMIT = 30;

/** Both kits, once more with robots that turn back at loose ends, from every pace. */
const aKit = fc
  .record({
    kit: fc.constantFrom(...KITS),
    startPace: fc.constantFrom(...PACES),
    looseEnd: fc.constantFrom('stop' as const, 'turn-back' as const),
  })
  .map(({ kit, startPace, looseEnd }): Kit => ({ ...kit, robot: { ...kit.robot, startPace, looseEnd } }));

const mm = (min: number, max: number) => fc.integer({ min, max });

/** A line from the boathouse at x = 40, crossed or met by another one, whose arms may end anywhere. */
const crossings = fc
  .record({ x: mm(110, 180), angle: mm(84, 96), up: mm(35, 80), down: mm(35, 80), on: mm(45, 110) })
  .chain((size) => fc.record({ size: fc.constant(size), tee: fc.boolean(), finish: mm(-6, 6) }))
  .map(({ size: { x, angle, up, down, on }, tee, finish }): Omit<Scene, 'kit'> => {
    const pen = new Pen().to(x, 150, -angle);
    const top = pen.ahead(up);
    const foot = tee ? pen.at : pen.ahead(-down);
    const berth = pen.ahead(up + finish);
    pen.lines.length = 0;
    pen.to(30, 150).straight(x - 30 + on);
    pen.to(foot.x, foot.y, -angle).straight(Math.hypot(top.x - foot.x, top.y - foot.y));
    return { sheet: lighthouseAt(berth.x, berth.y), drawing: pen.drawing() };
  });

/** A line that turns corners and bends, and ends a little before the lighthouse's middle or behind it. */
const corners = fc
  .record({ first: mm(60, 100), turn: fc.constantFrom(-100, -90, -45, 45, 90, 110), radius: mm(20, 45) })
  .chain((size) => fc.record({ size: fc.constant(size), finish: mm(-6, 6) }))
  .map(({ size: { first, turn, radius }, finish }): Omit<Scene, 'kit'> => {
    const pen = new Pen().to(30, 150).straight(first).turn(turn).straight(40).arc(radius, -turn).straight(50);
    const { x, y } = pen.ahead(finish);
    return { sheet: lighthouseAt(x, y), drawing: pen.drawing() };
  });

/** A ring with a way in, and a way out that may be anywhere on its far half. */
const rings = fc
  .record({ radius: mm(50, 60), out: fc.constantFrom(90, 180) })
  .map(({ radius, out }): Omit<Scene, 'kit'> => {
    const pen = new Pen().to(30, 150).straight(90).to(120, 150, -90).arc(radius, out);
    const { x, y } = pen.at;
    pen
      .arc(radius, 360 - out)
      .to(x, y, out - 180)
      .straight(50);
    const berth = pen.ahead(-3);
    return { sheet: lighthouseAt(berth.x, berth.y), drawing: pen.drawing() };
  });

const inWidthOf = ({ rules }: Kit, drawing: Drawing): Drawing => ({
  ...drawing,
  lines: drawing.lines.map((line) => ({ ...line, width: rules.lineWidth.nominal })),
});

/** Whether the chain of the graph is there and foretells every undisturbed run. */
function foretells({ sheet, drawing }: Omit<Scene, 'kit'>, kit: Kit): boolean {
  const layout = layOut(sheet, inWidthOf(kit, drawing));
  const track = buildTrack(layout, kit);
  const chain = trackChain(roadMap(track, sheet, kit), 'start');
  const { traces } = idealRuns(worldOf(layout, sheet, kit), { starts: ['start'], limit: LIMIT });
  return chain !== undefined && agrees(chain, track, traces, LIMIT);
}

describe('the chain of the graph foretells way, ending and time of undisturbed runs', () => {
  it.each([
    ['over a crossing or a branch with loose ends', crossings],
    ['round corners and bends to a loose end', corners],
    ['round a ring', rings],
  ])('%s', (_, scenes) => {
    fc.assert(
      fc.property(scenes, aKit, (scene, kit) => {
        expect(foretells(scene, kit)).toBe(true);
      }),
      { numRuns: 20 },
    );
  });
});
