import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { USUAL_CLOSING_QUESTIONS } from '../../../shared/documents/closing-check.ts';
import { lessonPlan, PERIOD, PLAN_PHASES } from '../../../shared/prep/lesson-plan.ts';
import '../../seed.ts';

const minutesOf = (period: number) => lessonPlan(period).phases.map(({ minutes }) => minutes);
const period = fc.integer({ min: PERIOD.least, max: PERIOD.most });

describe('lessonPlan', () => {
  it('of 45 minutes is the usual lesson, with three questions at its end', () => {
    expect(minutesOf(45)).toEqual([3, 4, 5, 13, 7, 8, 5]);
    expect(lessonPlan(45).questions).toBe(USUAL_CLOSING_QUESTIONS);
  });

  // By hand: two thirds of 3 4 5 13 7 8 5 are 2, 2.67, 3.33, 8.67, 4.67, 5.33, 3.33.
  it('of 30 minutes has two thirds of each, rounded', () => {
    expect(minutesOf(30)).toEqual([2, 3, 3, 9, 5, 5, 3]);
  });

  it('fits every period exactly, without holes, and leaves no phase out', () => {
    fc.assert(
      fc.property(period, (minutes) => {
        const { phases, questions } = lessonPlan(minutes);
        expect(phases.map(({ phase }) => phase)).toEqual(PLAN_PHASES);
        let at = 0;
        for (const phase of phases) {
          expect(phase.from).toBe(at);
          expect(phase.minutes).toBeGreaterThanOrEqual(2);
          at += phase.minutes;
          expect(phase.to).toBe(at);
        }
        expect(at).toBe(minutes);
        expect(questions).toBeGreaterThanOrEqual(2);
        expect(questions).toBeLessThanOrEqual(5);
      }),
    );
  });

  it('makes no phase shorter when the lesson gets longer', () => {
    fc.assert(
      fc.property(period, (minutes) => {
        if (minutes === PERIOD.most) return;
        const longer = minutesOf(minutes + 1);
        for (const [i, each] of minutesOf(minutes).entries()) expect(longer[i]).toBeGreaterThanOrEqual(each);
      }),
    );
  });
});
