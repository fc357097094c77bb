import { useEffect, useRef, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Examined } from '../../../shared/search/examine.ts';
import type { FreshResult, FreshWish } from '../../../shared/search/fresh.ts';

/** What the search beside the page is asked, and what it answers. It is ended by ending its worker. */
export type SearchOrder =
  | { readonly kind: 'examine'; readonly challenge: Challenge; readonly most: number | null }
  | { readonly kind: 'fresh'; readonly wish: Omit<FreshWish, 'goOn'> };
export type SearchAnswer =
  | { readonly kind: 'found'; readonly found: Partial<Examined> }
  | { readonly kind: 'examined' }
  | { readonly kind: 'made'; readonly result: FreshResult };

/** Asks a worker of its own, which hears nothing while it works. Returns how to end it. */
export function search(
  order: SearchOrder,
  heard: (answer: SearchAnswer) => void,
  lost: () => void,
): () => void {
  const worker = new Worker(new URL('./search-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<SearchAnswer>) => {
    if (data.kind !== 'found') worker.terminate();
    heard(data);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    lost();
  };
  worker.postMessage(order);
  return () => worker.terminate();
}

export type SearchState = 'looking' | 'still-looking' | 'done' | 'stopped';

export interface Search {
  /** Of the challenge as it is now. */
  readonly found: Partial<Examined>;
  readonly state: SearchState;
  readonly stop: () => void;
  /** Once more, and through so many drawings; null is the usual number. */
  readonly again: (most: number | null) => void;
}

/** The search waits until a hand has rested for so long, ms. */
const QUIET_MS = 300;
/** After so long it is said that it goes on, ms. */
const LONG_MS = 1000;

interface Looked {
  readonly challenge: Challenge;
  readonly found: Partial<Examined>;
  readonly state: SearchState;
}

/** Looks at the challenge beside the page whenever it has come to rest. */
export function useSearch(challenge: Challenge): Search {
  const [looked, setLooked] = useState<Looked>({ challenge, found: {}, state: 'looking' });
  const [asked, setAsked] = useState<{ readonly challenge: Challenge; readonly most: number | null } | null>(
    null,
  );
  const end = useRef<() => void>(() => undefined);
  const most = asked?.challenge === challenge ? asked.most : null;
  const turn = asked?.challenge === challenge ? asked : null;
  useEffect(() => {
    const put = (change: (before: Looked) => Partial<Looked>) =>
      setLooked((before) => {
        const now =
          before.challenge === challenge ? before : { challenge, found: {}, state: 'looking' as const };
        return { ...now, ...change(now) };
      });
    put(() => ({ found: {}, state: 'looking' }));
    let ended: () => void = () => undefined;
    const start = setTimeout(
      () => {
        const long = setTimeout(
          () => put(({ state }) => ({ state: state === 'looking' ? 'still-looking' : state })),
          LONG_MS,
        );
        const cancel = search(
          { kind: 'examine', challenge, most },
          (answer) =>
            put(({ found }) =>
              answer.kind === 'found' ? { found: { ...found, ...answer.found } } : { state: 'done' },
            ),
          () => put(() => ({ state: 'stopped' })),
        );
        ended = () => {
          clearTimeout(long);
          cancel();
        };
      },
      turn ? 0 : QUIET_MS,
    );
    const stop = () => {
      clearTimeout(start);
      ended();
    };
    end.current = () => {
      stop();
      put(() => ({ state: 'stopped' }));
    };
    return stop;
  }, [challenge, most, turn]);
  const now: Looked = looked.challenge === challenge ? looked : { challenge, found: {}, state: 'looking' };
  return {
    found: now.found,
    state: now.state,
    stop: () => end.current(),
    again: (more) => setAsked({ challenge, most: more }),
  };
}
