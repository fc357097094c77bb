import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import { Server } from 'socket.io';
import { io, type Socket } from 'socket.io-client';
import {
  joinCookie,
  lineDesign,
  openRoom,
  ownerCookie,
  type Page,
  quickJudging,
  seated,
  testServer,
} from '../rooms/harness.ts';
import { type Figure, percentile } from './figure.ts';

/**
 * How long from a team's hand-in until desk, board and all other tablets have its event, with SQLite on
 * this machine's disk; beside a socket.io server that only echoes and broadcasts the same bytes, and
 * beside that plus one bare synced commit, which no durable server can do without. All take turns in
 * one process with the same number of clients, so that whatever else the machine does hits each.
 */

const TABLETS = 12;
const ROUNDS = 20;
const WARM_UP = 2;

/** Sends one message from client `i` and resolves when every other client has what follows from it. */
type Shot = (i: number) => Promise<void>;
interface Course {
  readonly shot: Shot;
  readonly end: () => Promise<void>;
}

async function bareCourse(): Promise<Course> {
  const http = createServer();
  const server = new Server(http, { transports: ['websocket'], serveClient: false });
  let seq = 0;
  server.on('connection', (socket) => {
    socket.on('command', (_: unknown, ack: (answer: unknown) => void) => {
      seq++;
      const fact = { kind: 'handed-in', entry: 'x'.repeat(10), team: 'x'.repeat(8), design: 'x'.repeat(64) };
      ack({ ok: true, seq });
      server.emit('events', [{ seq, at: Date.now(), version: 1, fact }]);
    });
  });
  http.listen(0);
  await once(http, 'listening');
  const url = `http://localhost:${(http.address() as AddressInfo).port}`;
  const clients = Array.from({ length: TABLETS + 2 }, () =>
    io(url, { transports: ['websocket'], forceNew: true }),
  );
  await Promise.all(
    clients.map((client) => new Promise((resolve) => client.once('connect', () => resolve(null)))),
  );
  const shot: Shot = async (i) => {
    const told = clients.map((client) => new Promise((resolve) => client.once('events', resolve)));
    await Promise.all([clients[i]!.emitWithAck('command', message(i)), ...told]);
  };
  const end = async () => {
    for (const client of clients as Socket[]) client.close();
    await server.close();
  };
  return { shot, end };
}

/** One row into a SQLite file, synced to the disk as the room's log syncs. */
function commitCourse(): Course {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-bench-'));
  const database = new Database(join(folder, 'bare.db'));
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.exec('create table rows (id integer primary key, body text)');
  const insert = database.prepare('insert into rows (body) values (?)');
  const body = JSON.stringify(message(0));
  return {
    shot: async () => void insert.run([body]),
    end: async () => {
      database.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

let sent = 0;
const message = (i: number) => ({
  version: 1,
  id: `m${sent++}`,
  ask: { kind: 'hand-in' as const, round: 0, design: lineDesign(150, 20 + i) },
});

async function roomCourse(): Promise<Course> {
  const server = await testServer({ judging: quickJudging });
  const owner = await ownerCookie(server);
  const { word } = await openRoom(server.url, owner);
  const desk = await seated(server.url, 'desk', owner);
  const board = await seated(server.url, 'board');
  const tablets: Page[] = [];
  for (let i = 0; i < TABLETS; i++) {
    tablets.push(await seated(server.url, 'tablet', await joinCookie(server.url, word)));
  }
  await desk.command({ kind: 'choose-challenge', key: 'first-line' });
  await desk.command({ kind: 'start-building', seconds: null });
  const pages = [desk, board, ...tablets];
  const shot: Shot = async (i) => {
    const from = desk.state?.seq ?? 0;
    const told = pages.map((page) => toldAfter(page, from));
    const { id, ask } = message(i);
    const answer = await tablets[i]!.command(ask, id);
    if (!answer.ok) throw new Error(`refused: ${answer.refusal.code}`);
    await Promise.all(told);
  };
  const end = async () => {
    for (const page of pages) page.close();
    await server.end();
  };
  return { shot, end };
}

const toldAfter = (page: Page, seq: number) =>
  new Promise<void>((resolve) => {
    const listen = (events: readonly { seq: number }[]) => {
      if (!events.some((event) => event.seq > seq)) return;
      page.socket.off('events', listen);
      resolve();
    };
    page.socket.on('events', listen);
  });

async function timed(shot: Shot, i: number): Promise<number> {
  const began = performance.now();
  await shot(i);
  return performance.now() - began;
}

/** The verdict's event follows on its own; it shall not run into the next shot. */
const settle = () => new Promise((resolve) => setTimeout(resolve, 10));

export async function bench(): Promise<Figure[]> {
  const courses = [await bareCourse(), commitCourse(), await roomCourse()];
  const bare: number[] = [];
  const durable: number[] = [];
  const room: number[] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round++) {
    for (let i = 0; i < TABLETS; i++) {
      const times: number[] = [];
      for (const course of courses) times.push(await timed(course.shot, i));
      await settle();
      if (round < WARM_UP) continue;
      bare.push(times[0]!);
      durable.push(times[0]! + times[1]!);
      room.push(times[2]!);
    }
  }
  for (const course of courses) await course.end();
  return figuresOf(bare, durable, room);
}

function figuresOf(bare: number[], durable: number[], room: number[]): Figure[] {
  const [median, p99] = [0.5, 0.99].map((share) => ({
    bare: percentile(bare, share),
    durable: percentile(durable, share),
    room: percentile(room, share),
  })) as [Record<'bare' | 'durable' | 'room', number>, Record<'bare' | 'durable' | 'room', number>];
  return [
    { name: 'bare-median', value: median.bare, unit: 'ms' },
    { name: 'bare-p99', value: p99.bare, unit: 'ms' },
    { name: 'bare-and-commit-median', value: median.durable, unit: 'ms' },
    { name: 'bare-and-commit-p99', value: p99.durable, unit: 'ms' },
    { name: 'command-to-event-median', value: median.room, unit: 'ms' },
    { name: 'command-to-event-p99', value: p99.room, unit: 'ms', target: { at: 'most', value: 100 } },
    ratio('median-to-bare-and-commit', median.room / median.durable),
    ratio('p99-to-bare-and-commit', p99.room / p99.durable),
  ];
}

const ratio = (name: string, value: number): Figure => ({
  name,
  value,
  unit: 'x',
  target: { at: 'most', value: 4 },
});
