import { type Battery, type Minutes, minutesToFull } from './charging.ts';
import { lowerBound, type Schedule, shortestSchedule } from './makespan.ts';

/**
 * Who charges where and when, only while somebody watches. Times are wall-clock minutes of a local date, so
 * nothing depends on a time zone; a change of the clocks falls into the night, when nothing may charge.
 */

export interface RobotToCharge extends Battery {
  /** The number on the robot. */
  readonly robot: number;
}

/** Hours in which somebody stays with the charger. */
export interface Watched {
  /** ISO 8601 date, as `2027-03-01`. */
  readonly date: string;
  /** Minutes since midnight, `from` before `to`. */
  readonly from: Minutes;
  readonly to: Minutes;
}

export interface Moment {
  readonly date: string;
  readonly minute: Minutes;
}

export interface ChargingQuestion {
  readonly robots: readonly RobotToCharge[];
  readonly ports: number;
  /** What a port gives one robot, mA. */
  readonly current: number;
  readonly watched: readonly Watched[];
  readonly needed: Moment;
}

export interface Turn {
  readonly robot: number;
  /** From 1. */
  readonly port: number;
  readonly minutes: Minutes;
  /** Where hours end before the robot is full it is unplugged, and goes on in the next hours. */
  readonly parts: readonly Watched[];
}

export interface Rota {
  /** By port, then time. */
  readonly turns: readonly Turn[];
  readonly fullAlready: readonly number[];
  /** Those that need longest; where `optimal`, no plan leaves out fewer. */
  readonly notReady: readonly { readonly robot: number; readonly minutes: Minutes }[];
  readonly finish: Moment | null;
  /** Watched minutes that the turns take, and what no plan for these robots can go below. */
  readonly length: Minutes;
  readonly bound: Minutes;
  /** Proved: no plan makes more robots ready, and none these in less time. */
  readonly optimal: boolean;
}

/** Why there is no rota; each is a sentence in `wording`. */
export type RotaRefusal =
  | { readonly code: 'nobody-watches' }
  | { readonly code: 'at-night'; readonly watched: Watched }
  | { readonly code: 'hours-overlap'; readonly watched: Watched }
  | { readonly code: 'hours-backwards'; readonly watched: Watched }
  | { readonly code: 'too-many-robots'; readonly most: number }
  | { readonly code: 'bad-number'; readonly robot: number | null };

export type RotaAnswer =
  | { readonly ok: true; readonly rota: Rota }
  | { readonly ok: false; readonly refusal: RotaRefusal };

/** One class and its spares; what the search is made for. */
export const MOST_ROBOTS = 60;
/** Nobody is taken to be awake and beside a charger outside these hours. */
export const DAY = { from: 6 * 60, to: 22 * 60 } as const;

const refused = (refusal: RotaRefusal): RotaAnswer => ({ ok: false, refusal });

/** The plan that makes as many robots ready as can be, and these in the least time. */
export function chargingRota(question: ChargingQuestion): RotaAnswer {
  const refusal = refusalOf(question);
  if (refusal) return refused(refusal);
  const hours = hoursBefore(question.needed, inOrder(question.watched));
  if (hours.length === 0) return refused({ code: 'nobody-watches' });
  const needs = question.robots.map(({ robot, ...battery }) => ({
    robot,
    minutes: minutesToFull(battery, question.current),
  }));
  const toCharge = needs.filter(({ minutes }) => minutes > 0).sort((a, b) => a.minutes - b.minutes);
  const time = hours.reduce((sum, { from, to }) => sum + to - from, 0);
  const { ready, schedule, proved } = mostReady(toCharge, question.ports, time);
  const turns = turnsOf(ready, schedule, hours);
  const rota: Rota = {
    turns,
    fullAlready: needs.filter(({ minutes }) => minutes === 0).map(({ robot }) => robot),
    notReady: toCharge.slice(ready.length),
    finish: lastMoment(turns),
    length: schedule.makespan,
    bound: schedule.bound,
    optimal: schedule.optimal && proved,
  };
  return { ok: true, rota };
}

