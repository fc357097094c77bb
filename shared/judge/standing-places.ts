import { type Drawing, EMPTY_DRAWING } from '../documents/design.ts';
import type { StandingPlace } from '../documents/question.ts';
import type { Sheet } from '../documents/sheet.ts';
import { distance } from '../geometry/exact-math.ts';
import { isInside } from '../geometry/polygon.ts';
import type { PaperPoint } from '../geometry/units.ts';
import { canonicalDrawing } from '../track/canonical.ts';

/** The berth or area that a point lies in: the finish first, then the start, then areas as listed. */
export function placeNamed(sheet: Sheet, at: PaperPoint): StandingPlace | undefined {
  const { finish, start, areas } = sheet;
  if (finish && distance(finish.at, at) <= finish.r) return { kind: 'berth', berth: 'finish' };
  if (distance(start.at, at) <= start.r) return { kind: 'berth', berth: 'start' };
  const area = areas.find(({ polygon }) => isInside(polygon, at));
  return area && { kind: 'area', area: area.id };
}

/** Nothing drawn on what is given, in the form that is driven. */
export const canonicalGiven = ({ given }: Sheet): Drawing => canonicalDrawing(EMPTY_DRAWING, given);
