import { Router } from 'express';
import type { ErasedRoom } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { checkForm, RoomForm } from '../../shared/wire/schemas.ts';
import { forDesk, forOpener, managedRoom } from './desks.ts';
import type { HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

/** Erasing a room for good, taking that back, and saying what was erased. */
export function erasingApi(parts: HttpParts): Router {
  const router = Router();
  const { accesses, erasing } = parts;

  router.post(
    ROUTES.eraseRoom,
    forOpener(parts, async (request, response, access) => {
      const form = checkForm(RoomForm, request.body);
      if (!form.ok) return refuse(response, form.refusal);
      const open = await managedRoom(parts, access, form.value.room);
      if (!open) return refuse(response, { code: 'unknown-room' });
      const { id, word, openedAt } = open.room.state;
      const done = await erasing.erase({ id, word, openedAt }, 'desk');
      if (done === 'full') return refuse(response, { code: 'store-full' });
      response.status(204).end();
    }),
  );

  router.post(
    ROUTES.keepRoom,
    forOpener(parts, async (request, response, access) => {
      const form = checkForm(RoomForm, request.body);
      if (!form.ok) return refuse(response, form.refusal);
      const { room } = form.value;
      const kept = (await accesses.manages(access, room)) && (await erasing.keep(room));
      if (!kept) return refuse(response, { code: 'unknown-room' });
      response.status(204).end();
    }),
  );

  router.get(
    ROUTES.erasedRooms,
    forDesk(parts, async (_, response, access) => {
      const own = await accesses.rooms(access);
      const erased = (await erasing.list()).filter(({ room }) => own === null || own.includes(room));
      const told: ErasedRoom[] = erased.map(({ room, word, openedAt, at, why }) => ({
        room,
        word,
        openedAt,
        at,
        why,
      }));
      response.json(told);
    }),
  );
  return router;
}
