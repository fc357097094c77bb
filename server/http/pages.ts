import { existsSync, readdirSync } from 'node:fs';
import { extname, join } from 'node:path';
import express, { type Request, type RequestHandler, type Response, Router } from 'express';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { isToken, newToken } from '../seats/tokens.ts';
import { asked, carried, giveCookie, type HttpParts } from './parts.ts';
import { refuse } from './refuse.ts';

const YEAR_MS = 365 * 24 * 3_600_000;
const NOT_BUILT = 'The pages have not been built yet. Run: npm run build\n';

/** Files under `assets` carry a hash in their name; a page itself is asked for anew each time. */
function sendPage(parts: HttpParts, response: Response, page: string): void {
  if (parts.pages === null) return void response.status(503).type('text').send(NOT_BUILT);
  const options = { root: parts.pages, cacheControl: false };
  response.set('Cache-Control', 'no-cache');
  response.sendFile(join(page, 'index.html'), options, (error) => {
    if (error && !response.headersSent) response.status(503).type('text').send(NOT_BUILT);
  });
}

/** The secret of owner or desk becomes a cookie, and leaves the address bar at once. */
async function exchangeKey(parts: HttpParts, request: Request, response: Response, key: string) {
  const opened = async () => {
    const access = await parts.accesses.of({ ownerKey: key, deskToken: isToken(key) ? key : undefined });
    return access.kind === 'none' ? undefined : access;
  };
  const guess = await parts.rates.guess('wrongKey', parts.addressOf(request), opened);
  if (!guess.allowed) return refuse(response, { code: 'too-fast' });
  const access = guess.found;
  if (!access) return refuse(response, { code: 'wrong-key' });
  giveCookie(response, access.kind === 'owner' ? 'owner' : 'desk', key);
  const room = (access.kind === 'link' && access.link.room) || asked(request, 'room');
  response.redirect(303, room === undefined ? '/desk' : `/desk?room=${encodeURIComponent(room)}`);
}

/**
 * Scripts and styles lie beside their packed form, a third in size: thirty tablets that open a page at
 * once share one access point.
 */
function packed(folder: string): RequestHandler {
  const names = new Set(existsSync(folder) ? readdirSync(folder) : []);
  return (request, response, next) => {
    if (names.has(`${request.path.slice(1)}.gz`) && request.acceptsEncodings('gzip')) {
      response.type(extname(request.path)).set({ 'Content-Encoding': 'gzip', Vary: 'Accept-Encoding' });
      request.url = `${request.path}.gz`;
    }
    next();
  };
}

/** The pages and their files. */
export function pages(parts: HttpParts): Router {
  const router = Router();

  router.get('/desk', async (request, response) => {
    const key = asked(request, 'key');
    if (key !== undefined) return exchangeKey(parts, request, response, key);
    sendPage(parts, response, 'desk');
  });

  router.get('/board', (_, response) => sendPage(parts, response, 'board'));
  router.get(ROUTES.checkPage, (_, response) => sendPage(parts, response, 'check'));

  router.get('/', (request, response) => {
    // A token before the seat: however often joining is repeated, it stays one seat.
    if (carried(request).teamToken === undefined) giveCookie(response, 'team', newToken());
    sendPage(parts, response, 'tablet');
  });

  if (parts.pages !== null) {
    const folder = join(parts.pages, 'assets');
    const assets = express.static(folder, { immutable: true, maxAge: YEAR_MS });
    router.use('/assets', packed(folder), assets);
    router.use(express.static(parts.pages, { index: false, redirect: false }));
  }
  return router;
}
