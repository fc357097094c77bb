import { setTimeout as pause } from 'node:timers/promises';
import type { RoomCommand } from '../../shared/room/commands.ts';
import type { RoomEvent } from '../../shared/room/events.ts';
import type { Entry, EntryId, RoomId, TeamId } from '../../shared/room/state.ts';
import { type EventLog, StoreAway, type StoredDocument } from '../log/event-log.ts';
import { storedDocument } from '../rooms/documents.ts';
import { isNotWritten, type LiveRoom } from '../rooms/live-room.ts';
import type { Judging } from './judging.ts';

/** So often an entry is tried, then it is left until the desk wishes it or the next start. */
const MOST_TRIES = 3;
/** A team that hands in again and again must not keep the others waiting. */
const MOST_OF_A_TEAM = 2;
/** How long to wait for space on the disk before a verdict is worked out again, ms. */
const PAUSE_MS = 5000;

export interface EntryJudgeParts {
  readonly log: EventLog;
  readonly judging: Judging;
  /** How long the process that took an entry may take before this one judges it too, ms. */
  readonly patienceMs: number;
  readonly failed: (room: string, entry: string, error: unknown) => void;
}

/** Sees to it that every entry of the rooms it is shown gets its verdict, once. */
export class EntryJudge {
  readonly #parts: EntryJudgeParts;
  readonly #atWork = new Map<string, Promise<void>>();
  readonly #tries = new Map<string, number>();
  /** Entries that were handed in at this process. */
  readonly #mine = new Set<string>();
  /** When this process first saw the entries of others that have no verdict, by room. */
  readonly #seen = new Map<RoomId, ReadonlyMap<EntryId, number>>();
  readonly #timers = new Map<RoomId, NodeJS.Timeout>();
  readonly #closed = new AbortController();

  constructor(parts: EntryJudgeParts) {
    this.#parts = parts;
  }

