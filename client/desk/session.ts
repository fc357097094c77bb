import type {
  DeskAccess,
  ErasedRoom,
  LinkAsked,
  LinkInList,
  MadeLink,
  RoomInList,
  SeatCode,
  Shelved,
} from '../../shared/wire/desks.ts';
import { type Arrivals, type JoinAddresses, ROUTES } from '../../shared/wire/protocol.ts';
import { offsetAt } from '../parts/dates.ts';
import { getJson, type HttpAnswer, postJson } from '../parts/http.ts';

/** Which of the owner's rooms this desk has, kept in the address so that a reload goes on with it. */
export const roomInAddress = (): string | null => new URLSearchParams(location.search).get('room');

/** The challenge of one's own that is being built, kept in the address too. */
export const builtInAddress = (): string | null => new URLSearchParams(location.search).get('build');

/** Moves to a room (null: the list of rooms) with a fresh page: nothing of the other room stays. */
export function goToRoom(room: string | null): void {
  location.assign(room === null ? '/desk' : `/desk?room=${encodeURIComponent(room)}`);
}

export interface OpenedRoom {
  readonly room: string;
  readonly word: string;
}

/** `continues` is a room whose class comes back. */
export const openRoom = (chargerWatched: boolean, continues?: string): Promise<HttpAnswer<OpenedRoom>> =>
  postJson(ROUTES.openRoom, { chargerWatched, continues });

export const listRooms = (): Promise<HttpAnswer<readonly RoomInList[]>> => getJson(ROUTES.rooms);

/** A code that gives a team's seat to another tablet. */
export const makeSeatCode = (room: string, team: string): Promise<HttpAnswer<SeatCode>> =>
  postJson(ROUTES.seatCode, { room, team });

export const deskAccess = (): Promise<HttpAnswer<DeskAccess>> => getJson(ROUTES.access);

/** What a desk has made and keeps across rooms, by what it is. */
export const SHELVES = {
  challenge: {
    list: ROUTES.challenges,
    erase: ROUTES.eraseChallenge,
    giveBack: ROUTES.giveBackChallenge,
  },
  kit: { list: ROUTES.kits, erase: ROUTES.eraseKit, giveBack: ROUTES.giveBackKit },
} as const;
export type ShelfName = keyof typeof SHELVES;

export const listShelf = (shelf: ShelfName): Promise<HttpAnswer<readonly Shelved[]>> =>
  getJson(SHELVES[shelf].list);
export const eraseShelved = (shelf: ShelfName, id: string): Promise<HttpAnswer<null>> =>
  postJson(SHELVES[shelf].erase, { id });
export const giveBackShelved = (shelf: ShelfName, id: string): Promise<HttpAnswer<null>> =>
  postJson(SHELVES[shelf].giveBack, { id });

/** This browser carries no desk and no seat any more. */
export const forgetDesk = (): Promise<HttpAnswer<null>> => postJson(ROUTES.forget, {});

export const listLinks = (): Promise<HttpAnswer<readonly LinkInList[]>> => getJson(ROUTES.links);
export const makeLink = (asked: LinkAsked): Promise<HttpAnswer<MadeLink>> => postJson(ROUTES.links, asked);
export const revokeLink = (id: string): Promise<HttpAnswer<null>> => postJson(ROUTES.revokeLink, { id });
export const giveBackLink = (id: string): Promise<HttpAnswer<null>> => postJson(ROUTES.giveBackLink, { id });

export const eraseRoom = (room: string): Promise<HttpAnswer<null>> => postJson(ROUTES.eraseRoom, { room });
export const keepRoom = (room: string): Promise<HttpAnswer<null>> => postJson(ROUTES.keepRoom, { room });
export const listErased = (): Promise<HttpAnswer<readonly ErasedRoom[]>> => getJson(ROUTES.erasedRooms);

export const listAddresses = (): Promise<HttpAnswer<JoinAddresses>> => getJson(ROUTES.addresses);
export const chooseAddress = (address: string): Promise<HttpAnswer<JoinAddresses>> =>
  postJson(ROUTES.addresses, { address });
export const readArrivals = (): Promise<HttpAnswer<Arrivals>> => getJson(ROUTES.arrivals);

/** The board of a room; `flip` for the one screen of a laptop, where a key leads back to the desk. */
export const boardPath = (room: string, flip: 'flip' | null = null): string =>
  `/board?room=${encodeURIComponent(room)}${flip ? '&flip=1' : ''}`;

/** Opens a saved room on this server; a file that is no JSON is refused without asking the server. */
export async function restoreRoom(file: File): Promise<HttpAnswer<OpenedRoom> | 'no-room-file'> {
  const text = await file.text();
  try {
    JSON.parse(text);
  } catch {
    return 'no-room-file';
  }
  return postJson(ROUTES.restoreRoom, text);
}

const ofRoom = (route: string, room: string): string => `${route}?room=${encodeURIComponent(room)}`;
/** `address` is in it so that another code is fetched when the desk has chosen another address. */
export const qrPath = (room: string, address: string): string =>
  `${ofRoom(ROUTES.qr, room)}&for=${encodeURIComponent(address)}`;
export const resultsPath = (word: string): string => ofRoom(ROUTES.resultsCsv, word);
/** `openedAt` is the room's: dates are those of this device. */
export const evidencePath = (word: string, openedAt: number): string =>
  `${ofRoom(ROUTES.evidenceCsv, word)}&offset=${offsetAt(openedAt)}`;
export const roomFilePath = (word: string): string => ofRoom(ROUTES.roomFile, word);
