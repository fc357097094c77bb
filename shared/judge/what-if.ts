import type { Challenge, Light } from '../documents/challenge.ts';
import type { Design, Mark } from '../documents/design.ts';
import type { OtherLight, WhatIf } from '../documents/what-if.ts';
import { fromOtherEnd } from './next-question.ts';
import type { OtherRobot } from './other-robot.ts';

/** What is driven, and by which robot; null is the undisturbed one. */
export interface Supposed {
  readonly challenge: Challenge;
  readonly design: Design;
  readonly robot: OtherRobot | null;
}

const NEUTRAL = { red: 1, green: 1, blue: 1 };
/**
 * Changes of light that marks are misread in and lines are not lost in (DEVELOPERS.md, "light since
 * calibration"): by 0.8 either way, and by 0.6 under a lamp with much red and little blue.
 */
const LIGHTS: Readonly<Record<OtherLight, Light>> = {
  brighter: { calibrated: 0.1, now: 0.9, tint: NEUTRAL },
  darker: { calibrated: 0.9, now: 0.1, tint: NEUTRAL },
  warmer: { calibrated: 0.1, now: 0.7, tint: { red: 2, green: 1, blue: 0.3 } },
};

/**
 * What is driven if one thing were otherwise; undefined where that changes nothing here: no other berth that a
 * robot could come from, no such band, or the ink that it has. Neither challenge nor design is touched, and
 * what comes back is always a design of its own.
 */
export function supposed(whatIf: WhatIf, challenge: Challenge, design: Design): Supposed | undefined {
  const own = { design: { ...design }, robot: null };
  switch (whatIf.kind) {
    case 'light':
      return { ...own, challenge: { ...challenge, light: LIGHTS[whatIf.light] } };
    case 'start': {
      const other = fromOtherEnd(challenge);
      return other && { ...own, challenge: other };
    }
    case 'weather':
      return { ...own, challenge, robot: { weather: whatIf.weather, seed: whatIf.robot } };
    case 'band':
      return withBand(whatIf, challenge, design);
  }
}

type BandChange = Extract<WhatIf, { kind: 'band' }>;

function withBand(change: BandChange, challenge: Challenge, design: Design): Supposed | undefined {
  const { sheet, kit } = challenge;
  if (!kit.inks.some(({ id }) => id === change.ink)) return undefined;
  const drawn = changed(design.drawing.marks, change);
  if (drawn)
    return { challenge, design: { ...design, drawing: { ...design.drawing, marks: drawn } }, robot: null };
  const given = changed(sheet.given.marks, change);
  if (!given) return undefined;
  const other = { ...sheet, given: { ...sheet.given, marks: given } };
  return { challenge: { ...challenge, sheet: other }, design: { ...design }, robot: null };
}

/** The marks with one band in another ink; undefined where there is no such band, or it has that ink. */
function changed(marks: readonly Mark[], { mark, band, ink }: BandChange): Mark[] | undefined {
  const before = marks.find(({ id }) => id === mark)?.bands[band];
  if (!before || before.ink === ink) return undefined;
  return marks.map((each) =>
    each.id === mark
      ? { ...each, bands: each.bands.map((one, i) => (i === band ? { ...one, ink } : one)) }
      : each,
  );
}
