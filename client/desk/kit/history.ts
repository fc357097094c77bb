import type { Kit } from '../../../shared/documents/kit.ts';

/** A kit being changed, with what it was before. */
export interface History {
  readonly now: Kit;
  readonly past: readonly Kit[];
  readonly future: readonly Kit[];
  /** Where the last change was made: more at the same place belong to one step. */
  readonly place: string | null;
}

/** More steps than somebody takes back one by one. */
const MOST = 200;

export const begun = (kit: Kit): History => ({ now: kit, past: [], future: [], place: null });

/** Another kit. Changes at one place, one after another, are taken back as one. */
export function changed(history: History, place: string, kit: Kit): History {
  if (kit === history.now) return history;
  const goesOn = place === history.place && history.past.length > 0;
  const past = goesOn ? history.past : [...history.past, history.now].slice(-MOST);
  return { now: kit, past, future: [], place };
}

export function undone({ now, past, future }: History): History {
  const before = past.at(-1);
  if (!before) return { now, past, future, place: null };
  return { now: before, past: past.slice(0, -1), future: [now, ...future], place: null };
}

export function redone({ now, past, future }: History): History {
  const [next, ...rest] = future;
  if (!next) return { now, past, future, place: null };
  return { now: next, past: [...past, now], future: rest, place: null };
}
