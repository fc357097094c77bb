import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleServer } from '../../server/building/builds.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The server bundled as it ships, in a folder inside the project so that it finds its packages. */
export interface Bundle {
  readonly folder: string;
  readonly remove: () => void;
}

export async function bundleOnce(): Promise<Bundle> {
  const home = join(ROOT, '.artefacts');
  mkdirSync(home, { recursive: true });
  const folder = mkdtempSync(join(home, 'faults-'));
  await bundleServer(ROOT, join(folder, 'server'));
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A real server process. */
export interface ServerProcess {
  readonly url: string;
  readonly ownerKey: string;
  /** What it has printed so far. */
  readonly printed: () => string;
  /** Ends it with `signal` and waits until it is gone; the exit code, or the signal that ended it. */
  readonly end: (signal: NodeJS.Signals) => Promise<number | NodeJS.Signals>;
}

const DESK_LINK = /(http:\/\/localhost:\d+)\/desk\?key=([\w-]+)/;

/** Starts the bundle on a free port; rejects with its words where it ends before it is ready. */
export async function startProcess(bundle: Bundle, dataDir: string, env: NodeJS.ProcessEnv = {}) {
  const main = join(bundle.folder, 'server', 'main.js');
  const child = spawn(process.execPath, [main], {
    cwd: bundle.folder,
    env: { PATH: process.env.PATH, PORT: '0', DATA_DIR: dataDir, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  child.stdout.on('data', (text: Buffer) => (printed += text.toString()));
  child.stderr.on('data', (text: Buffer) => (printed += text.toString()));
  // Not before all that it has said is read.
  const gone = once(child, 'close') as Promise<[number | null, NodeJS.Signals | null]>;
  const [url, ownerKey] = await linkOf(child, () => printed, gone);
  const end = async (signal: NodeJS.Signals) => {
    if (child.exitCode === null && child.signalCode === null) child.kill(signal);
    const [code, by] = await gone;
    return code ?? by!;
  };
  return { url, ownerKey, printed: () => printed, end } satisfies ServerProcess;
}

async function linkOf(
  child: ChildProcess,
  printed: () => string,
  gone: Promise<[number | null, NodeJS.Signals | null]>,
): Promise<[string, string]> {
  let code: number | null | undefined;
  void gone.then(([c]) => {
    code = c;
  });
  for (;;) {
    const link = DESK_LINK.exec(printed());
    if (link) return [link[1]!, link[2]!];
    if (code !== undefined) throw new Error(`ended with ${code}: ${printed()}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
    if (child.killed) throw new Error('killed before it was ready');
  }
}
