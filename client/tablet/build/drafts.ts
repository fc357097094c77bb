import { createStore, get, set, type UseStore } from 'idb-keyval';
import * as z from 'zod/mini';
import { VARIANTS, type Variant } from '../../../shared/documents/challenge.ts';
import { Design } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import type { RoomId, TeamId } from '../../../shared/room/state.ts';

/** Which drawing a draft is: one team's of one round of one room. */
export interface DraftPlace {
  readonly room: RoomId;
  readonly team: TeamId;
  readonly round: number;
  /** How often the seat had moved: what a tablet kept before another one went on is old. */
  readonly moves: number;
  /** Drawn in the gentler form: that is another drawing, and the team's own waits until it is taken up again. */
  readonly gentler?: boolean;
}

export const keyOf = ({ room, team, round, moves, gentler }: DraftPlace): string =>
  `${room} ${team} ${round} ${moves}${gentler ? ' gentler' : ''}`;

let opened: UseStore | null = null;
const shelf = (): UseStore => {
  opened ??= createStore('harbour-lines', 'drafts');
  return opened;
};

/** What a browser may keep for a team, by the form of it. */
type Form<T> = z.ZodMiniType<T, unknown>;

/** A drawing or answers from the file form; null where it is none. */
export function readAs<T>(form: Form<T>, raw: unknown): T | null {
  const read = parseDocument(form, raw);
  return read.ok ? read.value : null;
}

/** What this browser kept in that form, or null. A browser without storage has none and still works. */
export async function keptDraft<T>(form: Form<T>, place: DraftPlace): Promise<T | null> {
  try {
    return readAs(form, await get<unknown>(keyOf(place), shelf()));
  } catch {
    return null;
  }
}

/** Keeps a drawing or answers in this browser. Resolves to whether it could. */
export async function keepDraft<T>(form: Form<T>, place: DraftPlace, value: T): Promise<boolean> {
  try {
    await set(keyOf(place), writeDocument(form, value), shelf());
    return true;
  } catch {
    return false;
  }
}

/** A drawing with the sheet that it is on. */
const OnSheet = z.strictObject({ variant: z.nullable(z.enum(VARIANTS)), design: Design });
export type OnSheet = z.output<typeof OnSheet>;

export const keepDrawing = (place: DraftPlace, drawing: OnSheet): Promise<boolean> =>
  keepDraft(OnSheet, place, drawing);

/** What this browser kept of a drawing; an older page did not say on which sheet: the one that it has `now`. */
export async function keptDrawing(place: DraftPlace, now: Variant | null): Promise<OnSheet | null> {
  const kept = await keptDraft(OnSheet, place);
  if (kept) return kept;
  const design = await keptDraft(Design, place);
  return design && { variant: now, design };
}
