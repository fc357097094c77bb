import { useCallback, useEffect, useState } from 'react';
import * as z from 'zod/mini';
import type { Locale } from '../../../shared/documents/values.ts';
import type { LinkInList, RoomInList, Shelved } from '../../../shared/wire/desks.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import type { KeptHere } from '../../../shared/wording/en/kept.ts';
import { keptHere } from '../../parts/browser-storage.ts';
import { useLocale } from '../../parts/use-words.ts';
import { listLinks, listRooms, listShelf, SHELVES, type ShelfName } from '../session.ts';

/** Something that this desk has made. */
export interface Made {
  readonly shelf: ShelfName;
  readonly id: string;
  readonly name: string;
  readonly savedAt: number;
}

/** Everything that this desk can name. */
export interface Kept {
  readonly rooms: readonly RoomInList[];
  /** Not those that were revoked. */
  readonly links: readonly LinkInList[];
  /** Challenges and kits of this desk. */
  readonly made: readonly Made[];
  readonly here: readonly KeptHere[];
}

export interface KeptList {
  /** null until it has been read. */
  readonly kept: Kept | null;
  readonly refusal: WireRefusal | null;
  readonly load: () => Promise<void>;
}

/** What a challenge or kit is called; its id where it has no name yet. */
function nameOf(shelf: ShelfName, { id, body }: Shelved, locale: Locale): string {
  const read = Named.safeParse(body);
  if (!read.success) return id;
  const { kit, title } = read.data;
  // A challenge has a kit too, which is not what it is called by.
  if (shelf === 'kit') return kit?.name ?? id;
  return title?.[locale] ?? Object.values(title ?? {})[0] ?? id;
}
const Named = z.object({
  kit: z.optional(z.object({ name: z.string() })),
  title: z.optional(z.record(z.string(), z.string())),
});

async function listMade(locale: Locale): Promise<Made[]> {
  const shelves = Object.keys(SHELVES) as ShelfName[];
  const lists = await Promise.all(shelves.map(listShelf));
  return lists.flatMap((list, i) =>
    list.ok
      ? list.value.map((one) => ({
          shelf: shelves[i]!,
          id: one.id,
          name: nameOf(shelves[i]!, one, locale),
          savedAt: one.savedAt,
        }))
      : [],
  );
}

export function useKept(): KeptList {
  const locale = useLocale();
  const [kept, setKept] = useState<Kept | null>(null);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);
  const load = useCallback(async () => {
    const [rooms, links, here, made] = await Promise.all([
      listRooms(),
      listLinks(),
      keptHere(),
      listMade(locale),
    ]);
    if (!rooms.ok) return setRefusal(rooms.refusal);
    setRefusal(null);
    // A desk of one room has no links to give.
    const live = links.ok ? links.value.filter(({ revokedAt }) => revokedAt === null) : [];
    setKept({ rooms: rooms.value, links: live, made, here });
  }, [locale]);
  useEffect(() => void load(), [load]);
  return { kept, refusal, load };
}
