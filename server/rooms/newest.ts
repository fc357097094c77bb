import type { RoomEvent, RoomFact, Seat } from '../../shared/room/events.ts';
import type { RoomId, RoomState, TeamId } from '../../shared/room/state.ts';
import type { Doing, LatestDown } from '../../shared/wire/protocol.ts';
import type { EventLog, LatestRecord } from '../log/event-log.ts';
import type { ProcessId } from '../log/neighbours.ts';

/** How often changed values are written beside the log, ms. */
const KEEP_EVERY_MS = 1000;

/** The key under which a value is the newest, and is kept. */
const keyOf = (value: LatestDown) =>
  value.kind === 'stage-clock' ? value.kind : `${value.kind} ${value.team}`;

/** What puts another stage, or none, in the place of the one that the clock belongs to. */
const NEW_STAGE: readonly RoomFact['kind'][] = ['staged', 'phase-changed', 'challenge-chosen'];

/** Whether a seat may have a value: drafts go to the desk and to their own team, words to the wall too. */
export function mayHave(seat: Seat, value: LatestDown): boolean {
  if (seat.role === 'desk') return true;
  if (value.kind === 'draft') return seat.role === 'team' && seat.team === value.team;
  return seat.role === 'board';
}

export interface NewestParts {
  readonly log: EventLog;
  readonly room: RoomId;
  /** Called when a value that this process was given is beside the log. */
  readonly kept: (key: string) => void;
}

/**
 * The lossy values of one room: only the newest of each kind counts, none is an event. Drafts and the
 * stage's clock are kept beside the log; what a team is doing lives only as long as the process at
 * which its tablet is.
 */
export class Newest {
  readonly #parts: NewestParts;
  readonly #values = new Map<string, LatestDown>();
  /** What is not beside the log yet; null where a value was dropped. */
  readonly #unkept = new Map<string, LatestDown | null>();
  /** Teams whose tablet is at another process. */
  readonly #elsewhere = new Map<TeamId, ProcessId>();
  #timer: NodeJS.Timeout | null = null;
  #keeping: Promise<void> = Promise.resolve();

  private constructor(parts: NewestParts) {
    this.#parts = parts;
  }

  static async load(parts: NewestParts): Promise<Newest> {
    const newest = new Newest(parts);
    await newest.readKept();
    return newest;
  }

  /** Takes what other processes have kept, all or of some keys; what has changed by that. */
  async readKept(keys?: readonly string[]): Promise<LatestDown[]> {
    const records = await this.#parts.log.latest(this.#parts.room, keys);
    return records.flatMap(({ key, value: text }) => {
      const value = JSON.parse(text) as LatestDown | null;
      const same = JSON.stringify(this.#values.get(key) ?? null) === text;
      // What this process was given and has not kept yet is newer.
      if (same || this.#unkept.has(key)) return [];
      if (value) this.#values.set(key, value);
      else this.#values.delete(key);
      return value ? [value] : [];
    });
  }

  /** Call after every append: values that the events have made old are dropped. */
  look(events: readonly RoomEvent[], own: boolean): void {
    if (!events.some(({ fact }) => fact !== null && NEW_STAGE.includes(fact.kind))) return;
    this.#unkept.delete('stage-clock');
    if (this.#values.delete('stage-clock') && own) this.#keepSoon('stage-clock', null);
  }

  /** A value from a page of this process. */
  put(value: LatestDown): void {
    const key = keyOf(value);
    this.#values.set(key, value);
    if (value.kind !== 'doing') this.#keepSoon(key, value);
    else if (value.doing !== 'away') this.#elsewhere.delete(value.team);
  }

  /** A value that another process was given; whether it is news here. `isHere`: a tablet of that team is. */
  hear(value: LatestDown, from: ProcessId, isHere: (team: TeamId) => boolean): boolean {
    if (value.kind === 'doing') {
      // The process that a tablet has left may say so after the one that it came to.
      if (isHere(value.team)) return false;
      if (value.doing === 'away' && this.#elsewhere.get(value.team) !== from) return false;
      if (value.doing === 'away') this.#elsewhere.delete(value.team);
      else this.#elsewhere.set(value.team, from);
    }
    this.#values.set(keyOf(value), value);
    this.#unkept.delete(keyOf(value));
    return true;
  }

  isElsewhere(team: TeamId): boolean {
    return this.#elsewhere.has(team);
  }

  /** Takes the teams for away that were at a process which is no more. */
  gone(process: ProcessId): LatestDown[] {
    const teams = [...this.#elsewhere].filter(([, at]) => at === process).map(([team]) => team);
    for (const team of teams) this.#elsewhere.delete(team);
    return teams.map((team) => ({ kind: 'doing', team, doing: 'away' }));
  }

  /** What teams of this process are doing, for another one that asks. */
  doings(teams: Iterable<TeamId>): LatestDown[] {
    return [...teams].map((team) => ({ kind: 'doing', team, doing: this.#doing(team) }));
  }

  #doing(team: TeamId): Doing {
    const last = this.#values.get(`doing ${team}`);
    return last?.kind === 'doing' && last.doing !== 'away' ? last.doing : 'drawing';
  }

  #keepSoon(key: string, value: LatestDown | null): void {
    this.#unkept.set(key, value);
    this.#timer ??= setTimeout(() => void this.keep(), KEEP_EVERY_MS);
  }

  /** What `seat` may have. A team that no tablet speaks for is away. */
  seenBy(seat: Seat, state: RoomState, isHere: (team: TeamId) => boolean): LatestDown[] {
    const doing = state.teams.map(({ id }): LatestDown => {
      const somewhere = isHere(id) || this.isElsewhere(id);
      return { kind: 'doing', team: id, doing: somewhere ? this.#doing(id) : 'away' };
    });
    const rest = [...this.#values.values()].filter((value) => value.kind !== 'doing');
    return [...rest, ...doing].filter((value) => mayHave(seat, value));
  }

  /** Whether all that is kept at all is beside the log. */
  get isKept(): boolean {
    return this.#unkept.size === 0;
  }

  /** Writes what has changed since the last time. A failed write is tried again. */
  keep(): Promise<void> {
    if (this.#timer) clearTimeout(this.#timer);
    this.#timer = null;
    this.#keeping = this.#keeping.then(() => this.#write());
    return this.#keeping;
  }

  async #write(): Promise<void> {
    const changed = [...this.#unkept];
    if (changed.length === 0) return;
    const { log, room, kept } = this.#parts;
    // A value that was dropped is kept as null, so that the next process does not find the old one.
    const records = changed.map(([key, value]): LatestRecord => ({ key, value: JSON.stringify(value) }));
    try {
      await log.keepLatest(room, records);
    } catch {
      this.#timer ??= setTimeout(() => void this.keep(), KEEP_EVERY_MS);
      return;
    }
    for (const [key, value] of changed) {
      if (this.#unkept.get(key) === value) this.#unkept.delete(key);
      kept(key);
    }
  }

  /** Writes a last time, and begins nothing more. */
  async close(): Promise<void> {
    await this.keep();
    if (this.#timer) clearTimeout(this.#timer);
  }
}
