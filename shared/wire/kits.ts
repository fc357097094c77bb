import * as z from 'zod/mini';
import { Kit } from '../documents/kit.ts';
import { LIMITS } from './protocol.ts';

/** Kits of one's own: kept for a desk over all of its rooms, and carried from one machine to another as files. */

/**
 * A kit with what it was before, the newest first, for going back. Rooms keep the versions that they have
 * used anyway, as documents.
 */
export const OwnKit = z.strictObject({
  kit: Kit,
  earlier: z
    .array(z.strictObject({ savedAt: z.int().check(z.gte(0)), kit: Kit }))
    .check(z.maxLength(LIMITS.earlierKits)),
});
export type OwnKit = z.output<typeof OwnKit>;

/** A kit as a file of its own. */
export const KIT_FILE = { format: 'harbour-lines-kit', version: 1 } as const;
export const KitFile = z.strictObject({
  format: z.literal(KIT_FILE.format),
  version: z.literal(KIT_FILE.version),
  kit: Kit,
});
