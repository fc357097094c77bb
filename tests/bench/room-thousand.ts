import { type Figure, percentile } from './figure.ts';
import { type Child, startChild } from './room-child.ts';
import { type Class, client, hello, leave, type Seats, seatedClass, seatsIn } from './room-clients.ts';
import { atLessonRate } from './room-rate.ts';

/** A thousand tablets in forty rooms on one process: latency, delay, memory, and all coming back at once. */
const ROOMS = 40;
const TABLETS = 25;
const SECONDS = 60;
const SEED = 20_261;
const MOST_MS = 150;
const MOST_DELAY_MS = 20;
const HERD_MS = 5000;

const mega = (bytes: number) => bytes / 1e6;
const kilo = (bytes: number) => bytes / 1e3;

export async function thousandFigures(): Promise<Figure[]> {
  const server = await startChild('room');
  const empty = await server.figures();
  const seats: Seats[] = [];
  for (let i = 0; i < ROOMS; i++) seats.push(await seatsIn(server, TABLETS));
  const opened = await server.figures();
  const classes: Class[] = [];
  for (const each of seats) classes.push(await seatedClass(server, each));
  const seated = await server.figures();
  const times = await atLessonRate(classes, SECONDS, SEED);
  const played = await server.figures();
  const herd = await herdFigures(server, classes, seats);
  for (const one of classes) leave(one);
  await server.end();
  const sockets = ROOMS * (TABLETS + 2);
  const p99 = percentile(times, 0.99);
  return [
    { name: '1000-tablets-median', value: percentile(times, 0.5), unit: 'ms' },
    { name: '1000-tablets-p99', value: p99, unit: 'ms', target: { at: 'most', value: MOST_MS } },
    {
      name: '1000-tablets-delay-p99',
      value: played.delayP99,
      unit: 'ms',
      target: { at: 'most', value: MOST_DELAY_MS },
    },
    {
      name: '1000-tablets-core',
      value: ((played.coreSeconds - seated.coreSeconds) / SECONDS) * 100,
      unit: '%-of-a-core-judging-included',
    },
    { name: 'memory-empty', value: mega(empty.rss), unit: 'MB' },
    { name: 'memory-1000-tablets', value: mega(played.rss), unit: 'MB' },
    { name: 'memory-a-room', value: kilo(opened.kept - empty.kept) / ROOMS, unit: 'kB-kept' },
    { name: 'memory-a-socket', value: kilo(seated.kept - opened.kept) / sockets, unit: 'kB-kept' },
    { name: 'memory-a-socket-resident', value: kilo(seated.rss - opened.rss) / sockets, unit: 'kB' },
    ...herd,
  ];
}

/** Every tablet loses its link and comes back in the same moment. */
async function herdFigures(
  { url }: Child,
  classes: readonly Class[],
  seats: readonly Seats[],
): Promise<Figure[]> {
  const missed = classes.flatMap((one, c) =>
    one.tablets.map((tablet, t) => ({
      seq: tablet.seq,
      room: seats[c]!.room,
      cookie: seats[c]!.cookies[t]!,
    })),
  );
  for (const one of classes) for (const tablet of one.tablets) tablet.socket.io.engine.close();
  const began = performance.now();
  const times = await Promise.all(
    missed.map(async ({ seq, room, cookie }) => {
      const back = await client(url, { page: 'tablet', room: null }, cookie);
      back.seq = seq;
      await hello(back, room);
      const ms = performance.now() - began;
      return { ms, socket: back.socket };
    }),
  );
  for (const { socket } of times) socket.close();
  const last = Math.max(...times.map(({ ms }) => ms));
  return [
    {
      name: 'herd-of-1000-median',
      value: percentile(
        times.map(({ ms }) => ms),
        0.5,
      ),
      unit: 'ms',
    },
    { name: 'herd-of-1000-all-back', value: last, unit: 'ms', target: { at: 'most', value: HERD_MS } },
  ];
}
