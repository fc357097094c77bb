import type { Figure } from './figure.ts';
import { startChild } from './room-child.ts';
import { type Class, draft, leave, seatedClass, seatsIn, shot } from './room-clients.ts';
import { DRAFTS, ENTRIES } from './room-rate.ts';

/**
 * An hour of a lesson in one room of thirty, played at speed: what the process holds must not grow but
 * for the entries, which the room keeps on purpose.
 */
const TABLETS = 30;
const PARTS = 12;
/** An hour is 60/45 of a lesson. */
const OF_A_LESSON = 60 / 45 / PARTS;
/** What has grown once stays warm; from here on it must be flat. */
const WARM_AFTER = 3;
const MOST_GROWTH = 1.1;

async function playPart(room: Class, part: number): Promise<void> {
  const entries = Math.round(ENTRIES * OF_A_LESSON);
  const drafts = Math.round((DRAFTS * OF_A_LESSON) / entries);
  for (let i = 0; i < entries; i++) {
    const n = part * entries + i;
    const last = room.tablets[n % TABLETS]!;
    for (let d = 0; d < drafts; d++)
      room.tablets[(n + d) % TABLETS]!.socket.emit('latest', draft(n * drafts + d));
    await last.socket.emitWithAck('latest', draft(n));
    await shot(room, n % TABLETS, n);
  }
}

export async function hourFigures(): Promise<Figure[]> {
  const server = await startChild('room', 'at-speed');
  const room = await seatedClass(server, await seatsIn(server, TABLETS));
  const figures = [];
  for (let part = 0; part < PARTS; part++) {
    await playPart(room, part);
    figures.push(await server.figures());
  }
  leave(room);
  await server.end();
  const [warm, last] = [figures[WARM_AFTER]!, figures.at(-1)!];
  const entries = ENTRIES * OF_A_LESSON * (PARTS - 1 - WARM_AFTER);
  return [
    { name: 'hour-resident-at-20-min', value: warm.rss / 1e6, unit: 'MB' },
    { name: 'hour-resident-at-60-min', value: last.rss / 1e6, unit: 'MB' },
    {
      name: 'hour-resident-growth',
      value: last.rss / warm.rss,
      unit: 'x',
      target: { at: 'most', value: MOST_GROWTH },
    },
    { name: 'hour-kept-an-entry', value: (last.kept - warm.kept) / entries / 1e3, unit: 'kB' },
  ];
}
