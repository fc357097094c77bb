import type { RunEvent, RunEventOf } from '../documents/trace.ts';
import type { LightTrace } from '../run/driving.ts';

/** What a run obeyed and decided, in order, up to its arrival; and how it ended. */
export interface Story {
  readonly start: LightTrace['start'];
  readonly turns: readonly Turn[];
  readonly end: RunEventOf<'end'>;
}

/** A mark that was obeyed, a junction, or a half turn. */
export type Turn = RunEventOf<'read'> | RunEventOf<'junction'> | RunEventOf<'turn-back'>;

/** The story of a run. Marks that say "nothing", or what is so already, are no part of it. */
export function storyOf({ start, events }: LightTrace): Story {
  const arrival = events.findIndex((event) => event.kind === 'finish');
  const before = arrival < 0 ? events : events.slice(0, arrival);
  const obeyed = new Set(before.flatMap((event) => (event.kind === 'act' ? [event.read] : [])));
  return {
    start,
    turns: before.filter((event, i): event is Turn => isTurn(event) || (obeyed.has(i) && changes(event))),
    end: events.findLast((event): event is RunEventOf<'end'> => event.kind === 'end')!,
  };
}

const isTurn = (event: RunEvent): boolean => event.kind === 'junction' || event.kind === 'turn-back';

const changes = (event: RunEvent): boolean =>
  event.kind === 'read' && !event.already && event.action?.kind !== 'nothing';

/** The junctions at which a run decided by itself. */
export const chancesOf = (story: Story): RunEventOf<'junction'>[] =>
  story.turns.filter(
    (turn): turn is RunEventOf<'junction'> => turn.kind === 'junction' && turn.by === 'chance',
  );
