import { type Request, type Response, Router } from 'express';
import { ROUTES, type WireRefusal } from '../../shared/wire/protocol.ts';
import { checkForm, JoinForm } from '../../shared/wire/schemas.ts';
import type { Joined } from '../rooms/rooms.ts';
import { wordTyped } from '../rooms/words.ts';
import { isSeatCode } from '../seats/links.ts';
import { asked, carried, giveCookie, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

const refused = (refusal: WireRefusal): Joined => ({ ok: false, refusal });

/** The seat of a team that comes over from another tablet. Wrong codes are counted by address. */
async function takeSeat(parts: HttpParts, request: Request, code: string): Promise<Joined> {
  const { rooms, rates } = parts;
  const { links } = parts.accesses;
  const guess = await rates.guess('wrongCode', parts.addressOf(request), () => links.takeCode(code));
  if (!guess.allowed) return refused({ code: 'too-fast' });
  const place = guess.found;
  if (!place) return refused({ code: 'wrong-code' });
  let moved: Joined = refused({ code: 'wrong-code' });
  try {
    const open = await rooms.byId(place.room);
    if (open) moved = await rooms.moveSeat(open, place.team);
  } finally {
    if (!moved.ok) await links.giveCodeBack(code, place);
  }
  return moved;
}

/** A seat for this browser in the room of `word`. Wrong words are counted by address. */
async function joinWord(parts: HttpParts, request: Request, word: string): Promise<Joined> {
  const { rooms, rates } = parts;
  const typed = wordTyped(word);
  if (typed !== undefined && isSeatCode(typed)) return takeSeat(parts, request, typed);
  const guess = await rates.guess('wrongWord', parts.addressOf(request), () => rooms.byWord(word));
  if (!guess.allowed) return refused({ code: 'too-fast' });
  if (!guess.found) return refused({ code: 'unknown-room' });
  return rooms.join(guess.found, carried(request).teamToken);
}

/** A browser may fetch a link before anybody has touched it; only a real visit takes a seat. */
const isRealVisit = (request: Request) =>
  request.method === 'GET' &&
  !/prefetch|preview/i.test(request.get('sec-purpose') ?? request.get('purpose') ?? '');

/** How a tablet gets its seat: by typing the room word or a seat's code, or by the link in a QR code. */
export function joining(parts: HttpParts): Router {
  const router = Router();

  router.post(ROUTES.join, async (request, response) => {
    const form = checkForm(JoinForm, request.body);
    const joined = form.ok ? await joinWord(parts, request, form.value.word) : form;
    if (!joined.ok) return refuse(response, joined.refusal);
    giveCookie(response, 'team', joined.token);
    response.status(204).end();
  });

  router.get(ROUTES.joinByLink, async (request: Request, response: Response) => {
    if (!isRealVisit(request)) return void response.status(204).end();
    const joined = await joinWord(parts, request, asked(request, 'word') ?? '');
    if (joined.ok) giveCookie(response, 'team', joined.token);
    response.redirect(303, joined.ok ? '/' : `/?refused=${joined.refusal.code}`);
  });

  return router;
}
