import express, { type RequestHandler, Router } from 'express';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { checkForm, OpenForm } from '../../shared/wire/schemas.ts';
import { carried, type HttpParts, roomAsked } from './parts.ts';
import { refuse } from './refuse.ts';
import { resultsCsv } from './results.ts';
import { LARGEST_ROOM_FILE, readRoomFile, writeRoomFile } from './room-file.ts';

/** Only for the owner's browser; others get a refusal. */
const ownerOnly =
  (parts: HttpParts): RequestHandler =>
  (request, response, next) => {
    if (parts.isOwner(carried(request).ownerKey)) next();
    else refuse(response, { code: 'no-seat' });
  };

/** Opening, listing and keeping rooms. */
export function roomsApi(parts: HttpParts): Router {
  const router = Router();
  const { rooms, rates } = parts;
  const owner = ownerOnly(parts);

  router.post(ROUTES.openRoom, owner, async (request, response) => {
    const form = checkForm(OpenForm, request.body);
    if (!form.ok) return refuse(response, form.refusal);
    if (!(await rates.allows('openRoom', 'owner'))) return refuse(response, { code: 'too-fast' });
    const opened = await rooms.open(form.value.chargerWatched);
    if (!opened.ok) return refuse(response, opened.refusal);
    response.status(201).json({ room: opened.room, word: opened.word });
  });

  router.get(ROUTES.rooms, owner, async (_, response) => {
    response.json(await rooms.list());
  });

  router.post(
    ROUTES.restoreRoom,
    owner,
    express.json({ limit: LARGEST_ROOM_FILE }),
    async (request, response) => {
      const beginning = readRoomFile(request.body);
      if (!beginning.ok) return refuse(response, beginning.refusal);
      const opened = await rooms.begin(beginning.value);
      if (!opened.ok) return refuse(response, opened.refusal);
      response.status(201).json({ room: opened.room, word: opened.word });
    },
  );

  router.get(ROUTES.roomFile, owner, async (request, response) => {
    const open = await roomAsked(rooms, request);
    if (!open) return refuse(response, { code: 'unknown-room' });
    const file = writeRoomFile(open.room, await rooms.documents(open.room));
    response.attachment(`harbour-lines-${open.room.state.word}.json`).type('json').send(file);
  });

  router.get(ROUTES.resultsCsv, owner, async (request, response) => {
    const open = await roomAsked(rooms, request);
    if (!open) return refuse(response, { code: 'unknown-room' });
    const name = `harbour-lines-${open.room.state.word}.csv`;
    response.attachment(name).type('text/csv; charset=utf-8').send(resultsCsv(open.room.state));
  });
  return router;
}
