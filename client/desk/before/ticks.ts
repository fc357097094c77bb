import * as z from 'zod/mini';
import { create } from 'zustand';
import { PREP_CHECKS, type PrepCheck } from '../../../shared/prep/prep-check.ts';
import { localDate } from '../../parts/dates.ts';
import { keepText, keptText } from '../../parts/kept-text.ts';

const KEPT = 'harbour-lines.desk.check';
const Kept = z.object({ day: z.string(), ticked: z.array(z.enum(PREP_CHECKS)) });

/** A promise to stay with the charger holds for one room, so it is asked for again after a reload. */
const PROMISE: PrepCheck = 'charger';

/** The ticks of `today` in a kept text; none of another day, or where it can't be read. */
export function ticksFrom(kept: string | null | undefined, today: string): readonly PrepCheck[] {
  try {
    const read = Kept.parse(JSON.parse(kept ?? ''));
    return read.day === today ? read.ticked.filter((check) => check !== PROMISE) : [];
  } catch {
    return [];
  }
}

interface Ticks {
  readonly ticked: readonly PrepCheck[];
  readonly setTick: (check: PrepCheck, on: boolean) => void;
  readonly clear: () => void;
}

const keep = (ticked: readonly PrepCheck[]): void =>
  keepText(KEPT, JSON.stringify({ day: localDate(Date.now()), ticked }));

/** What has been ticked by hand of the short list before a lesson. */
export const useTicks = create<Ticks>()((set, get) => ({
  ticked: ticksFrom(keptText(KEPT), localDate(Date.now())),
  setTick: (check, on) => {
    const rest = get().ticked.filter((each) => each !== check);
    const ticked = on ? [...rest, check] : rest;
    keep(ticked);
    set({ ticked });
  },
  clear: () => {
    keep([]);
    set({ ticked: [] });
  },
}));
