import { readFileSync } from 'node:fs';
import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import type { Golden } from '../golden/runs.ts';
import { openBrowser } from './browser.ts';
import { firefoxPath, openInFirefox } from './firefox.ts';

/**
 * The golden runs in other engines than Node's: one page drives them and posts their fingerprints back.
 * Chromium shares V8 with Node, in another version; Firefox has an engine of its own.
 */
const frozen = JSON.parse(readFileSync(new URL('../golden/traces.json', import.meta.url), 'utf8')) as Golden;

const PAGE =
  '<!doctype html><meta charset="utf-8"><title>Golden</title><script type="module" src="/page.js"></script>';

/** As the pages are built, for the same old browsers. */
async function bundledPage(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      target: ['es2022', 'chrome90', 'safari15', 'firefox90'],
      rolldownOptions: { input: fileURLToPath(new URL('../golden/page.ts', import.meta.url)) },
    },
  });
  const [first] = [built].flat();
  if (!first || !('output' in first)) throw new Error('the page was not built');
  return first.output[0].code;
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

/** What a page that was opened at the given address posts back. */
async function postedBy(open: (url: string) => Promise<() => Promise<void>>): Promise<Golden> {
  const script = await bundledPage();
  let posted = (_: Golden): void => undefined;
  const golden = new Promise<Golden>((resolve) => {
    posted = resolve;
  });
  const server = createServer(async (request, response) => {
    if (request.method === 'POST') posted(JSON.parse(await bodyOf(request)) as Golden);
    const isScript = request.url === '/page.js';
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(isScript ? script : PAGE);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const close = await open(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  try {
    return await golden;
  } finally {
    await close();
    server.closeAllConnections();
    server.close();
  }
}

describe('golden traces', () => {
  it('are the same bits in Chromium', async () => {
    const golden = await postedBy(async (url) => {
      const browser = await openBrowser();
      await (await browser.newPage()).goto(url);
      return () => browser.close();
    });
    expect(golden).toEqual(frozen);
  });

  const firefox = firefoxPath();
  const title = firefox ? '' : ' (skipped: no Firefox was found; on Debian: apt-get install firefox-esr)';
  it.skipIf(!firefox)(`are the same bits in Firefox${title}`, async () => {
    const golden = await postedBy(async (url) => openInFirefox(firefox!, url));
    expect(golden).toEqual(frozen);
  });
});
