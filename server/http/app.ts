import express, { type ErrorRequestHandler, type Express } from 'express';
import { Challenge } from '../../shared/documents/challenge.ts';
import { OwnKit } from '../../shared/wire/kits.ts';
import { LIMITS, ROUTES, type WireRefusal } from '../../shared/wire/protocol.ts';
import { troubleOf } from '../log/event-log.ts';
import { isSameSite } from '../seats/origin.ts';
import { gettingIn } from './getting-in.ts';
import { securityHeaders } from './headers.ts';
import { joining } from './joining.ts';
import { linksApi } from './links-api.ts';
import { operating } from './operating.ts';
import { pages } from './pages.ts';
import type { HttpParts } from './parts.ts';
import { printApi } from './print-api.ts';
import { refuse } from './refuse.ts';
import { roomsApi } from './rooms-api.ts';
import { shelfApi } from './shelf-api.ts';

const SMALL_BODY_BYTES = 10_000;
/** Files are large and have readers of their own. */
const LARGE: readonly string[] = [ROUTES.restoreRoom, ROUTES.saveChallenge, ROUTES.saveKit];
const READING = ['GET', 'HEAD', 'OPTIONS'];

/**
 * What Express and its parts say of a request that can't be read: a body, an address, a range. It is the
 * asker's own, and no trouble of the server's. Undefined for any other error.
 */
function requestRefusal(error: unknown): WireRefusal | undefined {
  if (typeof error !== 'object' || error === null) return undefined;
  const { type, status, limit, length } = error as {
    [name in 'type' | 'status' | 'limit' | 'length']?: unknown;
  };
  if (type === 'entity.too.large')
    return { code: 'too-large', bytes: Number(length ?? 0), most: Number(limit ?? 0) };
  if (typeof status !== 'number' || status < 400 || status > 499) return undefined;
  return { code: 'bad-form', path: '', problem: typeof type === 'string' ? type : 'invalid' };
}

/** Everything over HTTP: pages, joining, downloads, health. */
export function makeApp(parts: HttpParts): Express {
  const app = express();
  app.disable('x-powered-by');
  app.set('query parser', 'simple');
  app.set('trust proxy', parts.balancers);
  app.use(securityHeaders());
  app.use((request, response, next) =>
    READING.includes(request.method) || isSameSite(request)
      ? next()
      : refuse(response, { code: 'other-site' }),
  );
  app.use((_, response, next) => {
    response.once('finish', () => {
      const { refused } = response.locals;
      if (typeof refused === 'string') parts.meter.refused('http', refused);
    });
    next();
  });
  const smallJson = express.json({ limit: SMALL_BODY_BYTES });
  app.use((request, response, next) =>
    LARGE.includes(request.path) ? next() : smallJson(request, response, next),
  );
  app.use('/api', (_, response, next) => {
    response.set('Cache-Control', 'no-store');
    next();
  });
  app.use(
    gettingIn(parts),
    joining(parts),
    roomsApi(parts),
    linksApi(parts),
    shelfApi(parts, {
      shelf: parts.kept.challenges,
      form: Challenge,
      mostBytes: LIMITS.challengeBytes,
      routes: {
        list: ROUTES.challenges,
        save: ROUTES.saveChallenge,
        erase: ROUTES.eraseChallenge,
        giveBack: ROUTES.giveBackChallenge,
      },
    }),
    shelfApi(parts, {
      shelf: parts.kept.kits,
      form: OwnKit,
      mostBytes: LIMITS.ownKitBytes,
      routes: {
        list: ROUTES.kits,
        save: ROUTES.saveKit,
        erase: ROUTES.eraseKit,
        giveBack: ROUTES.giveBackKit,
      },
    }),
    printApi(parts),
    operating(parts),
    pages(parts),
  );
  app.use((_, response) => refuse(response, { code: 'unknown-page' }));
  const failed: ErrorRequestHandler = (error, request, response, _next) => {
    const refusal = requestRefusal(error);
    if (!refusal) parts.trouble(`${request.method} ${request.path}`, error);
    if (!response.headersSent) refuse(response, refusal ?? troubleOf(error));
  };
  app.use(failed);
  return app;
}
