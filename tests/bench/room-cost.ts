import type { Figure } from './figure.ts';
import { type Child, startChild } from './room-child.ts';
import { ask, type Class, draft, leave, seatedClass, seatsIn } from './room-clients.ts';

/**
 * What things cost the server, in processor time of the whole process: a command that everybody in a
 * room of twelve is told, a draft that the desk gets, and links that are only kept, with 1, 10 and 40 rooms.
 */
const TABLETS = 12;
const COMMANDS = 400;
const DRAFTS = 4000;
const IDLE_SECONDS = 10;

async function spent(server: Child, work: () => Promise<void>): Promise<number> {
  const before = await server.figures();
  await work();
  return (await server.figures()).coreSeconds - before.coreSeconds;
}

/** Looks here and back again, in every room in turn. */
async function command(classes: readonly Class[]): Promise<void> {
  for (let i = 0; i < COMMANDS; i++) {
    const { desk } = classes[i % classes.length]!;
    await ask(desk, { kind: 'look-here', on: Math.floor(i / classes.length) % 2 === 0 });
  }
}

async function drafts(classes: readonly Class[]): Promise<void> {
  for (let i = 0; i < DRAFTS; i++) {
    const { tablets } = classes[i % classes.length]!;
    const { socket } = tablets[Math.floor(i / classes.length) % TABLETS]!;
    if (i % 20 === 19) await socket.emitWithAck('latest', draft(i));
    else socket.emit('latest', draft(i));
  }
}

async function costsWith(rooms: number): Promise<Figure[]> {
  const server = await startChild('room', 'at-speed');
  const classes: Class[] = [];
  for (let i = 0; i < rooms; i++) classes.push(await seatedClass(server, await seatsIn(server, TABLETS)));
  const idle = await spent(server, () => new Promise((resolve) => setTimeout(resolve, IDLE_SECONDS * 1000)));
  const commands = await spent(server, () => command(classes));
  const values = await spent(server, () => drafts(classes));
  for (const one of classes) leave(one);
  await server.end();
  const name = (what: string) => `cost-${what}-with-${rooms}-rooms`;
  return [
    { name: name('command'), value: (commands / COMMANDS) * 1000, unit: 'core-ms' },
    { name: name('draft'), value: (values / DRAFTS) * 1000, unit: 'core-ms' },
    { name: name('only-links'), value: (idle / IDLE_SECONDS) * 1000, unit: 'core-ms/s' },
  ];
}

export async function costFigures(): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const rooms of [1, 10, 40]) figures.push(...(await costsWith(rooms)));
  return figures;
}
