import { type Request, Router } from 'express';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { isLoopback } from '../seats/address.ts';
import { carried, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

const UNAVAILABLE = 503;
/** RFC 6750, section 2.1. */
const BEARER = /^Bearer ([A-Za-z0-9._~+/-]{1,128}=*)$/i;

/** Asked on the machine itself, and not passed on by a balancer that runs there. */
const isFromHere = (request: Request): boolean =>
  isLoopback(request.socket.remoteAddress) &&
  request.headers.forwarded === undefined &&
  request.headers['x-forwarded-for'] === undefined;

function mayReadFigures(request: Request, { figuresFor }: HttpParts): boolean {
  const { isOwner, isCollector, trustsHere } = figuresFor;
  const key = BEARER.exec(request.get('authorization') ?? '')?.[1];
  if (key !== undefined) return isCollector(key);
  return (trustsHere && isFromHere(request)) || isOwner(carried(request).ownerKey);
}

/** Why this server must not get new visitors; null where it may. */
async function unready({ ending, rooms }: HttpParts): Promise<string | null> {
  if (ending()) return 'This server is ending.';
  const trouble = await rooms.storeTrouble();
  if (trouble === 'restart-needed')
    return 'Restart this server: its disk failed, or its data file is damaged.';
  return trouble && 'The store does not answer.';
}

/** What a balancer, a supervisor and those who run the server ask. */
export function operating(parts: HttpParts): Router {
  const router = Router();
  const { meter } = parts;

  router.get(ROUTES.health, (_, response) => void response.type('text').send('ok\n'));

  router.get(ROUTES.ready, async (_, response) => {
    const why = await unready(parts);
    if (why !== null) response.status(UNAVAILABLE);
    response
      .type('text')
      .set('Cache-Control', 'no-store')
      .send(`${why ?? 'ready'}\n`);
  });

  router.get(ROUTES.metrics, async (request, response) => {
    if (!mayReadFigures(request, parts)) return refuse(response, { code: 'no-seat' });
    const text = await meter.text();
    response.set('Content-Type', meter.contentType).set('Cache-Control', 'no-store').end(text);
  });
  return router;
}
