import { type Figure, percentile } from './figure.ts';
import { ratioFigures } from './room-alone.ts';
import { startChild } from './room-child.ts';
import { bareClass, type Class, leave, seatedClass, seatsIn } from './room-clients.ts';
import { atLessonRate } from './room-rate.ts';

/**
 * Thirty rooms of twelve on one process at a lesson's rate, beside a bare server with as many and one
 * that broadcasts what it has synced, at once. A thousand entries each take a while at that rate; with fewer
 * the p99 would be chance.
 */
const ROOMS = 30;
const TABLETS = 12;
const SECONDS = 380;
const SEED = 20_260;

export async function manyFigures(): Promise<Figure[]> {
  const servers = [await startChild('bare'), await startChild('room'), await startChild('synced')] as const;
  const bare: Class[] = [];
  const synced: Class[] = [];
  const rooms: Class[] = [];
  for (let i = 0; i < ROOMS; i++) {
    bare.push(await bareClass(servers[0], `room ${i}`, TABLETS));
    synced.push(await bareClass(servers[2], `room ${i}`, TABLETS));
    rooms.push(await seatedClass(servers[1], await seatsIn(servers[1], TABLETS)));
  }
  await servers[1].figures();
  const before = await servers[1].figures();
  const times = await Promise.all([
    atLessonRate(bare, SECONDS, SEED),
    atLessonRate(rooms, SECONDS, SEED + 1),
    atLessonRate(synced, SECONDS, SEED + 2),
  ]);
  const { delayP99, coreSeconds } = await servers[1].figures();
  for (const one of [...bare, ...rooms, ...synced]) leave(one);
  for (const server of servers) await server.end();
  return [
    { name: '30-rooms-of-12-entries', value: times[1].length, unit: 'entries' },
    { name: '30-rooms-of-12-synced-median', value: percentile(times[2], 0.5), unit: 'ms' },
    { name: '30-rooms-of-12-synced-p99', value: percentile(times[2], 0.99), unit: 'ms' },
    ...ratioFigures('30-rooms-of-12', { bare: times[0], room: times[1] }),
    { name: '30-rooms-of-12-delay-p99', value: delayP99, unit: 'ms' },
    {
      name: '30-rooms-of-12-core',
      value: ((coreSeconds - before.coreSeconds) / SECONDS) * 100,
      unit: '%-of-a-core-judging-included',
    },
  ];
}
