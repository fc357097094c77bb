import type { Challenge } from '../documents/challenge.ts';
import type { Design, Drawing } from '../documents/design.ts';
import { type World, worldOf } from '../run/world.ts';
import { canonicalDrawing } from '../track/canonical.ts';
import { buildTrack } from '../track/graph.ts';
import { layOut } from '../track/layout.ts';
import type { Track } from '../track/track.ts';

/** A design on its sheet, ready to be driven and checked. */
export interface Scene {
  /** The canonical form, which is what is driven. */
  readonly drawing: Drawing;
  readonly track: Track;
  readonly world: World;
}

export type SceneMaker = (challenge: Challenge, design: Design) => Scene;

/**
 * Sets a scene. From an earlier one of the same sheet and kit it takes what did not change: paths of lines,
 * where they meet, and tiles of ink. What comes out is the same, bit for bit, whatever was before.
 */
export function sceneOf({ sheet, kit }: Challenge, design: Design, earlier?: Scene): Scene {
  const before = earlier?.world.sheet === sheet && earlier.world.kit === kit ? earlier : undefined;
  const drawing = canonicalDrawing(design.drawing, sheet.given);
  const layout = layOut(sheet, drawing, before?.world.layout);
  const track = buildTrack(layout, kit, before?.track.pairs);
  const world = worldOf(layout, sheet, kit, { field: before?.world.field, pairs: track.pairs });
  return { drawing, track, world };
}

/** Sets one scene after another, each from the one before. For one caller, who drops it when done. */
export function scenesInTurn(): SceneMaker {
  let last: Scene | undefined;
  return (challenge, design) => {
    last = sceneOf(challenge, design, last);
    return last;
  };
}
