import { createStore, type StoreApi, useStore } from 'zustand';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { type Layer, withDesign } from './layers.ts';

interface Step {
  readonly challenge: Challenge;
  readonly before: Step | null;
}

export interface Built {
  readonly challenge: Challenge;
  readonly past: Step | null;
  readonly future: Step | null;
  /** Goes up with every change that did not come from a pen, after which pens begin anew. */
  readonly revision: number;
}

/** A challenge that is being built, with the way back. */
export class Work {
  readonly store: StoreApi<Built>;
  /** What was changed last: more of the same is one step. */
  #last: string | null = null;

  constructor(challenge: Challenge) {
    this.store = createStore<Built>(() => ({ challenge, past: null, future: null, revision: 0 }));
  }

  get challenge(): Challenge {
    return this.store.getState().challenge;
  }

  /** `what` names a value that changes by and by, such as a text that is typed: that is one step. */
  readonly change = (challenge: Challenge, what: string | null = null): void => {
    const goesOn = what !== null && what === this.#last;
    this.#last = what;
    this.#take(challenge, goesOn, 1);
  };

  /** Nothing is being changed by and by any more: the next change is a step of its own. */
  readonly settle = (): void => {
    this.#last = null;
  };

  readonly draw = (layer: Layer, design: Design): void => {
    this.#last = null;
    this.#take(withDesign(this.challenge, layer, design), false, 0);
  };

  #take(challenge: Challenge, goesOn: boolean, by: 0 | 1): void {
    const now = this.store.getState();
    if (challenge === now.challenge) return;
    const past = goesOn && now.past ? now.past : { challenge: now.challenge, before: now.past };
    this.store.setState({ challenge, past, future: null, revision: now.revision + by });
  }

  readonly undo = (): void => {
    const { challenge, past, future, revision } = this.store.getState();
    this.#last = null;
    if (!past) return;
    this.store.setState({
      challenge: past.challenge,
      past: past.before,
      future: { challenge, before: future },
      revision: revision + 1,
    });
  };

  readonly redo = (): void => {
    const { challenge, past, future, revision } = this.store.getState();
    this.#last = null;
    if (!future) return;
    this.store.setState({
      challenge: future.challenge,
      past: { challenge, before: past },
      future: future.before,
      revision: revision + 1,
    });
  };
}

/** A part of the work; the component renders again when that part changes. */
export const useWork = <T>(work: Work, select: (state: Built) => T): T => useStore(work.store, select);
export const useChallenge = (work: Work): Challenge => useWork(work, ({ challenge }) => challenge);
