import type { LatestUp } from '../../shared/wire/protocol.ts';

/** Drafts go up at most once a second; what a team does and the stage's clock go at once. */
const PAUSE_MS: Readonly<Record<LatestUp['kind'], number>> = { draft: 1000, doing: 0, 'stage-clock': 50 };

export interface Timers {
  readonly now: () => number;
  readonly after: (ms: number, work: () => void) => () => void;
}

/** Thins out the lossy channel: of each kind only the newest value is ever sent, after its pause. */
export class LatestSender {
  readonly #send: (value: LatestUp) => boolean;
  readonly #timers: Timers;
  readonly #newest = new Map<LatestUp['kind'], LatestUp>();
  readonly #sentAt = new Map<LatestUp['kind'], number>();
  readonly #pending = new Map<LatestUp['kind'], () => void>();

  /** `send` says whether the value went out. */
  constructor(send: (value: LatestUp) => boolean, timers: Timers) {
    this.#send = send;
    this.#timers = timers;
  }

  put(value: LatestUp): void {
    this.#newest.set(value.kind, value);
    if (this.#pending.has(value.kind)) return;
    const since = this.#timers.now() - (this.#sentAt.get(value.kind) ?? Number.NEGATIVE_INFINITY);
    // A clock that was set back must not hold a draft back for hours.
    const wait = since < 0 ? 0 : PAUSE_MS[value.kind] - since;
    if (wait <= 0) this.#flush(value.kind);
    else
      this.#pending.set(
        value.kind,
        this.#timers.after(wait, () => this.#flush(value.kind)),
      );
  }

  /** After the link came back the server may have missed the newest draft. An old clock would be wrong. */
  again(): void {
    for (const kind of ['draft', 'doing'] as const)
      if (this.#newest.has(kind) && !this.#pending.has(kind)) this.#flush(kind);
  }

  /** What this page knows is no longer the newest: another one has the seat. */
  forget(): void {
    this.stop();
    this.#newest.clear();
  }

  stop(): void {
    for (const cancel of this.#pending.values()) cancel();
    this.#pending.clear();
  }

  #flush(kind: LatestUp['kind']): void {
    this.#pending.delete(kind);
    const value = this.#newest.get(kind);
    if (value && this.#send(value)) this.#sentAt.set(kind, this.#timers.now());
  }
}
