import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const CANDIDATES = [
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
];

/** The Firefox that HARBOUR_FIREFOX names, or the first one found in the usual places. */
export function firefoxPath(): string | undefined {
  const named = process.env.HARBOUR_FIREFOX;
  if (named === undefined) return CANDIDATES.find((path) => existsSync(path));
  if (existsSync(named)) return named;
  throw new Error(`HARBOUR_FIREFOX names ${named}, but there is no such file.`);
}

/** Opens a page in a headless Firefox with a profile of its own; call what comes back to end it. */
export function openInFirefox(path: string, url: string): () => Promise<void> {
  const profile = mkdtempSync(join(tmpdir(), 'harbour-firefox-'));
  const child = spawn(path, ['--headless', '--no-remote', '--profile', profile, url], {
    stdio: 'ignore',
    // Its processes are one group, so that they can be ended together.
    detached: true,
    env: { ...process.env, HOME: profile, MOZ_CRASHREPORTER_DISABLE: '1' },
  });
  const failed = once(child, 'error').catch(() => undefined);
  return async () => {
    await Promise.race([ended(child), failed]);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
}

async function ended(child: ChildProcess): Promise<void> {
  if (child.pid === undefined || child.exitCode !== null) return;
  const gone = once(child, 'exit');
  process.kill(-child.pid, 'SIGKILL');
  await gone;
}
