import express, { type Response, Router } from 'express';
import { evidenceOf } from '../../shared/evidence/evidence.ts';
import type { RoomInList } from '../../shared/wire/desks.ts';
import { Offset } from '../../shared/wire/print.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { checkForm, OpenForm } from '../../shared/wire/schemas.ts';
import { lessonRecord } from '../rooms/lesson-record.ts';
import { type Beginning, newRoomId } from '../rooms/rooms.ts';
import { type Access, deskNamed, mayOpen } from '../seats/access.ts';
import { forDesk, forOpener, managedRoom, ownRoom } from './desks.ts';
import { erasingApi } from './erasing-api.ts';
import { evidenceCsv } from './evidence.ts';
import { asked, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';
import { resultsCsv } from './results.ts';
import { LARGEST_ROOM_FILE, readRoomFile, writeRoomFile } from './room-file.ts';

/** Opening, listing, keeping and erasing rooms. */
export function roomsApi(parts: HttpParts): Router {
  const router = Router();
  const { rooms, rates, accesses } = parts;

  /** Opens a room that is its desk's from the beginning: whose it is is written first. */
  const begin = async (response: Response, access: Access, beginning: Beginning) => {
    const id = newRoomId();
    const given = access.kind === 'link' ? await accesses.links.giveRoom(id, access.link.id) : 'done';
    if (given === 'full') return refuse(response, { code: 'store-full' });
    const opened = await rooms.begin(id, beginning);
    if (!opened.ok) {
      await accesses.links.forget(id);
      return refuse(response, opened.refusal);
    }
    response.status(201).json({ room: opened.room, word: opened.word });
  };

  router.post(
    ROUTES.openRoom,
    forOpener(parts, async (request, response, access) => {
      const form = checkForm(OpenForm, request.body);
      if (!form.ok) return refuse(response, form.refusal);
      if (!(await rates.allows('openRoom', deskNamed(access)))) return refuse(response, { code: 'too-fast' });
      const { chargerWatched, continues } = form.value;
      const before = continues === undefined ? undefined : await managedRoom(parts, access, continues);
      if (continues !== undefined && !before) return refuse(response, { code: 'unknown-room' });
      await begin(response, access, await rooms.empty(chargerWatched, before?.room.state));
    }),
  );

  router.get(
    ROUTES.rooms,
    forDesk(parts, async (_, response, access) => {
      response.json(await roomList(parts, access));
    }),
  );

  router.post(
    ROUTES.restoreRoom,
    forOpener(
      parts,
      async (request, response, access) => {
        const beginning = readRoomFile(request.body);
        if (!beginning.ok) return refuse(response, beginning.refusal);
        await begin(response, access, beginning.value);
      },
      express.json({ limit: LARGEST_ROOM_FILE }),
    ),
  );

  router.get(
    ROUTES.roomFile,
    forDesk(parts, async (request, response, access) => {
      const open = await ownRoom(parts, request, access);
      if (!open) return refuse(response, { code: 'unknown-room' });
      const file = writeRoomFile(open.room, await rooms.documents(open.room));
      response.attachment(`harbour-lines-${open.room.state.word}.json`).type('json').send(file);
    }),
  );

  router.get(
    ROUTES.resultsCsv,
    forDesk(parts, async (request, response, access) => {
      const open = await ownRoom(parts, request, access);
      if (!open) return refuse(response, { code: 'unknown-room' });
      const { state } = open.room;
      const record = await lessonRecord(state, await rooms.documents(open.room));
      const name = `harbour-lines-${state.word}.csv`;
      response.attachment(name).type('text/csv; charset=utf-8').send(resultsCsv(record, parts.now()));
    }),
  );

  router.get(
    ROUTES.evidenceCsv,
    forDesk(parts, async (request, response, access) => {
      const open = await ownRoom(parts, request, access);
      if (!open) return refuse(response, { code: 'unknown-room' });
      const offset = checkForm(Offset, asked(request, 'offset'));
      if (!offset.ok) return refuse(response, offset.refusal);
      const { state } = open.room;
      const evidence = evidenceOf(await lessonRecord(state, await rooms.documents(open.room)));
      const name = `harbour-lines-${state.word}-evidence.csv`;
      response
        .attachment(name)
        .type('text/csv; charset=utf-8')
        .send(evidenceCsv(state, evidence, offset.value));
    }),
  );
  return router.use(erasingApi(parts));
}

async function roomList({ rooms, accesses, erasing }: HttpParts, access: Access): Promise<RoomInList[]> {
  const own = await accesses.rooms(access);
  const [all, used] = await Promise.all([rooms.records(), rooms.lastUsed(own)]);
  const managed = mayOpen(access);
  return all
    .filter(({ id }) => own === null || own.includes(id))
    .map(({ id, word, openedAt }) => {
      const erasedOn = erasing.dueOn(used.get(id) ?? openedAt);
      return { room: id, word, openedAt, erasedOn, managed };
    });
}
