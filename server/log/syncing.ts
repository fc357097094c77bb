import { RestartNeeded } from './event-log.ts';

/**
 * Makes what was written outlive a power cut, off the event loop and for many at once: whoever comes
 * while a sync is under way shares the next one, which begins behind everything they have written.
 */
export class Syncing {
  readonly #sync: () => Promise<void>;
  #last: Promise<void> = Promise.resolve();
  #next: Promise<void> | null = null;
  #failed: RestartNeeded | null = null;

  /** `sync` rejects with what the system says. */
  constructor(sync: () => Promise<void>) {
    this.#sync = async () => {
      try {
        await sync();
      } catch (cause) {
        this.#failed = new RestartNeeded('The disk did not keep what was written. Restart the server.', {
          cause,
        });
        throw this.#failed;
      }
    };
  }

  /**
   * Resolves when a sync has ended that began after this call. Once one has failed, all do: a system may
   * count what it could not write as written, so that a later sync would promise too much.
   */
  synced(): Promise<void> {
    this.#next ??= this.#last.then(() => {
      this.#next = null;
      this.#last = this.#sync();
      return this.#last;
    });
    return this.#next;
  }

  /** Throws RestartNeeded where a sync has failed. */
  check(): void {
    if (this.#failed) throw this.#failed;
  }
}
