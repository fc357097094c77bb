import { nanoid } from 'nanoid';
import { useCallback, useEffect, useState } from 'react';
import * as z from 'zod/mini';
import { Kit } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import type { RoomId } from '../../../shared/room/state.ts';
import type { Shelved } from '../../../shared/wire/desks.ts';
import { OwnKit } from '../../../shared/wire/kits.ts';
import { LIMITS, type WireRefusal } from '../../../shared/wire/protocol.ts';
import { ROUTES } from '../../../shared/wire/routes.ts';
import { getJson, type HttpAnswer, postJson } from '../../parts/http.ts';
import { keepText, keptText } from '../../parts/kept-text.ts';
import { deskAccess, eraseShelved, giveBackShelved } from '../session.ts';

/** Kits of one's own: those that the server keeps for this desk, and one that is being changed here. */

export interface KitOnShelf extends OwnKit {
  readonly id: string;
  readonly savedAt: number;
}

/** A kit that is being changed, under the id by which the shelf has it or will have it. */
export interface Begun {
  readonly id: string;
  readonly kit: Kit;
}

export const fileForm = (kit: Kit): unknown => writeDocument(Kit, kit);

/** Whether two kits are the same document but for the name of the shelf's place. */
export const isSameKit = (a: Kit, b: Kit): boolean =>
  JSON.stringify(fileForm({ ...a, id: '-' })) === JSON.stringify(fileForm({ ...b, id: '-' }));

/** A kit that the shelf does not have yet. */
export const newKit = (kit: Kit): Begun => ({ id: nanoid(12), kit });

export interface OwnKits {
  /** null until they have come. */
  readonly list: readonly KitOnShelf[] | null;
  /** Whether this desk may keep any: not with a link to one room. */
  readonly mayKeep: boolean;
  readonly refusal: WireRefusal | null;
  /** Keeps a kit under its id, with what it was before. Resolves to whether that was done. */
  readonly keep: (id: string, kit: Kit) => Promise<boolean>;
  readonly erase: (id: string) => Promise<boolean>;
  readonly giveBack: (id: string) => Promise<boolean>;
}

function onShelf({ id, savedAt, body }: Shelved): KitOnShelf[] {
  const own = parseDocument(OwnKit, body);
  return own.ok ? [{ id, savedAt, ...own.value }] : [];
}

export function useOwnKits(room: RoomId | null): OwnKits {
  const [list, setList] = useState<readonly KitOnShelf[] | null>(null);
  const [mayKeep, setMayKeep] = useState(true);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const load = useCallback(async () => {
    const of = room === null ? '' : `?room=${encodeURIComponent(room)}`;
    const answer = await getJson<readonly Shelved[]>(ROUTES.kits + of);
    if (answer.ok) setList(answer.value.flatMap(onShelf));
    else setRefusal(answer.refusal);
  }, [room]);
  useEffect(() => {
    void load();
    void deskAccess().then((access) => access.ok && setMayKeep(access.value.kind !== 'room'));
  }, [load]);
  const done = useCallback(
    async (asked: Promise<HttpAnswer<null>>): Promise<boolean> => {
      const answer = await asked;
      setRefusal(answer.ok ? null : answer.refusal);
      if (answer.ok) await load();
      return answer.ok;
    },
    [load],
  );
  const keep = (id: string, kit: Kit): Promise<boolean> => {
    const own = { ...kit, id };
    const before = list?.find((one) => one.id === id);
    const changed = before !== undefined && !isSameKit(before.kit, own);
    const past = changed ? [{ savedAt: before.savedAt, kit: before.kit }] : [];
    const earlier = [...past, ...(before?.earlier ?? [])].slice(0, LIMITS.earlierKits);
    return done(postJson(ROUTES.saveKit, { id, body: writeDocument(OwnKit, { kit: own, earlier }) }));
  };
  return {
    list,
    mayKeep,
    refusal,
    keep,
    erase: (id) => done(eraseShelved('kit', id)),
    giveBack: (id) => done(giveBackShelved('kit', id)),
  };
}

const KEPT = 'harbour-lines.desk.kits';
const Unsaved = z.array(z.object({ id: z.string(), kit: Kit }));

/** Kits that were changed in this browser and not saved since. */
export function unsavedKits(): readonly Begun[] {
  try {
    const read = parseDocument(Unsaved, JSON.parse(keptText(KEPT) ?? ''));
    return read.ok ? read.value : [];
  } catch {
    return [];
  }
}

/** Keeps what is not saved of a kit over a reload; null: nothing any more. */
export function keepUnsaved(id: string, kit: Kit | null): void {
  const others = unsavedKits().filter((one) => one.id !== id);
  keepText(KEPT, JSON.stringify(writeDocument(Unsaved, [...others, ...(kit === null ? [] : [{ id, kit }])])));
}
