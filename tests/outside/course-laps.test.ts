import { describe, expect, it } from 'vitest';
import { drive } from '../../shared/run/drive.ts';
import { UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import { type Course, courses } from '../courses.ts';
import { referenceIsHere, skippedWithoutReference } from '../reference.ts';

// Source: contest courses transcribed in kyamashita5/robotrace_course_cad (MIT), commit 8daa822; the
// second transcription, kyamashita5/robotrace_course, gives lengths without the 1 m from start to goal; the
// sixth course that it shares with the first (2015) is not among the data here.
const SECOND_TRANSCRIPTION_CM: Readonly<Record<string, number>> = {
  '2016alljapan': 3900.7 + 100,
  '2017alljapan': 3665.0 + 100,
  '2018alljapan': 3148.6 + 100,
  '2018student': 2888.7 + 100,
  '2019kansai': 1370.3 + 100,
};

function lap(course: Course) {
  const world = worldOf(layOut(course.sheet, course.drawing), course.sheet, course.kit);
  const trace = drive(world, { ...UNDISTURBED, limit: course.limit });
  const home = trace.events.find((event) => event.kind === 'finish');
  // At the finish the axle is on the berth's rim, a radius short of where it started.
  return { trace, way: (home?.way ?? 0) + course.sheet.start.r };
}

describe.skipIf(!referenceIsHere)(`a lap of a real course${skippedWithoutReference}`, () => {
  const all = referenceIsHere ? courses() : [];

  it.each(all)('$name: the ideal run follows it, and its way is the published length', (course) => {
    const { trace, way } = lap(course);
    expect(trace.ending).toBe('finished');
    expect(Math.abs(way / course.length - 1)).toBeLessThan(0.005);
    const paces = new Set(trace.samples.pace);
    expect([...paces]).toEqual([1]);
    // Every crossing is passed twice a lap, straight on; nothing else looks like a junction or a mark.
    const kinds = trace.events.map((event) => (event.kind === 'junction' ? event.took : event.kind));
    expect(kinds).toEqual([...course.crossings.flatMap(() => ['straight', 'straight']), 'finish', 'end']);
  });

  it.each(all.filter((course) => course.name in SECOND_TRANSCRIPTION_CM))(
    '$name: its way agrees with the second transcription',
    (course) => {
      const stated = SECOND_TRANSCRIPTION_CM[course.name]! * course.scale;
      expect(Math.abs(lap(course).way / stated - 1)).toBeLessThan(0.005);
    },
  );
});
