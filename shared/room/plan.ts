import type { HelpStep } from './coaching.ts';
import type { RoomId, TeamId } from './ids.ts';

/** What a desk has planned: challenges to come, and which class comes back. Only desks know it. */

/** Where a team sat in the lesson before, and what it had of its own there. */
export interface Place {
  /** Its id there. */
  readonly team: TeamId;
  readonly emblem: string;
  readonly berth: number;
  /** Absent: the class's help step. */
  readonly help?: HelpStep | undefined;
  /** It got challenges in their gentler form. */
  readonly gentler?: true | undefined;
}

export interface Continued {
  readonly room: RoomId;
  /** Key of the challenge that was played last; null: none was. */
  readonly last: string | null;
  readonly places: readonly Place[];
}

export interface Plan {
  /** Keys of challenges, the next one first; each at most once. */
  readonly queue: readonly string[];
  /** The lesson that this one goes on from. */
  readonly from: Continued | null;
}

export const NO_PLAN: Plan = { queue: [], from: null };

/** So many challenges wait at most. */
export const LONGEST_QUEUE = 30;

export type PlanFact =
  | { readonly kind: 'queue-changed'; readonly queue: readonly string[] }
  | ({ readonly kind: 'continued' } & Continued);

/** The queue with `key` at `place` (0 first, the end where that is beyond it), or without it. */
export function queueWith(queue: readonly string[], key: string, place: number | null): readonly string[] {
  const others = queue.filter((other) => other !== key);
  return place === null ? others : [...others.slice(0, place), key, ...others.slice(place)];
}
