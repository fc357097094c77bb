import { degrees } from '../geometry/exact-math.ts';
import type { Start } from '../track/start.ts';
import type { Draft, Rule } from './context.ts';
import { findingAt, lengths, pointPlace } from './findings.ts';

/** A robot in its berth has line under its bar, and the line leads out as the robot faces. */
export const startOnLine: Rule = {
  id: 'R-start-on-line',
  check: ({ departures, drawing }) =>
    // Before the first line is drawn, that there is none is no fault of the drawing.
    drawing.lines.length === 0 ? [] : departures.flatMap(({ start }) => checkStart(start)),
};

function checkStart(start: Start): Draft[] {
  if (start.kind === 'on') return [];
  if (start.kind === 'across') {
    const finding = findingAt('R-start-on-line', pointPlace(start.bar), {
      variant: 'across',
      severity: 'may-stop',
      measured: degrees(start.turn),
      allowed: degrees(start.allowed),
      unit: 'degrees',
      remedy: 'lead-out',
    });
    return [{ finding }];
  }
  const finding = findingAt('R-start-on-line', pointPlace(start.bar), {
    variant: 'no-line',
    severity: 'stops',
    ...(start.off === undefined ? {} : lengths(start.off, start.allowed)),
    remedy: 'draw-from-berth',
  });
  return [{ finding }];
}