  /** Call after every change of a room with the events of this process, and when it has been loaded. */
  look(room: LiveRoom, own: readonly RoomEvent[] = []): void {
    // A room that is to be erased takes no verdict: trying on would never end.
    if (this.#closed.signal.aborted || room.ended) return;
    const { id, entries } = room.state;
    for (const { fact } of own) {
      if (fact?.kind === 'handed-in' || fact?.kind === 'judging-again') this.#mine.add(`${id} ${fact.entry}`);
    }
    const unjudged = entries.filter((entry) => entry.verdict === null);
    const due = this.#due(room, unjudged);
    const shares = this.#shares(id, unjudged);
    for (const entry of due) {
      const key = `${id} ${entry.id}`;
      const share = shares.get(entry.team) ?? 0;
      if (this.#atWork.has(key) || share >= MOST_OF_A_TEAM) continue;
      if ((this.#tries.get(key) ?? 0) >= MOST_TRIES) {
        if (entry.unjudged) continue;
        this.#tries.delete(key);
      }
      shares.set(entry.team, share + 1);
      this.#atWork.set(key, this.#work(room, entry, key));
    }
  }

  /** How many entries of each team are in the judge, counted once however many wait. */
  #shares(room: RoomId, unjudged: readonly Entry[]): Map<TeamId, number> {
    const shares = new Map<TeamId, number>();
    for (const { id, team } of unjudged) {
      if (this.#atWork.has(`${room} ${id}`)) shares.set(team, (shares.get(team) ?? 0) + 1);
    }
    return shares;
  }

  /** Entries that this process took, and those of others once they have waited long enough. */
  #due(room: LiveRoom, unjudged: readonly Entry[]): readonly Entry[] {
    const { patienceMs } = this.#parts;
    if (patienceMs === 0) return unjudged;
    const { id } = room.state;
    const now = performance.now();
    const before = this.#seen.get(id);
    const others = unjudged.filter((entry) => !this.#mine.has(`${id} ${entry.id}`) && !entry.unjudged);
    const seen = new Map(others.map((entry) => [entry.id, before?.get(entry.id) ?? now]));
    this.#seen.set(id, seen);
    clearTimeout(this.#timers.get(id));
    const waiting = [...seen.values()].filter((at) => at + patienceMs > now);
    if (waiting.length > 0) {
      const wait = Math.min(...waiting) + patienceMs - now;
      this.#timers.set(
        id,
        setTimeout(() => this.look(room), wait),
      );
    }
    return unjudged.filter((entry) => {
      const at = seen.get(entry.id);
      return this.#mine.has(`${id} ${entry.id}`) || (at !== undefined && at + patienceMs <= now);
    });
  }

  async #work(room: LiveRoom, entry: Entry, key: string): Promise<void> {
    try {
      await this.#judge(room, entry);
      this.#tries.delete(key);
      this.#mine.delete(key);
    } catch (error) {
      if (this.#closed.signal.aborted) return;
      if (error instanceof StoreAway) return await this.#rest();
      const tries = (this.#tries.get(key) ?? 0) + 1;
      this.#tries.set(key, tries);
      this.#parts.failed(room.state.id, entry.id, error);
      if (tries >= MOST_TRIES) await this.#giveUp(room, entry);
    } finally {
      this.#atWork.delete(key);
      this.look(room);
    }
  }

  /** Desk and team shall not wait for a verdict that does not come. */
  async #giveUp(room: LiveRoom, entry: Entry): Promise<void> {
    try {
      await this.#carryOut(room, { kind: 'give-up-judging', entry: entry.id });
    } catch (error) {
      if (this.#closed.signal.aborted) return;
      this.#parts.failed(room.state.id, entry.id, error);
      // A store that takes nothing, and says so at once, would be asked without a pause for anything else.
      await this.#rest();
    }
  }

  async #judge(room: LiveRoom, entry: Entry): Promise<void> {
    const { log, judging } = this.#parts;
    const { id, rounds } = room.state;
    const challengeId = rounds[entry.round]?.challenge;
    const challenge = challengeId && (await log.document(id, challengeId));
    const design = entry.design && (await log.document(id, entry.design));
    if (!challenge || !design) throw new Error(`a document of entry ${entry.id} is missing`);
    const { variant, weather } = entry;
    const judged = await judging.judge({
      challenge: challenge.body,
      drawnIn: { variant, weather },
      design: design.body,
    });
    const kind = design.kind === 'answers' ? 'answers-verdict' : 'verdict';
    const document = storedDocument(kind, judged.verdict);
    const { points, met } = judged;
    const command = { kind: 'judge', entry: entry.id, document: document.id, points, met } as const;
    await this.#carryOut(room, command, [document]);
  }

  /**
   * Another process may have been faster: then the room refuses, and that is well. Without space on
   * the disk nothing can be kept; it is worked out again after a while.
   */
  async #carryOut(room: LiveRoom, command: RoomCommand, documents: StoredDocument[] = []): Promise<void> {
    const answer = await room.carryOut({ seat: { role: 'server' }, id: null, command, documents });
    if (isNotWritten(answer)) await this.#rest();
  }

  async #rest(): Promise<void> {
    await pause(PAUSE_MS, undefined, { signal: this.#closed.signal }).catch(() => undefined);
  }

  /** A room that is no longer at hand. */
  drop(id: RoomId): void {
    clearTimeout(this.#timers.get(id));
    this.#timers.delete(id);
    this.#seen.delete(id);
  }

  /** How many entries wait for their verdict. */
  get size(): number {
    return this.#atWork.size;
  }

  /** Begins nothing more; what fails from now on is not counted. */
  stop(): void {
    this.#closed.abort();
    for (const timer of this.#timers.values()) clearTimeout(timer);
  }

  /** Resolves when nothing is at work any more. */
  async stopped(): Promise<void> {
    await Promise.allSettled(this.#atWork.values());
  }
}
