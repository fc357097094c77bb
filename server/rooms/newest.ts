import type { RoomEvent, RoomFact, Seat } from '../../shared/room/events.ts';
import type { RoomState, TeamId } from '../../shared/room/state.ts';
import type { Doing, LatestDown } from '../../shared/wire/protocol.ts';
import type { EventLog, LatestRecord } from '../log/event-log.ts';

/** How often changed values are written beside the log, ms. */
const KEEP_EVERY_MS = 1000;

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

/**
 * The lossy values of one room: only the newest of each kind counts, none is an event. Drafts and the
 * stage's clock are kept beside the log; what a team is doing lives only as long as this process.
 */
export class Newest {
  readonly #log: EventLog;
  readonly #room: string;
  readonly #values: Map<string, LatestDown>;
  readonly #unkept = new Set<string>();
  #timer: NodeJS.Timeout | null = null;
  #keeping: Promise<void> = Promise.resolve();

  private constructor(log: EventLog, room: string, values: readonly LatestDown[]) {
    this.#log = log;
    this.#room = room;
    this.#values = new Map(values.map((value) => [keyOf(value), value]));
  }

  static async load(log: EventLog, room: string): Promise<Newest> {
    const kept = await log.latest(room);
    const values = kept.map((record) => JSON.parse(record.value) as LatestDown | null);
    return new Newest(
      log,
      room,
      values.filter((value) => value !== null),
    );
  }

  /** Call after every append: values that the events have made old are dropped. */
  look(events: readonly RoomEvent[]): void {
    if (!events.some(({ fact }) => fact !== null && NEW_STAGE.includes(fact.kind))) return;
    if (this.#values.delete('stage-clock')) this.#keepSoon('stage-clock');
  }

  put(value: LatestDown): void {
    const key = keyOf(value);
    this.#values.set(key, value);
    if (value.kind !== 'doing') this.#keepSoon(key);
  }

  #keepSoon(key: string): void {
    this.#unkept.add(key);
    this.#timer ??= setTimeout(() => void this.keep(), KEEP_EVERY_MS);
  }

  /** What `seat` may have. A team that no tablet speaks for is away. */
  seenBy(seat: Seat, state: RoomState, isHere: (team: TeamId) => boolean): LatestDown[] {
    const doing = state.teams.map((team): LatestDown => {
      const last = this.#values.get(`doing ${team.id}`);
      const word: Doing = isHere(team.id) ? (last?.kind === 'doing' ? last.doing : 'drawing') : 'away';
      return { kind: 'doing', team: team.id, doing: word };
    });
    const rest = [...this.#values.values()].filter((value) => value.kind !== 'doing');
    return [...rest, ...doing].filter((value) => mayHave(seat, value));
  }

  /** Writes what has changed since the last time. A failed write is tried again with the next one. */
  keep(): Promise<void> {
    if (this.#timer) clearTimeout(this.#timer);
    this.#timer = null;
    const keys = [...this.#unkept];
    this.#unkept.clear();
    // A value that was dropped is kept as null, so that the next process does not find the old one.
    const records = keys.map(
      (key): LatestRecord => ({ key, value: JSON.stringify(this.#values.get(key) ?? null) }),
    );
    if (records.length === 0) return this.#keeping;
    this.#keeping = this.#keeping
      .then(() => this.#log.keepLatest(this.#room, records))
      .catch(() => {
        for (const key of keys) this.#unkept.add(key);
      });
    return this.#keeping;
  }
}
