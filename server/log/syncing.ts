/**
 * Makes what was written outlive a power cut, off the event loop and for many at once: whoever comes
 * while a sync is under way shares the next one, which begins behind everything they have written.
 */
export class Syncing {
  readonly #sync: () => Promise<void>;
  #last: Promise<void> = Promise.resolve();
  #next: Promise<void> | null = null;

  constructor(sync: () => Promise<void>) {
    this.#sync = sync;
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
}
