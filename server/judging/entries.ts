import { setTimeout as pause } from 'node:timers/promises';
import type { RoomCommand } from '../../shared/room/commands.ts';
import type { Entry } from '../../shared/room/state.ts';
import type { EventLog, StoredDocument } from '../log/event-log.ts';
import { storedDocument } from '../rooms/documents.ts';
import type { LiveRoom } from '../rooms/live-room.ts';
import type { Judging } from './judging.ts';

/** So often an entry is tried, then it is left until the desk wishes it or the next start. */
const MOST_TRIES = 3;
/** How long to wait for space on the disk before a verdict is worked out again, ms. */
const PAUSE_MS = 5000;

export interface EntryJudgeParts {
  readonly log: EventLog;
  readonly judging: Judging;
  readonly failed: (room: string, entry: string, error: unknown) => void;
}

/** Sees to it that every entry of the rooms it is shown gets its verdict, once. */
export class EntryJudge {
  readonly #parts: EntryJudgeParts;
  readonly #atWork = new Map<string, Promise<void>>();
  readonly #tries = new Map<string, number>();
  readonly #closed = new AbortController();

  constructor(parts: EntryJudgeParts) {
    this.#parts = parts;
  }

  /** Call after every change of a room, and when it has been loaded. */
  look(room: LiveRoom): void {
    if (this.#closed.signal.aborted) return;
    for (const entry of room.state.entries) {
      const key = `${room.state.id} ${entry.id}`;
      if (entry.verdict !== null || this.#atWork.has(key)) continue;
      if ((this.#tries.get(key) ?? 0) >= MOST_TRIES) {
        if (entry.unjudged) continue;
        this.#tries.delete(key);
      }
      this.#atWork.set(key, this.#work(room, entry, key));
    }
  }

  async #work(room: LiveRoom, entry: Entry, key: string): Promise<void> {
    try {
      await this.#judge(room, entry);
      this.#tries.delete(key);
    } catch (error) {
      if (this.#closed.signal.aborted) return;
      const tries = (this.#tries.get(key) ?? 0) + 1;
      this.#tries.set(key, tries);
      this.#parts.failed(room.state.id, entry.id, error);
      if (tries >= MOST_TRIES) await this.#giveUp(room, entry);
    } finally {
      this.#atWork.delete(key);
    }
    this.look(room);
  }

  /** Desk and team shall not wait for a verdict that does not come. */
  async #giveUp(room: LiveRoom, entry: Entry): Promise<void> {
    try {
      await this.#carryOut(room, { kind: 'give-up-judging', entry: entry.id });
    } catch (error) {
      if (!this.#closed.signal.aborted) this.#parts.failed(room.state.id, entry.id, error);
    }
  }

  async #judge(room: LiveRoom, entry: Entry): Promise<void> {
    const { log, judging } = this.#parts;
    const { id, rounds } = room.state;
    const challengeId = rounds[entry.round]?.challenge;
    const challenge = challengeId && (await log.document(id, challengeId));
    const design = entry.design && (await log.document(id, entry.design));
    if (!challenge || !design) throw new Error(`a document of entry ${entry.id} is missing`);
    const judged = await judging.judge({ challenge: challenge.body, design: design.body });
    const document = storedDocument('verdict', judged.verdict);
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
    if (answer.ok || (answer.refusal.code !== 'store-full' && answer.refusal.code !== 'server-trouble'))
      return;
    await pause(PAUSE_MS, undefined, { signal: this.#closed.signal });
  }

  /** How many entries wait for their verdict. */
  get size(): number {
    return this.#atWork.size;
  }

  /** Begins nothing more; what fails from now on is not counted. */
  stop(): void {
    this.#closed.abort();
  }

  /** Resolves when nothing is at work any more. */
  async stopped(): Promise<void> {
    await Promise.allSettled(this.#atWork.values());
  }
}
