import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleForNode } from '../../server/building/builds.ts';

export interface Figures {
  readonly kind: 'figures';
  /** Bytes. */
  readonly rss: number;
  /** Heap in use and buffers after a full collection, bytes. */
  readonly kept: number;
  /** How late the event loop was since the last figures, ms. */
  readonly delayP99: number;
  readonly coreSeconds: number;
}
export type Told = { readonly kind: 'listening'; readonly port: number; readonly ownerKey: string } | Figures;

/** A server in a process of its own. */
export interface Child {
  readonly url: string;
  readonly ownerKey: string;
  readonly figures: () => Promise<Figures>;
  /** Ends it and removes its folder. */
  readonly end: () => Promise<void>;
}

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FOLDER = join(ROOT, '.build/bench-room');

/** Server and judge as they ship. Call once before the first child. */
export const buildServer = (): Promise<void> =>
  bundleForNode(ROOT, FOLDER, {
    server: 'tests/bench/room-server.ts',
    'judge-worker': 'server/judging/worker.ts',
  });

async function told<K extends Told['kind']>(child: ChildProcess, kind: K) {
  for (;;) {
    const [message] = (await once(child, 'message')) as [Told];
    if (message.kind === kind) return message as Extract<Told, { kind: K }>;
  }
}

export async function startChild(kind: 'room' | 'bare' | 'synced', pace: 'as-ever' | 'at-speed' = 'as-ever') {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-bench-'));
  const child = fork(join(FOLDER, 'server.js'), [kind, folder, pace], { execArgv: ['--expose-gc'] });
  const { port, ownerKey } = await told(child, 'listening');
  const one: Child = {
    url: `http://localhost:${port}`,
    ownerKey,
    figures: () => {
      const answer = told(child, 'figures');
      child.send('figures');
      return answer;
    },
    end: async () => {
      const gone = once(child, 'exit');
      child.disconnect();
      await gone;
      rmSync(folder, { recursive: true, force: true });
    },
  };
  return one;
}
