import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shortestSchedule } from '../../../shared/prep/makespan.ts';
import { type ChargingQuestion, chargingRota, type Rota, type Watched } from '../../../shared/prep/rota.ts';
import '../../seed.ts';

const MONDAY = '2027-03-01';
const TUESDAY = '2027-03-02';
const at = (hours: number, minutes = 0) => hours * 60 + minutes;
const hours = (date: string, from: number, to: number): Watched => ({ date, from, to });

/** Robots of 600 mAh at 300 mA: 166 minutes from empty, 106 from half, 0 when full (see the charging test). */
const robots = (...charges: number[]) =>
  charges.map((charge, i) => ({ robot: i + 1, capacity: 600, charge }));
const question = (over: Partial<ChargingQuestion>): ChargingQuestion => ({
  robots: robots(0.5, 0.5),
  ports: 2,
  current: 300,
  watched: [hours(MONDAY, at(13), at(17))],
  needed: { date: TUESDAY, minute: at(9) },
  ...over,
});

function rotaOf(over: Partial<ChargingQuestion>): Rota {
  const answer = chargingRota(question(over));
  if (!answer.ok) throw new Error(answer.refusal.code);
  return answer.rota;
}

describe('chargingRota', () => {
  test('a port each: both charge at once', () => {
    expect(rotaOf({})).toMatchObject({
      turns: [
        { robot: 1, port: 1, minutes: 106, parts: [hours(MONDAY, at(13), at(14, 46))] },
        { robot: 2, port: 2, minutes: 106, parts: [hours(MONDAY, at(13), at(14, 46))] },
      ],
      finish: { date: MONDAY, minute: at(14, 46) },
      notReady: [],
      length: 106,
      optimal: true,
    });
  });

  test('one port: one after the other, unplugged where nobody watches', () => {
    const watched = [hours(TUESDAY, at(7), at(9)), hours(MONDAY, at(13), at(15))];
    const { turns, finish } = rotaOf({ ports: 1, watched });
    expect(turns.map(({ parts }) => parts)).toEqual([
      [hours(MONDAY, at(13), at(14, 46))],
      [hours(MONDAY, at(14, 46), at(15)), hours(TUESDAY, at(7), at(8, 32))],
    ]);
    expect(finish).toEqual({ date: TUESDAY, minute: at(8, 32) });
  });

  test('hours that end too early: as many as can be are ready, the rest is named with what it needs', () => {
    const { turns, notReady, optimal } = rotaOf({ robots: robots(0, 0.5, 0.5), ports: 1 });
    expect(turns.map(({ robot }) => robot)).toEqual([2, 3]);
    expect(notReady).toEqual([{ robot: 1, minutes: 166 }]);
    expect(optimal).toBe(true);
  });

  test('hours after the lesson do not count', () => {
    const late = rotaOf({
      watched: [hours(MONDAY, at(13), at(17))],
      needed: { date: MONDAY, minute: at(14) },
    });
    expect(late.turns).toEqual([]);
    expect(late.notReady).toHaveLength(2);
    expect(late.finish).toBeNull();
  });

  test('a full robot takes no turn', () => {
    const { fullAlready, turns } = rotaOf({ robots: robots(1, 0.5) });
    expect(fullAlready).toEqual([1]);
    expect(turns.map(({ robot }) => robot)).toEqual([2]);
  });

  test.each([
    ['nobody watches', { watched: [] }, 'nobody-watches'],
    ['all hours are after the lesson', { needed: { date: MONDAY, minute: at(8) } }, 'nobody-watches'],
    ['hours go on into the night', { watched: [hours(MONDAY, at(20), at(23))] }, 'at-night'],
    ['hours begin before the day', { watched: [hours(MONDAY, at(5), at(9))] }, 'at-night'],
    ['hours end before they begin', { watched: [hours(MONDAY, at(20), at(7))] }, 'hours-backwards'],
    [
      'hours overlap',
      { watched: [hours(MONDAY, at(12), at(14)), hours(MONDAY, at(8), at(13))] },
      'hours-overlap',
    ],
    ['there is no port', { ports: 0 }, 'bad-number'],
    ['a charge is over the whole', { robots: robots(1.2) }, 'bad-number'],
    [
      'there are more robots than the search is made for',
      { robots: robots(...new Array(61).fill(0)) },
      'too-many-robots',
    ],
  ] as const)('is refused where %s', (_, over, code) => {
    expect(chargingRota(question(over as Partial<ChargingQuestion>))).toMatchObject({
      ok: false,
      refusal: { code },
    });
  });

  test('over any class: a port has one robot at a time, within watched hours, as long as it needs', () => {
    const charge = fc.integer({ min: 0, max: 100 }).map((n) => n / 100);
    fc.assert(
      fc.property(fc.array(charge, { maxLength: 40 }), fc.integer({ min: 1, max: 12 }), (charges, ports) => {
        const watched = [hours(MONDAY, at(13), at(17)), hours(TUESDAY, at(7), at(9))];
        const { turns, fullAlready, notReady } = rotaOf({ robots: robots(...charges), ports, watched });
        expect(turns.length + fullAlready.length + notReady.length).toBe(charges.length);
        const last = new Map<number, string>();
        for (const { port, minutes, parts } of turns) {
          expect(parts.reduce((sum, { from, to }) => sum + to - from, 0)).toBe(minutes);
          for (const part of parts) {
            const home = watched.find(({ date }) => date === part.date)!;
            expect(part.from >= home.from && part.to <= home.to && part.from < part.to).toBe(true);
            const [starts, ends] = [part.from, part.to].map(
              (m) => `${part.date} ${String(m).padStart(4, '0')}`,
            );
            expect((last.get(port) ?? '') <= starts!).toBe(true);
            last.set(port, ends!);
          }
        }
      }),
    );
  });
});

describe('shortestSchedule over any jobs', () => {
  /** The least makespan by trying everything. */
  function least(times: readonly number[], loads: number[]): number {
    const [first, ...rest] = times;
    if (first === undefined) return Math.max(...loads);
    return Math.min(
      ...loads.map((_, m) =>
        least(
          rest,
          loads.map((load, i) => (i === m ? load + first : load)),
        ),
      ),
    );
  }

  test('is the least of all assignments, and proved', () => {
    const times = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(times, fc.integer({ min: 1, max: 3 }), (jobs, machines) => {
        const { makespan, optimal } = shortestSchedule(jobs, machines);
        expect(makespan).toBe(least(jobs, new Array<number>(machines).fill(0)));
        expect(optimal).toBe(true);
      }),
    );
  });
});
