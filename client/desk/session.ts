import { ROUTES, type RoomInList } from '../../shared/wire/protocol.ts';
import { getJson, type HttpAnswer, postJson } from '../parts/http.ts';

/** Which of the owner's rooms this desk has, kept in the address so that a reload goes on with it. */
export const roomInAddress = (): string | null => new URLSearchParams(location.search).get('room');

/** Moves to a room (null: the list of rooms) with a fresh page: nothing of the other room stays. */
export function goToRoom(room: string | null): void {
  location.assign(room === null ? '/desk' : `/desk?room=${encodeURIComponent(room)}`);
}

export interface OpenedRoom {
  readonly room: string;
  readonly word: string;
}

export const openRoom = (chargerWatched: boolean): Promise<HttpAnswer<OpenedRoom>> =>
  postJson(ROUTES.openRoom, { chargerWatched });

export const listRooms = (): Promise<HttpAnswer<readonly RoomInList[]>> => getJson(ROUTES.rooms);

export interface Addresses {
  /** As the QR code carries it. */
  readonly join: string;
  readonly all: readonly string[];
}
export const listAddresses = (): Promise<HttpAnswer<Addresses>> => getJson(ROUTES.addresses);

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

const ofRoom = (route: string, word: string): string => `${route}?room=${encodeURIComponent(word)}`;
export const qrPath = (word: string): string => ofRoom(ROUTES.qr, word);
export const resultsPath = (word: string): string => ofRoom(ROUTES.resultsCsv, word);
export const roomFilePath = (word: string): string => ofRoom(ROUTES.roomFile, word);
