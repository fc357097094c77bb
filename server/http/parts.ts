import type { Request, Response } from 'express';
import type { Addresses } from '../addresses.ts';
import type { Meter } from '../meter.ts';
import type { Erasing } from '../rooms/erasing.ts';
import type { OpenRoom } from '../rooms/outlet.ts';
import type { Kept } from '../rooms/own-challenges.ts';
import type { Rooms } from '../rooms/rooms.ts';
import type { Accesses } from '../seats/access.ts';
import type { AddressOf } from '../seats/address.ts';
import { type Carried, COOKIES, carriedBy } from '../seats/cookies.ts';
import type { Guess, RateLimits } from '../seats/rates.ts';
import { roomFollowed, roomNamed } from '../seats/room-named.ts';

/** Who may read the figures of this server. */
export interface FiguresFor {
  readonly isOwner: (key: string | undefined) => boolean;
  /** Whoever says the key of collectors. */
  readonly isCollector: (key: string) => boolean;
  /** Whether a request from this machine is enough. */
  readonly trustsHere: boolean;
}

export interface HttpParts {
  readonly rooms: Rooms;
  readonly rates: RateLimits;
  readonly addressOf: AddressOf;
  /** Balancers of ours in front, whose word counts. */
  readonly balancers: number;
  readonly figuresFor: FiguresFor;
  readonly accesses: Accesses;
  readonly erasing: Erasing;
  readonly kept: Kept;
  /** The folder of the built pages; null where this server has none. */
  readonly pages: string | null;
  readonly addresses: Addresses;
  readonly now: () => number;
  readonly meter: Meter;
  /** Whether this server is about to go. */
  readonly ending: () => boolean;
  readonly trouble: (what: string, error: unknown) => void;
}

const SEAT_LASTS_MS = 30 * 24 * 3_600_000;

export const carried = (request: Request): Carried => carriedBy(request.headers.cookie);

export function giveCookie(response: Response, name: keyof typeof COOKIES, value: string): void {
  response.cookie(COOKIES[name], value, {
    httpOnly: true,
    secure: response.req.secure,
    sameSite: name === 'team' ? 'lax' : 'strict',
    maxAge: SEAT_LASTS_MS,
    path: '/',
  });
}

/** This browser carries nothing of this server any more. */
export function takeCookies(response: Response): void {
  for (const cookie of Object.values(COOKIES)) response.clearCookie(cookie, { path: '/' });
}

const textOf = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);

/** A parameter of the address, where it is there once. */
export const asked = (request: Request, name: string): string | undefined => textOf(request.query[name]);

/** The room that the address names by id or word, or the one that a page follows which names none. */
export async function roomAsked(parts: HttpParts, request: Request): Promise<Guess<OpenRoom | 'name-it'>> {
  const room = asked(request, 'room');
  if (room !== undefined) return roomNamed(parts, room, parts.addressOf(request));
  return { allowed: true, found: await roomFollowed(parts, await parts.accesses.of(carried(request))) };
}
