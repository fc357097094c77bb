import { type Figure, percentile } from './figure.ts';
import { startChild } from './room-child.ts';
import { bareClass, type Class, leave, seatedClass, seatsIn, shot } from './room-clients.ts';

/**
 * One room of thirty tablets, desk and board, and a server that only broadcasts with as many clients:
 * they take turns, so that whatever else the machine does hits both. Each entry of the room is kept on
 * the disk before it is told, and judged. With them takes turns a server that broadcasts what it has
 * synced: what it takes longer than the first is the disk alone. A thousand entries each, so that the
 * p99 is the eleventh worst.
 */
const TABLETS = 30;
const ROUNDS = 34;
const WARM_UP = 1;

/** Resolves when a verdict has reached the desk. */
const judged = ({ desk }: Class): Promise<void> =>
  new Promise((resolve) => {
    desk.socket.on('events', function listen(events: readonly { fact: { kind: string } | null }[]) {
      if (!events.some((event) => event.fact?.kind === 'judged')) return;
      desk.socket.off('events', listen);
      resolve();
    });
  });

export async function aloneFigures(): Promise<Figure[]> {
  const [bareOne, syncedOne, roomOne] = [
    await startChild('bare'),
    await startChild('synced'),
    await startChild('room', 'at-speed'),
  ];
  const bare = await bareClass(bareOne, 'one', TABLETS);
  const synced = await bareClass(syncedOne, 'one', TABLETS);
  const room = await seatedClass(roomOne, await seatsIn(roomOne, TABLETS));
  const times = { bare: [] as number[], synced: [] as number[], room: [] as number[] };
  for (let i = 0; i < (WARM_UP + ROUNDS) * TABLETS; i++) {
    const first = await shot(bare, i % TABLETS, i);
    const second = await shot(synced, i % TABLETS, i);
    const verdict = judged(room);
    const third = await shot(room, i % TABLETS, i);
    await verdict;
    if (i < WARM_UP * TABLETS) continue;
    times.bare.push(first);
    times.synced.push(second);
    times.room.push(third);
  }
  for (const one of [bare, synced, room]) leave(one);
  for (const server of [bareOne, syncedOne, roomOne]) await server.end();
  const ms = (value: number) => ({ value, unit: 'ms' });
  return [
    { name: 'one-room-of-30-synced-median', ...ms(percentile(times.synced, 0.5)) },
    { name: 'one-room-of-30-synced-p99', ...ms(percentile(times.synced, 0.99)) },
    ...ratioFigures('one-room-of-30', times),
  ];
}

/** Median and p99 of both, and the ratio that is held against its limit. */
export function ratioFigures(
  name: string,
  { bare, room }: { readonly bare: readonly number[]; readonly room: readonly number[] },
): Figure[] {
  const p99 = { bare: percentile(bare, 0.99), room: percentile(room, 0.99) };
  const ms = (what: string, value: number): Figure => ({ name: `${name}-${what}`, value, unit: 'ms' });
  return [
    ms('bare-median', percentile(bare, 0.5)),
    ms('bare-p99', p99.bare),
    ms('median', percentile(room, 0.5)),
    ms('p99', p99.room),
    {
      name: `${name}-p99-to-bare`,
      value: p99.room / p99.bare,
      unit: 'x',
      target: { at: 'most', value: 1.5 },
    },
  ];
}
