import { setTimeout as pause } from 'node:timers/promises';
import type { Entry } from '../../shared/room/state.ts';
import type { EventLog } from '../log/event-log.ts';
import { storedDocument } from '../rooms/documents.ts';
import type { LiveRoom } from '../rooms/live-room.ts';
import type { Judging } from './judging.ts';

/** An entry that the judge failed on is tried so often, then left until the next start. */
const MOST_TRIES = 3;
/** How long to wait for space on the disk before a verdict is worked out again, ms. */
const FULL_PAUSE_MS = 5000;

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
      if ((this.#tries.get(key) ?? 0) >= MOST_TRIES) continue;
      this.#atWork.set(key, this.#work(room, entry, key));
    }
  }

  async #work(room: LiveRoom, entry: Entry, key: string): Promise<void> {
    try {
      await this.#judge(room, entry);
      this.#tries.delete(key);
    } catch (error) {
      if (this.#closed.signal.aborted) return;
      this.#tries.set(key, (this.#tries.get(key) ?? 0) + 1);
      this.#parts.failed(room.state.id, entry.id, error);
    } finally {
      this.#atWork.delete(key);
    }
    this.look(room);
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
    // Another process may have been faster: then the room refuses this verdict, and that is well.
    const answer = await room.carryOut({
      seat: { role: 'server' },
      id: null,
      command: { kind: 'judge', entry: entry.id, document: document.id, points, met },
      documents: [document],
    });
    if (!answer.ok && answer.refusal.code === 'store-full') {
      await pause(FULL_PAUSE_MS, undefined, { signal: this.#closed.signal });
    }
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
