import { createContext, type ReactNode, useContext, useEffect, useMemo } from 'react';
import { createStore, type StoreApi, useStore } from 'zustand';
import type { Millis } from '../../shared/geometry/units.ts';
import { type Link, TIMERS } from '../link/connect.ts';
import { paced } from '../link/paced.ts';
import type { LinkState } from '../link/state.ts';

interface Held {
  readonly link: Link;
  readonly store: StoreApi<LinkState>;
}

const HeldLink = createContext<Held | null>(null);

/** Ties a link to a store that components select from. Make it once, outside React. */
export function holdLink(link: Link): Held {
  const store = createStore<LinkState>(() => link.state());
  link.subscribe(() => store.setState(link.state(), true));
  return { link, store };
}

/** A link that stays as it is now, its room and its clock; what is asked of it goes on. */
export function stillLink(link: Link): Held {
  const [state, now] = [link.state(), link.serverNow()];
  const parts = { state: { value: () => state }, serverNow: { value: () => now } };
  return { link: Object.create(link, parts) as Link, store: createStore<LinkState>(() => state) };
}

export function LinkProvider({ held, children }: { readonly held: Held; readonly children: ReactNode }) {
  return <HeldLink value={held}>{children}</HeldLink>;
}

interface PacedLinkProps {
  readonly everyMs: Millis;
  readonly children: ReactNode;
}

/**
 * For a part of a page that shows many teams: in it the link's state changes at most once in `everyMs`, so that
 * what thirty tablets say one after another is drawn in one go.
 */
export function PacedLink({ everyMs, children }: PacedLinkProps) {
  const { link, store } = useHeldLink();
  const held = useMemo(() => ({ link, store: createStore(() => store.getState()) }), [link, store]);
  useEffect(() => {
    const take = paced(() => held.store.setState(store.getState(), true), everyMs, TIMERS.after);
    // Something may have come before anybody listened.
    if (held.store.getState() !== store.getState()) take.changed();
    const unsubscribe = store.subscribe(take.changed);
    return () => {
      unsubscribe();
      take.stop();
    };
  }, [held, store, everyMs]);
  return <LinkProvider held={held}>{children}</LinkProvider>;
}

/** The link with its store, for a part of the page that shows another one. */
export function useHeldLink(): Held {
  const held = useContext(HeldLink);
  if (!held) throw new Error('a LinkProvider stands above every component that uses the link');
  return held;
}

/** The link itself, for commands, documents and the lossy channel. */
export const useLink = (): Link => useHeldLink().link;

/** A part of the link's state; the component renders again when that part changes. */
export function useLinkState<T>(select: (state: LinkState) => T): T {
  return useStore(useHeldLink().store, select);
}
