import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movedOn, type Plan, rotaOf } from '../../client/desk/rota-plan.ts';
import { datesIn, daysAfter, daysBetween, localDate, offsetAt } from '../../client/parts/dates.ts';
import { dateOf } from '../../server/http/evidence.ts';
import { DAY } from '../../shared/prep/rota.ts';
import '../seed.ts';

/**
 * Two zones by their rules, not by a table: Madrid and Lisbon as Directive 2000/84/EC has it (summer time
 * from the last Sunday of March to the last of October, at 1:00 UTC), Sydney as the Standard Time Act 1987
 * of New South Wales has it (from the first Sunday of October to the first of April, at 2:00 standard
 * time, 16:00 UTC of the day before; from memory).
 */
const HOUR = 3_600_000;
const MINUTE = 60_000;

/** The nth Sunday of a month (0-based), or the last one. */
function sunday(year: number, month: number, which: 'first' | 'last'): number {
  const day = which === 'first' ? new Date(Date.UTC(year, month, 1)) : new Date(Date.UTC(year, month + 1, 0));
  const off = which === 'first' ? (7 - day.getUTCDay()) % 7 : -day.getUTCDay();
  return day.getTime() + off * 24 * HOUR;
}

const european = (standard: number) => (at: number) => {
  const year = new Date(at).getUTCFullYear();
  const summer = at >= sunday(year, 2, 'last') + HOUR && at < sunday(year, 9, 'last') + HOUR;
  return standard + (summer ? HOUR : 0);
};
const sydney = (at: number) => {
  const year = new Date(at).getUTCFullYear();
  const winter = at >= sunday(year, 3, 'first') - 8 * HOUR && at < sunday(year, 9, 'first') - 8 * HOUR;
  return 10 * HOUR + (winter ? 0 : HOUR);
};

const ZONES = [
  ['Europe/Madrid', european(HOUR)],
  ['Europe/Lisbon', european(0)],
  ['Australia/Sydney', sydney],
] as const;

/** Wall-clock time of a moment, as if it were UTC. */
const wall = (at: number, offset: (at: number) => number) => new Date(at + offset(at));

const YEARS = { min: Date.UTC(2026, 0, 1), max: Date.UTC(2031, 0, 1) };
const moment = fc.integer(YEARS).map((at) => at - (at % MINUTE));
/** Within three hours of a change of clocks, where mistakes would be. */
const nearChange = fc
  .tuple(
    fc.integer({ min: 2026, max: 2030 }),
    fc.constantFrom([2, 'last'], [9, 'last'], [3, 'first'], [9, 'first'] as const),
    fc.integer({ min: -11 * 60, max: 4 * 60 }),
  )
  .map(
    ([year, [month, which], minutes]) => sunday(year, month as number, which as 'last') + minutes * MINUTE,
  );
const anyMoment = fc.oneof(moment, nearChange);

describe.each(ZONES)('in %s', (zone, offset) => {
  it('the log shows the wall clock, in both hours that have the same name', () => {
    const dates = datesIn('en-GB', zone);
    fc.assert(
      fc.property(anyMoment, (at) => {
        const clock = wall(at, offset).toISOString();
        expect(dates.time(at)).toBe(clock.slice(11, 16));
        expect(dates.moment(at)).toContain(clock.slice(11, 16));
        expect(dates.moment(at)).toContain(String(Number(clock.slice(8, 10))));
      }),
    );
  });

  it('localDate is the day of the wall clock', () => {
    fc.assert(
      fc.property(anyMoment, (at) => {
        expect(localDate(at, zone)).toBe(wall(at, offset).toISOString().slice(0, 10));
      }),
    );
  });

  it('the server that is told the offset names the same day', () => {
    fc.assert(
      fc.property(anyMoment, (at) => {
        expect(offsetAt(at, zone)).toBe(offset(at) / MINUTE);
        const openedAt = at + 59_999;
        expect(dateOf({ openedAt }, String(offsetAt(openedAt, zone)))).toBe(localDate(openedAt, zone));
      }),
    );
  });

  it('tomorrow is the next day, also where the day has 23 or 25 hours', () => {
    fc.assert(
      fc.property(anyMoment, (at) => {
        const today = localDate(at, zone);
        // From noon on, 24 hours later is the next day whatever the clocks do in the night.
        const noon = Date.parse(`${today}T12:00:00Z`) - offset(at);
        expect(daysAfter(today, 1)).toBe(localDate(noon + 24 * HOUR, zone));
        expect(daysBetween(today, daysAfter(today, 40))).toBe(40);
      }),
    );
  });

  it('no clock changes between the hours in which robots may charge, so that an hour is an hour', () => {
    fc.assert(
      fc.property(anyMoment, (at) => {
        const midnight = Date.parse(`${localDate(at, zone)}T00:00:00Z`);
        const utc = (minutes: number) => {
          const there = midnight + minutes * MINUTE;
          return there - offset(there - offset(there));
        };
        expect(utc(DAY.to) - utc(DAY.from)).toBe((DAY.to - DAY.from) * MINUTE);
      }),
    );
  });
});

describe('the rota', () => {
  const plan = (date: string): Plan => ({
    capacity: 600,
    current: 300,
    ports: 2,
    charges: [50, 50, 0],
    watched: [
      { date, from: '13:00', to: '15:00' },
      { date: daysAfter(date, 1), from: '07:00', to: '09:00' },
    ],
    needed: { date: daysAfter(date, 1), time: '10:00' },
  });
  const anyDate = anyMoment.map((at) => localDate(at, 'Europe/Madrid'));
  /** A rota without its dates. */
  const bare = (one: Plan) => JSON.stringify(rotaOf(one)).replaceAll(/\d{4}-\d\d-\d\d/g, 'DATE');

  it('is the same on every day of the year', () => {
    fc.assert(
      fc.property(anyDate, anyDate, (a, b) => {
        expect(bare(plan(a))).toBe(bare(plan(b)));
      }),
    );
  });

  it('of days that are over moves on to today with its hours, and stays where it is still to come', () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -400, max: 400 }), (today, days) => {
        const before = plan(daysAfter(today, days));
        const moved = movedOn(before, today);
        expect(moved).toEqual(before.needed.date >= today ? before : plan(today));
      }),
    );
  });
});
