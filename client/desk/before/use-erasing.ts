import { useState } from 'react';
import { type LinkInList, type RoomInList, UNDO_MS } from '../../../shared/wire/desks.ts';
import type { WireRefusal } from '../../../shared/wire/protocol.ts';
import { eraseHereAt, eraseWhatIsDue, keepHere } from '../../parts/browser-storage.ts';
import type { HttpAnswer } from '../../parts/http.ts';
import { useDesk } from '../desk-store.ts';
import { eraseRoom, eraseShelved, giveBackLink, giveBackShelved, keepRoom, revokeLink } from '../session.ts';
import { useWholeWords } from '../whole-words.ts';
import type { Kept, Made } from './use-kept.ts';

type Rooms = readonly Pick<RoomInList, 'room' | 'word'>[];
type Links = readonly Pick<LinkInList, 'id' | 'word' | 'kind'>[];

export interface Erasing {
  readonly rooms: (rooms: Rooms) => Promise<void>;
  readonly links: (links: Links) => Promise<void>;
  readonly made: (made: readonly Made[]) => Promise<void>;
  readonly here: () => void;
  readonly all: (everything: Kept) => Promise<void>;
  /** Why the last act was refused, or a part of it. */
  readonly refusal: WireRefusal | null;
}

/** Marks this browser's storage, and erases it when nobody has taken that back. */
function eraseHere(): void {
  const at = Date.now() + UNDO_MS;
  eraseHereAt(at);
  setTimeout(async () => {
    // What this page still holds of it would be written again.
    if (await eraseWhatIsDue(Date.now())) location.reload();
  }, UNDO_MS);
}

/** Erasing with ten seconds in which it can be taken back; `load` reads anew what is left. */
export function useErasing(load: () => Promise<void>): Erasing {
  const { kept, desk } = useWholeWords();
  const offerUndo = useDesk((state) => state.offerUndo);
  const [refusal, setRefusal] = useState<WireRefusal | null>(null);

  /** Does all of it, and offers to undo what was done. */
  const act = async (
    said: string,
    acts: readonly (readonly [go: () => Promise<HttpAnswer<null>>, back: () => Promise<unknown>])[],
    here = false,
  ) => {
    setRefusal(null);
    const backs: (() => Promise<unknown>)[] = [];
    for (const [go, back] of acts) {
      const answer = await go();
      if (answer.ok) backs.push(back);
      else setRefusal(answer.refusal);
    }
    if (here) eraseHere();
    const undo = async () => {
      if (here) keepHere();
      for (const back of backs) await back();
      await load();
    };
    if (here || backs.length > 0) offerUndo({ said, back: () => void undo() });
    await load();
  };
  const ofRooms = (rooms: Rooms) =>
    rooms.map(({ room }) => [() => eraseRoom(room), () => keepRoom(room)] as const);
  const ofLinks = (links: Links) =>
    links.map(({ id }) => [() => revokeLink(id), () => giveBackLink(id)] as const);
  const ofMade = (made: readonly Made[]) =>
    made.map(({ shelf, id }) => [() => eraseShelved(shelf, id), () => giveBackShelved(shelf, id)] as const);
  return {
    rooms: (rooms) => act(desk.keeping.erasing(rooms[0]?.word ?? ''), ofRooms(rooms)),
    links: (links) => {
      const [one] = links;
      const said = one?.kind === 'desk' ? kept.undo.desk : kept.undo.link;
      return act(said(one?.word ?? ''), ofLinks(links));
    },
    here: () => void act(kept.undo.here, [], true),
    made: (made) => act(kept.undo.made(made[0]?.name ?? ''), ofMade(made)),
    // Links first: a room that is gone has none.
    all: ({ rooms, links, made }) => {
      const managed = rooms.filter((room) => room.managed);
      return act(kept.undo.all, [...ofLinks(links), ...ofMade(made), ...ofRooms(managed)], true);
    },
    refusal,
  };
}
