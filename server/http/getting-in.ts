import { randomBytes } from 'node:crypto';
import { Router } from 'express';
import { toString as qrToString } from 'qrcode';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { AddressForm, CheckForm, checkForm } from '../../shared/wire/schemas.ts';
import { ArrivalBook } from './arrivals.ts';
import { forDesk, forOpener } from './desks.ts';
import { type HttpParts, roomAsked } from './parts.ts';
import { refuse } from './refuse.ts';

/** As much as the tablet page and its scripts are on their way through the air. */
const LOAD_BYTES = 400_000;
const load = randomBytes(LOAD_BYTES);

/** How tablets get in, whether they do, and how fast. */
export function gettingIn(parts: HttpParts): Router {
  const router = Router();
  const { addresses, now } = parts;
  const book = new ArrivalBook(now);
  router.get(['/', ROUTES.joinByLink, ROUTES.checkPage], (request, _, next) => {
    book.visited(request);
    next();
  });

  router.get(ROUTES.addresses, (_, response) => void response.json(addresses.now()));

  router.post(
    ROUTES.addresses,
    forOpener(parts, (request, response) => {
      const form = checkForm(AddressForm, request.body);
      if (!form.ok) return refuse(response, form.refusal);
      if (!addresses.choose(form.value.address))
        return refuse(response, { code: 'bad-form', path: 'address', problem: 'not-ours' });
      response.json(addresses.now());
    }),
  );

  router.get(ROUTES.qr, async (request, response) => {
    const open = await roomAsked(parts, request);
    if (!open.allowed) return refuse(response, { code: 'too-fast' });
    if (open.found === 'name-it') return refuse(response, { code: 'no-room-named' });
    if (!open.found) return refuse(response, { code: 'unknown-room' });
    const link = `${addresses.now().join}${ROUTES.joinByLink}?word=${open.found.room.state.word}`;
    response.type('svg').set('Cache-Control', 'no-cache');
    response.send(await qrToString(link, { type: 'svg', margin: 2, errorCorrectionLevel: 'M' }));
  });

  router.get(
    ROUTES.arrivals,
    forDesk(parts, (_, response) => void response.json(book.read())),
  );

  router.get(ROUTES.checkLoad, (_, response) => {
    response.type('application/octet-stream').set('Cache-Control', 'no-store').send(load);
  });

  router.post(ROUTES.check, async (request, response) => {
    if (!(await parts.rates.allows('check', parts.addressOf(request))))
      return refuse(response, { code: 'too-fast' });
    const form = checkForm(CheckForm, request.body);
    if (!form.ok) return refuse(response, form.refusal);
    book.checked(form.value);
    response.status(204).end();
  });
  return router;
}
