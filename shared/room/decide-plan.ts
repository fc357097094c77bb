import { ALREADY, type CommandOf, type Decision, done, type Rule, refuse } from './decision.ts';
import type { RoomFact } from './events.ts';
import { LONGEST_QUEUE, NO_PLAN, queueWith } from './plan.ts';
import { type RoomState, USUAL_HELP } from './state.ts';

/** Challenges that wait their turn, and what a lesson brings into the next one. */

function queueChallenge({ plan }: RoomState, { key, place }: CommandOf<'queue-challenge'>): Decision {
  const queue = queueWith(plan.queue, key, place);
  if (queue.length > LONGEST_QUEUE) return refuse({ code: 'queue-full', most: LONGEST_QUEUE });
  return queue.join() === plan.queue.join() ? ALREADY : done({ kind: 'queue-changed', queue });
}

export const PLAN_RULES: { readonly 'queue-challenge': Rule<'queue-challenge'> } = {
  'queue-challenge': { by: 'desk', decide: queueChallenge },
};

/** What a room begins with that goes on from this one: the teams' places, the queue, kit and sheets, how they are helped. */
export function continuation(before: RoomState): RoomFact[] {
  const places = before.teams.map(({ id, emblem, berth }) => ({ team: id, emblem, berth }));
  const last = before.rounds.at(-1)?.key ?? null;
  const { queue } = before.plan;
  return [
    { kind: 'continued', room: before.id, last, places },
    ...(queue.length > NO_PLAN.queue.length ? [{ kind: 'queue-changed', queue } as const] : []),
    ...(before.kit !== null ? [{ kind: 'kit-chosen', kit: before.kit } as const] : []),
    ...(before.variedSheets ? [{ kind: 'sheets-varied', on: true } as const] : []),
    ...(before.help !== USUAL_HELP ? [{ kind: 'help-set', team: null, step: before.help } as const] : []),
  ];
}
