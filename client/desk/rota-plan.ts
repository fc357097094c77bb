import * as z from 'zod/mini';
import { chargingRota, MOST_ROBOTS, type RotaAnswer } from '../../shared/prep/rota.ts';
import { daysAfter, daysBetween } from '../parts/dates.ts';
import { keepText, keptText } from '../parts/kept-text.ts';

/** What the rota's form holds; numbers as typed, times as `13:30`. Kept in this browser. */
const Plan = z.object({
  capacity: z.number(),
  current: z.number(),
  ports: z.number(),
  /** In percent, robot 1 first. */
  charges: z.array(z.number()).check(z.maxLength(MOST_ROBOTS)),
  watched: z.array(z.object({ date: z.string(), from: z.string(), to: z.string() })),
  needed: z.object({ date: z.string(), time: z.string() }),
});
export type Plan = z.infer<typeof Plan>;

const KEPT = 'harbour-lines.desk.rota';
const EMPTY_CHARGE = 50;

/** A class set of twelve on the afternoon of `today` for the next morning. */
export function firstPlan(today: string, tomorrow: string): Plan {
  return {
    capacity: 300,
    current: 200,
    ports: 6,
    charges: new Array<number>(12).fill(EMPTY_CHARGE),
    watched: [{ date: today, from: '13:00', to: '16:00' }],
    needed: { date: tomorrow, time: '08:00' },
  };
}

/** The plan of last time; undefined where there is none that can be read. */
export function keptPlan(): Plan | undefined {
  try {
    const read = Plan.safeParse(JSON.parse(keptText(KEPT) ?? ''));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}

/** A plan for days that are over, for today on: the hours of last week are those of this week. */
export function movedOn(plan: Plan, today: string): Plan {
  const first = [plan.needed.date, ...plan.watched.map(({ date }) => date)].toSorted()[0]!;
  const days = daysBetween(first, today);
  if (!(plan.needed.date < today) || Number.isNaN(days)) return plan;
  const move = <T extends { readonly date: string }>(one: T): T => ({
    ...one,
    date: daysAfter(one.date, days),
  });
  return { ...plan, watched: plan.watched.map(move), needed: move(plan.needed) };
}

export const keepPlan = (plan: Plan): void => keepText(KEPT, JSON.stringify(plan));

/** More robots begin half full, fewer are taken from the end. */
export function withRobots(plan: Plan, count: number): Plan {
  const wanted = Math.max(1, Math.min(MOST_ROBOTS, Math.floor(count)));
  const charges = Array.from({ length: wanted }, (_, i) => plan.charges[i] ?? EMPTY_CHARGE);
  return { ...plan, charges };
}

/** Minutes since midnight of `13:30`; an empty field counts as midnight, which no rota accepts. */
function minuteOf(time: string): number {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return hours * 60 + minutes;
}

export function rotaOf({ capacity, current, ports, charges, watched, needed }: Plan): RotaAnswer {
  return chargingRota({
    robots: charges.map((percent, i) => ({ robot: i + 1, capacity, charge: percent / 100 })),
    ports,
    current,
    watched: watched.map(({ date, from, to }) => ({ date, from: minuteOf(from), to: minuteOf(to) })),
    needed: { date: needed.date, minute: minuteOf(needed.time) },
  });
}
