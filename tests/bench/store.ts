import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { EventLog } from '../../server/log/event-log.ts';
import { openPostgresLog } from '../../server/log/postgres.ts';
import { openSqliteLog } from '../../server/log/sqlite.ts';
import { storedChallenge, storedDocument } from '../../server/rooms/documents.ts';
import { LiveRoom } from '../../server/rooms/live-room.ts';
import { Newest } from '../../server/rooms/newest.ts';
import { COOKIES } from '../../server/seats/cookies.ts';
import { hashOf, newToken } from '../../server/seats/tokens.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { judge } from '../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';
import { EVENT_VERSION, type RoomFact } from '../../shared/room/events.ts';
import { EMBLEMS } from '../../shared/room/state.ts';
import { postgresPrograms, TestDatabase } from '../contract/postgres.ts';
import { quickJudging, testServer } from '../rooms/harness.ts';
import { type Figure, median, percentile } from './figure.ts';
import { CHALLENGE, type Client, client, drawing, hello } from './room-clients.ts';

/**
 * A room of a whole lesson, from its store: how long it takes to open, and until a tablet that comes
 * back is current. The drawings and verdicts are of a real challenge's size.
 */

const TEAMS = 30;
const ENTRIES = 600;
const DRAFTS = 50_000;
const OPENINGS = 9;
const RETURNS = 10;
/** A tablet that slept has missed so many events. */
const MISSED = 60;
const MOST_OPEN_MS = 300;
const MOST_RETURN_MS = 100;

const ROOM = 'a-whole-room';
const tokens = Array.from({ length: TEAMS }, newToken);
const teamOf = (i: number) => `t${i % TEAMS}`;

function theChallenge() {
  const ready = readyChallenges(DEMO_KIT).find((each) => each.key === CHALLENGE);
  if (!ready?.playable || !ready.challenge.model) throw new Error(`${CHALLENGE} has no model`);
  return { challenge: ready.challenge, model: ready.challenge.model };
}

/** Everything that happened, by the hundred; no two drawings are the same. */
async function fill(log: EventLog): Promise<void> {
  const { challenge, model } = theChallenge();
  const verdict = writeDocument(Verdict, judge(challenge, model, 'entry').verdict) as object;
  const kept = storedChallenge(challenge);
  let seq = 0;
  const event = (fact: RoomFact) => ({
    seq: ++seq,
    at: 1_795_000_000_000 + seq,
    version: EVENT_VERSION,
    fact,
  });
  const record = { id: ROOM, word: 'plum-42', openedAt: 1_795_000_000_000 };
  const opened: RoomFact = { kind: 'opened', room: ROOM, word: record.word, chargerWatched: true };
  await log.openRoom(record, { events: [event(opened)] });
  const joined = tokens.map((token, i) => ({
    event: event({ kind: 'team-joined', team: teamOf(i), emblem: EMBLEMS[i]! }),
    seat: { tokenHash: hashOf(token), room: ROOM, team: teamOf(i) },
  }));
  const chosen: RoomFact = { kind: 'challenge-chosen', challenge: kept.id, key: CHALLENGE };
  await log.append(ROOM, {
    events: [
      ...joined.map((one) => one.event),
      event(chosen),
      event({ kind: 'building-started', until: null }),
    ],
    seats: joined.map((one) => one.seat),
    documents: [kept],
  });
  for (let i = 0; i < ENTRIES; i++) {
    const design = storedDocument('design', drawing(i));
    const judged = storedDocument('verdict', { ...verdict, total: i });
    const entry = `entry-${i}`;
    await log.append(ROOM, {
      events: [
        event({ kind: 'handed-in', entry, team: teamOf(i), design: design.id, late: false }),
        event({ kind: 'judged', entry, document: judged.id, points: 60, met: true, counted: false }),
      ],
      documents: [design, judged],
    });
  }
  for (let i = 0; i < DRAFTS; i += TEAMS) {
    const values = tokens.map((_, t) => ({
      key: `draft ${teamOf(t)}`,
      value: JSON.stringify({ kind: 'draft', team: teamOf(t), round: 0, design: drawing(i + t) }),
    }));
    await log.keepLatest(ROOM, values);
  }
}

async function openingTimes(log: EventLog): Promise<number[]> {
  const times: number[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    const began = performance.now();
    const newest = await Newest.load({ log, room: ROOM, kept: () => undefined });
    const told = () => undefined;
    const room = await LiveRoom.load(
      { log, now: Date.now, meter: { appended: () => undefined }, told },
      ROOM,
    );
    times.push(performance.now() - began);
    await newest.close();
    if (room?.state.entries.length !== ENTRIES) throw new Error('the room is not whole');
  }
  return times;
}

/** From nothing, as after a lost link, until it has what it missed. */
async function returnTimes(dataDir: string): Promise<number[]> {
  const server = await testServer({ dataDir, judging: quickJudging });
  const times: number[] = [];
  for (let i = 0; i < RETURNS * TEAMS; i++) {
    const began = performance.now();
    const cookie = `${COOKIES.team}=${tokens[i % TEAMS]}`;
    const tablet: Client = await client(server.url, { page: 'tablet', room: null }, cookie);
    tablet.seq = 2 * ENTRIES - MISSED;
    await hello(tablet, ROOM);
    times.push(performance.now() - began);
    tablet.socket.close();
  }
  await server.close();
  return times;
}

const figure = (name: string, value: number, most?: number): Figure => ({
  name,
  value,
  unit: 'ms',
  ...(most !== undefined && { target: { at: 'most', value: most } as const }),
});

async function sqliteFigures(): Promise<Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'harbour-bench-'));
  try {
    const first = await openSqliteLog(folder);
    await fill(first);
    await first.close();
    const began = performance.now();
    const log = await openSqliteLog(folder);
    const start = performance.now() - began;
    const times = await openingTimes(log);
    await log.close();
    const returns = await returnTimes(folder);
    return [
      figure('store-start-with-its-check', start),
      figure('room-opens-median', median(times)),
      figure('room-opens-worst', Math.max(...times), MOST_OPEN_MS),
      figure('tablet-returns-median', median(returns)),
      figure('tablet-returns-p99', percentile(returns, 0.99), MOST_RETURN_MS),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function postgresFigures(): Promise<Figure[]> {
  if (postgresPrograms() === undefined) return [];
  const database = await TestDatabase.start();
  try {
    const log = await openPostgresLog(await database.newDatabase());
    await fill(log);
    const times = await openingTimes(log);
    await log.close();
    return [
      figure('postgres-room-opens-median', median(times)),
      figure('postgres-room-opens-worst', Math.max(...times), MOST_OPEN_MS),
    ];
  } finally {
    await database.remove();
  }
}

export async function storeFigures(): Promise<Figure[]> {
  return [...(await sqliteFigures()), ...(await postgresFigures())];
}
