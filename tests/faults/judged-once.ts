import type { RoomEvent } from '../../shared/room/events.ts';
import type { RoomState } from '../../shared/room/state.ts';

/** Entries that the log has no verdict of, or more than one: whatever died, each counts once. */
export function notJudgedOnce({ entries }: RoomState, events: readonly RoomEvent[]): string[] {
  const judged = events.flatMap(({ fact }) => (fact?.kind === 'judged' ? [fact.entry] : []));
  const strangers = judged.filter((id) => !entries.some((entry) => entry.id === id));
  return [
    ...strangers.map((id) => `${id} was judged, which is no entry`),
    ...entries.flatMap(({ id, verdict }) => {
      const times = judged.filter((one) => one === id).length;
      return times === 1 && verdict !== null ? [] : [`entry ${id} was judged ${times} times`];
    }),
  ];
}
