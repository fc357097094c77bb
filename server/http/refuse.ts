import type { Response } from 'express';
import type { HttpRefusal, WireRefusal } from '../../shared/wire/protocol.ts';

const STATUS: Readonly<Partial<Record<WireRefusal['code'], number>>> = {
  'no-seat': 401,
  'wrong-key': 401,
  'wrong-code': 404,
  'unknown-link': 404,
  'unknown-team': 404,
  'not-for-this-seat': 403,
  'other-site': 403,
  'seat-freed': 403,
  'team-removed': 403,
  'unknown-room': 404,
  'no-room-named': 403,
  'unknown-document': 404,
  'unknown-page': 404,
  'unknown-challenge': 404,
  'not-on-shelf': 404,
  'shelf-full': 409,
  'room-full': 409,
  'not-now': 409,
  'already-so': 409,
  'cannot-print': 409,
  'too-large': 413,
  'too-fast': 429,
  'server-trouble': 500,
  'store-away': 503,
  'restart-needed': 503,
  'store-full': 507,
};
const BAD_REQUEST = 400;

/** Answers with the refusal's code as JSON, and the status that fits it. */
export function refuse(response: Response, refusal: WireRefusal): void {
  response.locals.refused = refusal.code;
  const body: HttpRefusal = { refusal };
  response.status(STATUS[refusal.code] ?? BAD_REQUEST).json(body);
}