function refusalOf({ robots, ports, current, watched }: ChargingQuestion): RotaRefusal | undefined {
  if (robots.length > MOST_ROBOTS) return { code: 'too-many-robots', most: MOST_ROBOTS };
  if (!Number.isInteger(ports) || ports < 1 || !(current > 0)) return { code: 'bad-number', robot: null };
  const bad = robots.find(({ capacity, charge }) => !(capacity > 0 && charge >= 0 && charge <= 1));
  if (bad) return { code: 'bad-number', robot: bad.robot };
  if (watched.length === 0) return { code: 'nobody-watches' };
  for (const hours of watched) {
    if (hours.to <= hours.from) return { code: 'hours-backwards', watched: hours };
    if (hours.from < DAY.from || hours.to > DAY.to) return { code: 'at-night', watched: hours };
  }
  const sorted = inOrder(watched);
  const overlap = sorted.find((hours, i) => {
    const before = sorted[i - 1];
    return before?.date === hours.date && before.to > hours.from;
  });
  return overlap && { code: 'hours-overlap', watched: overlap };
}

const inOrder = (watched: readonly Watched[]): Watched[] =>
  [...watched].sort((a, b) => (a.date === b.date ? a.from - b.from : a.date < b.date ? -1 : 1));

/** What of the hours lies before the moment; ISO dates compare as text. */
function hoursBefore({ date, minute }: Moment, watched: readonly Watched[]): Watched[] {
  return watched
    .filter((hours) => hours.date < date || (hours.date === date && hours.from < minute))
    .map((hours) => (hours.date === date ? { ...hours, to: Math.min(hours.to, minute) } : hours));
}

interface Need {
  readonly robot: number;
  readonly minutes: Minutes;
}

/**
 * The most robots that can be ready within `time`. If any k robots can, the k that need least can, since each
 * may take the turn of another that needs longer; so the number is found by halving.
 */
function mostReady(needs: readonly Need[], ports: number, time: Minutes) {
  let best = 0;
  let schedule = shortestSchedule([], ports);
  let tooMany = needs.length + 1;
  let proved = true;
  for (let count = needs.length; count > best; count = Math.floor((best + tooMany) / 2)) {
    const times = needs.slice(0, count).map(({ minutes }) => minutes);
    const tried = lowerBound(times, ports) > time ? undefined : shortestSchedule(times, ports);
    if (tried && tried.makespan <= time) {
      best = count;
      schedule = tried;
    } else {
      tooMany = count;
      proved = !tried || tried.bound > time;
    }
  }
  return { ready: needs.slice(0, best), schedule, proved };
}

function turnsOf(ready: readonly Need[], schedule: Schedule, hours: readonly Watched[]): Turn[] {
  return schedule.machines.flatMap((jobs, port) => {
    let at = 0;
    return jobs.map((job) => {
      const { robot, minutes } = ready[job]!;
      const turn = { robot, port: port + 1, minutes, parts: partsOf(hours, at, at + minutes) };
      at += minutes;
      return turn;
    });
  });
}

/** Watched minutes `from` to `to`, counted over all hours, as wall-clock parts. */
function partsOf(hours: readonly Watched[], from: Minutes, to: Minutes): Watched[] {
  const parts: Watched[] = [];
  let before = 0;
  for (const { date, from: opens, to: closes } of hours) {
    const start = Math.max(from - before, 0);
    const end = Math.min(to - before, closes - opens);
    if (start < end) parts.push({ date, from: opens + start, to: opens + end });
    before += closes - opens;
  }
  return parts;
}

function lastMoment(turns: readonly Turn[]): Moment | null {
  const ends = turns.map(({ parts }) => parts.at(-1)!);
  const last = inOrder(ends.map(({ date, to }) => ({ date, from: to, to }))).at(-1);
  return last ? { date: last.date, minute: last.to } : null;
}
