import { create } from 'zustand';
import { PERIOD } from '../../../shared/prep/lesson-plan.ts';

/** For what the leaves before a lesson plan; kept while the desk is open. */
export interface Wishes {
  /** null: as many as are in the room, or a usual class. */
  readonly teams: number | null;
  readonly minutes: number;
  /** Key of a ready challenge; null: the one that is being played, if any. */
  readonly challenge: string | null;
}

export const useWishes = create<Wishes>()(() => ({ teams: null, minutes: PERIOD.usual, challenge: null }));
