import { setTimeout as pause } from 'node:timers/promises';
import type { Figure } from './figure.ts';
import { type Figures, startChild } from './room-child.ts';
import { type Class, draft, leave, seatedClass, seatsIn, shot } from './room-clients.ts';
import { DRAFTS, ENTRIES } from './room-rate.ts';

/**
 * Hours of a lesson in one room of thirty, played as fast as the server takes them: what the process
 * holds must not grow but for the entries, which the room keeps on purpose. Two are there to settle: the
 * workers of the judge collect what they have left lying about only after a thousand entries or so,
 * some 30 MB each; from then on resident memory goes up and down.
 */
const TABLETS = 30;
const HOURS = 3;
/** Of an hour: looked at every five minutes. */
const PARTS = 12;
/** An hour is 60/45 of a lesson. */
const OF_A_LESSON = 60 / 45 / PARTS;
const MOST_GROWTH = 1.1;

const PER_PART = Math.round(ENTRIES * OF_A_LESSON);

/** Counts the verdicts that the desk is told. */
function verdictsIn({ desk }: Class): () => number {
  let verdicts = 0;
  desk.socket.on('events', (events: readonly { fact: { kind: string } | null }[]) => {
    verdicts += events.filter((event) => event.fact?.kind === 'judged').length;
  });
  return () => verdicts;
}

async function playPart(room: Class, part: number): Promise<void> {
  const drafts = Math.round((DRAFTS * OF_A_LESSON) / PER_PART);
  for (let i = 0; i < PER_PART; i++) {
    const n = part * PER_PART + i;
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
  const verdicts = verdictsIn(room);
  const began = performance.now();
  const figures: Figures[] = [];
  for (let part = 0; part < HOURS * PARTS; part++) {
    await playPart(room, part);
    // What the judge has still to do would count as memory.
    while (verdicts() < (part + 1) * PER_PART) await pause(20);
    figures.push(await server.figures());
  }
  const seconds = (performance.now() - began) / 1000;
  leave(room);
  await server.end();
  const most = (hour: number) =>
    Math.max(...figures.slice(hour * PARTS, (hour + 1) * PARTS).map((f) => f.rss));
  const kept = [figures[PARTS - 1]!.kept, figures.at(-1)!.kept] as const;
  return [
    { name: 'hour-played-in', value: seconds / HOURS, unit: 's' },
    { name: 'hour-resident-most-in-the-first', value: most(0) / 1e6, unit: 'MB' },
    { name: 'hour-resident-most-in-the-second', value: most(1) / 1e6, unit: 'MB' },
    { name: 'hour-resident-most-in-the-third', value: most(2) / 1e6, unit: 'MB' },
    {
      name: 'hour-resident-growth',
      value: most(2) / most(1),
      unit: 'x',
      target: { at: 'most', value: MOST_GROWTH },
    },
    {
      name: 'hour-kept-an-entry',
      value: (kept[1] - kept[0]) / (PER_PART * PARTS * (HOURS - 1)) / 1e3,
      unit: 'kB',
    },
  ];
}
