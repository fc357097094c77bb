import type { Kit, Robot } from '../documents/kit.ts';
import { checkKit } from './check-kit.ts';
import type { KitProblem } from './kit-problem.ts';

/**
 * A kit never changes: what was judged with it keeps it. A change makes another version, which is a
 * document of its own, and rooms use it from their next challenge on.
 */

/** The same kit with another profile of its robot, such as one fitted to the class's own robots. */
export const withProfile = (kit: Kit, profile: Robot): Kit => ({ ...kit, robot: profile });

/** Why a room can't play with a kit; none where it can. What a person is to weigh is no reason. */
export const hindrances = (kit: Kit): KitProblem[] =>
  checkKit(kit).filter(({ severity }) => severity === 'wrong');
