import { Router } from 'express';
import { toDataURL } from 'qrcode';
import type { DeskAccess } from '../../shared/wire/desks.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { checkForm, LinkForm, LinkIdForm, SeatForm } from '../../shared/wire/schemas.ts';
import type { Access } from '../seats/access.ts';
import type { Changed, Link } from '../seats/links.ts';
import { FORGET_AFTER_MS } from '../seats/shelf.ts';
import { forDesk, forOpener, managedRoom } from './desks.ts';
import { carried, type HttpParts, takeCookies } from './parts.ts';
import { refuse } from './refuse.ts';

function told(access: Access): DeskAccess {
  if (access.kind !== 'link') return { kind: access.kind, room: null };
  return { kind: access.link.kind, room: access.link.room };
}

/** The owner gives desks away, a desk the rooms that it manages. */
async function mayHandle({ accesses }: HttpParts, access: Access, { room }: Pick<Link, 'room'>) {
  return room === null ? access.kind === 'owner' : accesses.manages(access, room);
}

/** Links that can be given away and taken back, and codes that move a seat. */
export function linksApi(parts: HttpParts): Router {
  const router = Router();
  const { accesses, rates } = parts;
  const { links } = accesses;

  router.get(ROUTES.access, async (request, response) => {
    response.json(told(await accesses.of(carried(request))));
  });

  router.post(
    ROUTES.forget,
    forDesk(parts, (_, response) => {
      takeCookies(response);
      response.status(204).end();
    }),
  );

  router.get(
    ROUTES.links,
    forOpener(parts, async (_, response, access) => {
      const all = await links.list();
      const own = await Promise.all(all.map((link) => mayHandle(parts, access, link)));
      response.json(all.filter((_link, i) => own[i]));
    }),
  );

  router.post(
    ROUTES.links,
    forOpener(parts, async (request, response, access) => {
      const form = checkForm(LinkForm, request.body);
      if (!form.ok) return refuse(response, form.refusal);
      const { kind } = form.value;
      const room = form.value.kind === 'room' ? form.value.room : null;
      if (room !== null && !(await managedRoom(parts, access, room))) {
        return refuse(response, { code: 'unknown-room' });
      }
      if (!(await mayHandle(parts, access, { room }))) return refuse(response, { code: 'not-for-this-seat' });
      if (!(await rates.allows('makeLink', room ?? 'owner'))) return refuse(response, { code: 'too-fast' });
      const made = await links.make({ kind, room });
      if (!made.ok) return refuse(response, { code: 'store-full' });
      const { link, token } = made.value;
      response.status(201).json({ link, address: `${parts.addresses.now().join}/desk?key=${token}` });
    }),
  );

  const changing = (change: (id: string) => Promise<Changed>) =>
    forOpener(parts, async (request, response, access) => {
      const form = checkForm(LinkIdForm, request.body);
      if (!form.ok) return refuse(response, form.refusal);
      const link = await links.byId(form.value.id);
      const changed = link && (await mayHandle(parts, access, link)) && (await change(link.id));
      if (changed === 'full') return refuse(response, { code: 'store-full' });
      if (changed !== 'done') return refuse(response, { code: 'unknown-link' });
      response.status(204).end();
    });
  const revoke = async (id: string) => {
    const changed = await links.revoke(id);
    if (changed !== 'done') return changed;
    parts.rooms.revoked(id);
    parts.erasing.later(() => parts.kept.forgetRevoked(), FORGET_AFTER_MS);
    return changed;
  };
  router.post(ROUTES.revokeLink, changing(revoke));
  router.post(
    ROUTES.giveBackLink,
    changing((id) => links.giveBack(id)),
  );

  router.post(ROUTES.seatCode, seatCode(parts));
  return router;
}

/** A code, and its picture, that gives a team's seat to another tablet. */
const seatCode = (parts: HttpParts) =>
  forDesk(parts, async (request, response, access) => {
    const form = checkForm(SeatForm, request.body);
    if (!form.ok) return refuse(response, form.refusal);
    const { room, team } = form.value;
    const open = (await parts.accesses.has(access, room)) ? await parts.rooms.byId(room) : undefined;
    if (!open) return refuse(response, { code: 'unknown-room' });
    const known = open.room.state.teams.find((each) => each.id === team);
    if (!known) return refuse(response, { code: 'unknown-team' });
    if (!(await parts.rates.allows('makeLink', room))) return refuse(response, { code: 'too-fast' });
    const made = await parts.accesses.links.makeCode(known.emblem, { room, team });
    if (!made.ok) return refuse(response, { code: 'store-full' });
    const { code } = made.value;
    const qr = await toDataURL(`${parts.addresses.now().join}${ROUTES.joinByLink}?word=${code}`, {
      margin: 2,
    });
    response.status(201).json({ ...made.value, qr });
  });
