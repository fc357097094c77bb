import { once } from 'node:events';
import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { type DestinationStream, pino } from 'pino';
import type { Challenge } from '../shared/documents/challenge.ts';
import type { Kit } from '../shared/documents/kit.ts';
import { Addresses } from './addresses.ts';
import { makeApp } from './http/app.ts';
import { type Judging, startJudging } from './judging/judging.ts';
import { type EventLog, RestartNeeded, StoreAway } from './log/event-log.ts';
import { ALONE, type Neighbours } from './log/neighbours.ts';
import { openStore, type Store, type Trouble } from './log/open-store.ts';
import type { Recovery } from './log/recovery.ts';
import { Meter } from './meter.ts';
import { Erasing } from './rooms/erasing.ts';
import { keptByDesks } from './rooms/own-challenges.ts';
import { readyChallenge } from './rooms/ready.ts';
import { Rooms } from './rooms/rooms.ts';
import { linkWord } from './rooms/words.ts';
import { Accesses } from './seats/access.ts';
import { addressBehind } from './seats/address.ts';
import { Links } from './seats/links.ts';
import { ownerKeyIn } from './seats/owner-key.ts';
import { type RateLimits, Rates } from './seats/rates.ts';
import { sameSecret } from './seats/tokens.ts';
import { timeLeft } from './settled.ts';
import type { SilenceLimits } from './sockets/silence.ts';
import { type Sockets, startSockets } from './sockets/sockets.ts';

export interface ServerConfig {
  /** Holds the rooms and the owner's key; made where it is missing. */
  readonly dataDir: string;
  /** Rooms are kept in this PostgreSQL database instead, with any number of other servers. */
  readonly databaseUrl?: string;
  /** 0 takes one that is free. */
  readonly port: number;
  /** Absent: every address of this machine. */
  readonly host?: string;
  /** Absent: the one kept in `dataDir`. */
  readonly ownerKey?: string;
  /** The address that tablets reach, where it is not one of this machine's own. */
  readonly publicUrl?: string;
  /** Certificate and key as PEM text: then pages come over https. */
  readonly tls?: { readonly cert: string; readonly key: string };
  /** How many balancers of ours stand in front; their word on who asks counts. */
  readonly balancers?: number;
  /** The folder of the built pages; null without pages. */
  readonly pages: string | null;
  /** Rooms that nobody has used for so many days are erased; null: none. Absent: 90. */
  readonly roomDays?: number | null;
  readonly logLevel?: 'silent' | 'error' | 'warn' | 'info';
  /** How long everything may take at the end, ms: answers, judging, keeping drafts, closing the store. */
  readonly endWithinMs?: number;
  /** What a collector of figures says, where the address that it asks from proves nothing. */
  readonly metricsKey?: string;
  /** For tests: another store, judge, clock, library, rates or patience with connections. */
  readonly silence?: SilenceLimits;
  readonly log?: EventLog;
  readonly neighbours?: Neighbours;
  readonly patienceMs?: number;
  readonly judging?: Judging;
  readonly now?: () => number;
  readonly rates?: RateLimits;
  readonly challenge?: (key: string, kit: Kit) => Challenge | undefined;
  readonly logTo?: DestinationStream;
}

export interface RunningServer {
  /** On this machine. */
  readonly url: string;
  readonly port: number;
  readonly ownerKey: string;
  readonly deskLink: string;
  readonly boardLink: string;
  /** What tablets in the room may type, the one in the QR code first. */
  readonly addresses: readonly string[];
  /** What was done at this start where the data file was damaged. */
  readonly recovery: Recovery | null;
  /** Ends cleanly: answers what is on its way, keeps what is in memory, frees everything. */
  readonly close: () => Promise<void>;
}

/** In the bundle the worker lies beside this file; from source it needs the loader that runs this. */
function defaultJudging(): Judging {
  const fromSource = import.meta.url.endsWith('.ts');
  const worker = new URL(fromSource ? './judging/worker.ts' : './judge-worker.js', import.meta.url);
  return startJudging({
    worker: fileURLToPath(worker),
    execArgv: fromSource ? ['--import', 'tsx'] : [],
  });
}

/** What starts us is told that we need ten seconds; the slowest sound drawing in the judge needs fewer. */
const END_WITHIN_MS = 9000;
/** By which part of it each step must have ended. */
const ENDED_BY = { answers: 0.4, judging: 0.75, keeping: 0.9, store: 1 } as const;
/** Longer than the minute that balancers usually keep an idle connection, so that they close it first. */
const KEEP_ALIVE_MS = 65_000;

/** A request that does not come to its point is not waited for. */
const HEADERS_WITHIN_MS = 15_000;

/** How long a room is kept that nobody uses. */
const ROOM_DAYS = 90;

/** The store given from outside, the database, or the data folder. */
async function storeFor(config: ServerConfig, trouble: Trouble): Promise<Store> {
  const { log, neighbours = ALONE, dataDir, databaseUrl } = config;
  if (!log) return openStore(dataDir, databaseUrl, trouble);
  return { log, neighbours, recovery: null, close: () => log.close() };
}

