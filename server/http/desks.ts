import type { Request, RequestHandler, Response } from 'express';
import type { RoomId } from '../../shared/room/state.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import { type Access, mayOpen } from '../seats/access.ts';
import { ownNewest } from '../seats/room-named.ts';
import { asked, carried, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

/** Handlers that only a desk reaches: which desk it is, and which rooms are its own. */

export type DeskHandler = (request: Request, response: Response, access: Access) => Promise<void> | void;

/** Lets those desks on that `may`, then carries out `before`, then the handler; others get a refusal. */
const gated = (
  { accesses }: HttpParts,
  may: (access: Access) => boolean,
  handle: DeskHandler,
  before: readonly RequestHandler[],
): RequestHandler[] => [
  async (request, response, next) => {
    const access = await accesses.of(carried(request));
    response.locals.access = access;
    if (may(access)) next();
    else refuse(response, { code: access.kind === 'none' ? 'no-seat' : 'not-for-this-seat' });
  },
  ...before,
  (request, response) => handle(request, response, response.locals.access as Access),
];

/** For every desk. */
export const forDesk = (parts: HttpParts, handle: DeskHandler): RequestHandler[] =>
  gated(parts, (access) => access.kind !== 'none', handle, []);

/** For owner and desks that open rooms; `before` is for them alone too, such as reading a large body. */
export const forOpener = (parts: HttpParts, handle: DeskHandler, ...before: RequestHandler[]) =>
  gated(parts, mayOpen, handle, before);

/** A room of this desk by id or word; without either its newest. */
export async function ownRoom(
  parts: HttpParts,
  request: Request,
  access: Access,
): Promise<OpenRoom | undefined> {
  const { rooms, accesses } = parts;
  if (access.kind === 'none') return undefined;
  const room = asked(request, 'room');
  if (room === undefined) return ownNewest(parts, access);
  const open = (await rooms.byId(room)) ?? (await rooms.byWord(room));
  return open && (await accesses.has(access, open.room.state.id)) ? open : undefined;
}

/** A room that this desk manages; undefined for any other, as for one that is not there. */
export async function managedRoom(
  { rooms, accesses }: HttpParts,
  access: Access,
  id: RoomId,
): Promise<OpenRoom | undefined> {
  const open = await rooms.byId(id);
  return open && (await accesses.manages(access, id)) ? open : undefined;
}
