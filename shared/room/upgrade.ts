import { apply, stateOf } from './apply.ts';
import { EVENT_VERSION, type RoomEvent, type RoomFact, type ToldVerdict } from './events.ts';
import type { RoomState } from './state.ts';

/** Facts as older versions kept them. Version 1 had no verdicts in what the board is shown. */
type Dated = RoomFact & { verdicts?: readonly ToldVerdict[]; counted?: boolean };

function toldOf(state: RoomState, ids: readonly string[]): ToldVerdict[] {
  return state.entries.flatMap(({ id, verdict }) =>
    ids.includes(id) && verdict ? [{ entry: id, ...verdict }] : [],
  );
}

/** A fact of version 1 as this version would have kept it, `state` being that of the room before it. */
function fromFirst(fact: Dated, state: RoomState): RoomFact {
  if (fact.kind === 'judged') {
    const shown = state.entries.find((e) => e.id === fact.entry)?.shown ?? false;
    return { ...fact, counted: state.standingsShown || shown };
  }
  if (fact.kind === 'staged') return { ...fact, verdicts: toldOf(state, fact.entries) };
  if (fact.kind !== 'standings-shown') return fact;
  const news = fact.on ? state.entries.filter((e) => !e.counted).map((e) => e.id) : [];
  return { ...fact, verdicts: toldOf(state, news) };
}

/**
 * A room's events from its first one, or from the one after `before`; those of older versions as this
 * version would have kept them. The log itself is never rewritten.
 */
export function upgraded(events: readonly RoomEvent[], before?: RoomState): RoomEvent[] {
  const done: RoomEvent[] = [];
  let state = before;
  for (const event of events) {
    const isOld = event.version < EVENT_VERSION && state !== undefined && event.fact !== null;
    const fact = isOld ? fromFirst(event.fact as Dated, state as RoomState) : event.fact;
    const now = { ...event, version: Math.max(event.version, EVENT_VERSION), fact };
    done.push(now);
    state = state ? apply(state, now) : stateOf([now]);
  }
  return done;
}
