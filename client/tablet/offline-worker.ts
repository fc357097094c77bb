/**
 * Stands between the tablet's page and the server where browsers allow it (https, localhost): when the
 * server does not answer, the page is opened from the files of the build that was fetched last. It
 * never stands in for a server that answers, so nobody is served an old build.
 */
interface Scope {
  /** The address of every file that the tablet's page may ask for, and a hash over them. */
  readonly FILES: readonly string[];
  readonly BUILD: string;
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
  addEventListener(kind: 'install' | 'activate', listen: (event: Lasting) => void): void;
  addEventListener(kind: 'fetch', listen: (event: Fetching) => void): void;
}
interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Lasting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const scope = self as unknown as Scope;
const PAGE = '/';
/** A server that says nothing for so long is taken for away, ms. */
const PATIENCE_MS = 8000;
const PREFIX = 'harbour-lines ';
const own = `${PREFIX}${scope.BUILD}`;

/** The page as the server sends it now, which must be of this build: all or nothing is kept. */
async function keepBuild(): Promise<void> {
  const cache = await caches.open(own);
  const page = await fetch(PAGE, { cache: 'reload' });
  const named = (await page.clone().text()).match(/\/assets\/[\w.-]+/g) ?? [];
  if (!page.ok || named.some((file) => !scope.FILES.includes(file)))
    throw new Error('the page is of another build');
  await cache.addAll(scope.FILES);
  await cache.put(PAGE, page);
  await scope.skipWaiting();
}

/** A page that is open still runs the build before; older ones are in nobody's hands. */
async function dropOldBuilds(): Promise<void> {
  const builds = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== own);
  await Promise.all(builds.slice(0, -1).map((name) => caches.delete(name)));
  await scope.clients.claim();
}

async function fromServer(request: Request): Promise<Response> {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), PATIENCE_MS);
  try {
    const answer = await fetch(request, { signal: patience.signal });
    if (answer.status >= 500) throw new Error(`the server answers ${answer.status}`);
    return answer;
  } finally {
    clearTimeout(timer);
  }
}

async function page(request: Request): Promise<Response> {
  try {
    return await fromServer(request);
  } catch (error) {
    const kept = await (await caches.open(own)).match(PAGE);
    if (!kept) throw error;
    return kept;
  }
}

/** Names of assets carry a hash: one that was kept is what the server has. */
const asset = async (request: Request): Promise<Response> =>
  (await caches.match(request)) ?? (await fetch(request));

scope.addEventListener('install', (event) => event.waitUntil(keepBuild()));
scope.addEventListener('activate', (event) => event.waitUntil(dropOldBuilds()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { pathname } = new URL(request.url);
  if (request.method !== 'GET') return;
  if (request.mode === 'navigate' && pathname === PAGE) event.respondWith(page(request));
  else if (scope.FILES.includes(pathname)) event.respondWith(asset(request));
});
