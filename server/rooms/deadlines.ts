import type { RoomId } from '../../shared/room/state.ts';
import { isNotWritten, type LiveRoom } from './live-room.ts';

/** Timers of this machine may be early by a little, and long ones are looked at again. */
const LEAST_MS = 5;
const MOST_MS = 3_600_000;
/** A room that cannot be written is tried again after this time. */
const PAUSE_MS = 5000;

/** Ends the building time of the rooms it is shown when their deadline has passed. */
export class Deadlines {
  readonly #now: () => number;
  readonly #failed: (error: unknown) => void;
  readonly #timers = new Map<string, NodeJS.Timeout>();

  constructor(now: () => number, failed: (error: unknown) => void) {
    this.#now = now;
    this.#failed = failed;
  }

  /** Call after every change of a room, and when it has been loaded. */
  look(room: LiveRoom, atLeast = LEAST_MS): void {
    const { id, building, paused } = room.state;
    this.drop(id);
    if (building === null || building.ended || building.until === null || paused !== null) return;
    const wait = Math.min(MOST_MS, Math.max(atLeast, building.until - this.#now()));
    this.#timers.set(
      id,
      setTimeout(() => void this.#end(room), wait),
    );
  }

  /** Whether time is running in that room. */
  has(id: RoomId): boolean {
    return this.#timers.has(id);
  }

  drop(id: RoomId): void {
    clearTimeout(this.#timers.get(id));
    this.#timers.delete(id);
  }

  async #end(room: LiveRoom): Promise<void> {
    let atLeast = LEAST_MS;
    try {
      const command = { kind: 'time-is-up' } as const;
      const answer = await room.carryOut({ seat: { role: 'server' }, id: null, command });
      if (isNotWritten(answer)) atLeast = PAUSE_MS;
    } catch (error) {
      this.#failed(error);
      atLeast = PAUSE_MS;
    }
    // Also after a refusal: the timer was early, or the desk has extended the time meanwhile.
    if (this.#timers.has(room.state.id)) this.look(room, atLeast);
  }

  close(): void {
    for (const timer of this.#timers.values()) clearTimeout(timer);
    this.#timers.clear();
  }
}