interface Parts {
  readonly sockets: Sockets;
  readonly erasing: Erasing;
  readonly rooms: Rooms;
  readonly store: Store;
}

/** Ends one after the other, all within one limit; what a store does not take by then is left behind. */
async function endAll({ sockets, erasing, rooms, store }: Parts, withinMs: number): Promise<void> {
  const left = timeLeft(withinMs);
  await sockets.close(left(ENDED_BY.answers));
  erasing.close();
  await rooms.stopJudging(left(ENDED_BY.judging));
  await rooms.keepAll(left(ENDED_BY.keeping));
  await Promise.race([store.close(), pause(left(ENDED_BY.store), undefined, { ref: false })]);
}

/**
 * Starts a whole server. Rejects with the system's error where the port or the data folder cannot be
 * had, with FolderInUse where another server has the folder, with StoreAway where the database is away.
 */
export async function startServer(config: ServerConfig): Promise<RunningServer> {
  const logOptions = { level: config.logLevel ?? 'error', base: null };
  const logger = config.logTo ? pino(logOptions, config.logTo) : pino(logOptions);
  // While a database is away everything fails for the same reason, and it is said once.
  const trouble: Trouble = (what, error) =>
    error instanceof StoreAway && !(error instanceof RestartNeeded)
      ? logger.warn(`${what}: ${error.message}`)
      : logger.error({ err: error }, what);
  const meter = new Meter(() => ({ ...rooms.counts(), sockets: sockets.count() }));
  let closing: Promise<void> | null = null;
  const ending = () => closing !== null;
  const now = config.now ?? Date.now;
  const store = await storeFor(config, trouble);
  const { log, neighbours, recovery } = store;
  if (recovery) logger.error(recovery, 'the data file was damaged');
  const ownerKey = config.ownerKey ?? ownerKeyIn(config.dataDir);
  const isOwner = (key: string | undefined) => key !== undefined && sameSecret(key, ownerKey);
  const { metricsKey } = config;
  const isCollector = (key: string) => metricsKey !== undefined && sameSecret(key, metricsKey);
  const judging = config.judging ?? defaultJudging();
  const rates = config.rates ?? new Rates();
  const { patienceMs, roomDays = ROOM_DAYS } = config;
  const accesses = new Accesses(isOwner, new Links(log, now, linkWord));
  const kept = keptByDesks(log, accesses.links, now);
  const { challenge: ready = readyChallenge } = config;
  const challenge = async (key: string, room: string, kit: Kit) =>
    ready(key, kit) ?? kept.ownChallenge(room, key);
  const erasing = new Erasing({
    log,
    now,
    afterDays: roomDays,
    hidden: (room) => rooms.hideEverywhere(room),
    forget: (room) => accesses.links.forget(room),
    forgetOthers: () => kept.forgetRevoked(),
    trouble,
  });
  const given = { log, neighbours, judging, patienceMs, now, challenge };
  const rooms = new Rooms({ ...given, erased: erasing, trouble, meter });
  const { host, publicUrl, tls } = config;
  const scheme = tls ? 'https' : 'http';
  const addresses = new Addresses({ scheme, host, publicUrl });
  const { pages } = config;
  const { balancers = 0 } = config;
  const common = { rooms, rates, addressOf: addressBehind(balancers), accesses, now, meter, trouble };
  // Behind a plain balancer everybody seems to ask on the machine itself.
  const trustsHere = neighbours.alone && metricsKey === undefined;
  const figuresFor = { isOwner, isCollector, trustsHere };
  const app = makeApp({ ...common, kept, balancers, figuresFor, erasing, pages, addresses, ending });
  const options = { keepAliveTimeout: KEEP_ALIVE_MS, headersTimeout: HEADERS_WITHIN_MS };
  const http = tls ? createSecureServer({ ...options, ...tls }, app) : createServer(options, app);
  const sockets = startSockets({ http, silence: config.silence, ...common });
  rooms.tell(sockets.outlet);
  const end = async () => {
    logger.info('ending');
    // No new connection from here on; those that are open are told and answered.
    if (http.listening) http.close();
    await endAll({ sockets, erasing, rooms, store }, config.endWithinMs ?? END_WITHIN_MS);
    meter.close();
    logger.info('ended');
  };
  const close = () => {
    closing ??= end();
    return closing;
  };
  try {
    http.listen(config.port, config.host);
    await once(http, 'listening');
    addresses.listenAt((http.address() as AddressInfo).port);
    await rooms.start();
    await erasing.start();
  } catch (error) {
    await close();
    throw error;
  }
  const { port } = http.address() as AddressInfo;
  const url = `${scheme}://localhost:${port}`;
  // A certificate is for a name, and behind a balancer nobody sits at this machine.
  const here = publicUrl && (tls || !neighbours.alone) ? addresses.now().join : url;
  logger.info({ port }, 'listening');
  return {
    url,
    port,
    ownerKey,
    deskLink: `${here}/desk?key=${ownerKey}`,
    boardLink: `${here}/board`,
    addresses: addresses.all().map(({ address }) => address),
    recovery,
    close,
  };
}
