import { io, type Socket } from 'socket.io-client';
import { Design } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { type ClientAsk, PROTOCOL_VERSION, type Welcome } from '../../shared/wire/protocol.ts';
import { joinCookie, openRoom, ownerCookie } from '../rooms/harness.ts';
import type { Child } from './room-child.ts';

/** Lean pages: what they do with a message must not hide what the server did. */

export const CHALLENGE = 'one-fast-stretch';

interface HasSeq {
  readonly seq: number;
  readonly fact: { readonly kind: string } | null;
}

export interface Client {
  readonly socket: Socket;
  /** The last event's number. */
  seq: number;
  /** Called with every batch of events. */
  heard: (events: readonly HasSeq[]) => void;
}

export interface Class {
  readonly desk: Client;
  readonly board: Client;
  readonly tablets: readonly Client[];
  readonly all: readonly Client[];
}

let ids = 0;

export async function client(url: string, auth: object, cookie = ''): Promise<Client> {
  const socket = io(url, {
    transports: ['websocket'],
    auth,
    extraHeaders: { cookie },
    forceNew: true,
    reconnection: false,
  });
  const one: Client = { socket, seq: 0, heard: () => undefined };
  socket.on('events', (events: readonly HasSeq[]) => {
    one.seq = events.at(-1)!.seq;
    one.heard(events);
  });
  await new Promise<void>((resolve, reject) => {
    socket.once('connect', resolve);
    socket.once('connect_error', reject);
  });
  return one;
}

export async function hello(one: Client, room: string | null = null): Promise<Welcome> {
  const body = { version: PROTOCOL_VERSION, room, seq: room === null ? 0 : one.seq };
  const welcome = (await one.socket.timeout(30_000).emitWithAck('hello', body)) as Welcome;
  if (!welcome.ok) throw new Error(`hello was refused: ${welcome.refusal.code}`);
  one.seq = welcome.snapshot?.seq ?? welcome.events.at(-1)?.seq ?? one.seq;
  return welcome;
}

export async function ask(one: Client, wish: ClientAsk): Promise<void> {
  const body = { version: PROTOCOL_VERSION, id: `b${ids++}`, ask: wish };
  const answer = (await one.socket.emitWithAck('command', body)) as { ok: boolean };
  if (!answer.ok) throw new Error(`${wish.kind} was refused: ${JSON.stringify(answer)}`);
}

const model = readyChallenges(DEMO_KIT).flatMap((each) =>
  each.key === CHALLENGE && each.playable && each.challenge.model ? [each.challenge.model] : [],
)[0]!;

const fileForm = writeDocument(Design, model) as {
  readonly drawing: { readonly marks: readonly { readonly at: number }[] };
};
/** So many drawings differ: the first mark moves by up to 4 mm, the second by up to 1, in hundredths. */
const FIRST = 400;
const SECOND = 100;

/** A drawing that meets the challenge, its marks a little elsewhere each time. */
export function drawing(i: number): unknown {
  const by = [i % FIRST, Math.floor(i / FIRST) % SECOND];
  const marks = fileForm.drawing.marks.map((mark, n) => ({ ...mark, at: mark.at + (by[n] ?? 0) }));
  return { ...fileForm, drawing: { ...fileForm.drawing, marks } };
}

export const handIn = (i: number): ClientAsk => ({ kind: 'hand-in', round: 0, design: drawing(i) });
export const draft = (i: number) => ({ kind: 'draft', round: 0, design: drawing(i) });

/** The seats of a room: its id and the cookies of its tablets. */
export interface Seats {
  readonly room: string;
  readonly owner: string;
  readonly cookies: readonly string[];
}

export async function seatsIn({ url, ownerKey }: Child, tablets: number): Promise<Seats> {
  const owner = await ownerCookie({ url, ownerKey });
  const { room, word } = await openRoom(url, owner);
  const cookies: string[] = [];
  for (let i = 0; i < tablets; i++) cookies.push(await joinCookie(url, word));
  return { room, owner, cookies };
}

/** Sits down in all seats of a room and begins to build. */
export async function seatedClass({ url }: Child, { room, owner, cookies }: Seats): Promise<Class> {
  const desk = await client(url, { page: 'desk', room }, owner);
  const board = await client(url, { page: 'board', room });
  const tablets: Client[] = [];
  for (const cookie of cookies) tablets.push(await client(url, { page: 'tablet', room: null }, cookie));
  const all = [desk, board, ...tablets];
  for (const one of all) await hello(one);
  await ask(desk, { kind: 'choose-challenge', key: CHALLENGE });
  await ask(desk, { kind: 'start-building', seconds: null });
  return { desk, board, tablets, all };
}

/** The same number of clients of the server that only broadcasts. */
export async function bareClass({ url }: Child, room: string, tablets: number): Promise<Class> {
  const desk = await client(url, { page: 'desk', room });
  const board = await client(url, { page: 'board', room });
  const rest: Client[] = [];
  for (let i = 0; i < tablets; i++) rest.push(await client(url, { page: 'tablet', room }));
  return { desk, board, tablets: rest, all: [desk, board, ...rest] };
}

export const leave = (one: Class): void => {
  for (const each of one.all) each.socket.close();
};

/** Hands in from one tablet; resolves with the time until every other client has the event, ms. */
export function shot(one: Class, from: number, i: number): Promise<number> {
  const sender = one.tablets[from]!;
  let missing = one.all.length - 1;
  return new Promise((resolve, reject) => {
    const began = performance.now();
    for (const each of one.all) {
      if (each === sender) continue;
      each.heard = (events) => {
        if (!events.some((event) => event.fact?.kind === 'handed-in')) return;
        each.heard = () => undefined;
        missing--;
        if (missing === 0) resolve(performance.now() - began);
      };
    }
    ask(sender, handIn(i)).catch(reject);
  });
}
