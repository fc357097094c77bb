import type { RequestHandler } from 'express';
import helmet from 'helmet';

const HOST = /^[A-Za-z0-9.:[\]-]{1,255}$/;

/**
 * The security headers, by hand because a classroom's network is plain http: nothing may ask a tablet
 * to come back over https. Everything comes from this server; older tablets don't take 'self' for its
 * websocket, so that is named.
 */
export function securityHeaders(): RequestHandler {
  return (request, response, next) => {
    const host = request.headers.host ?? '';
    const socket = HOST.test(host) ? [`ws://${host}`, `wss://${host}`] : [];
    helmet({
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          defaultSrc: ["'self'"],
          scriptSrc: ["'self'"],
          styleSrc: ["'self'"],
          imgSrc: ["'self'", 'data:', 'blob:'],
          fontSrc: ["'self'"],
          connectSrc: ["'self'", ...socket],
          workerSrc: ["'self'"],
          objectSrc: ["'none'"],
          baseUri: ["'none'"],
          formAction: ["'self'"],
          frameAncestors: ["'none'"],
        },
      },
      strictTransportSecurity: false,
      // Browsers ignore these two on plain http and complain about them in every console.
      crossOriginOpenerPolicy: false,
      originAgentCluster: false,
      referrerPolicy: { policy: 'no-referrer' },
    })(request, response, next);
  };
}
