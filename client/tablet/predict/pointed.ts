import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Choice, Question } from '../../../shared/documents/question.ts';
import { cos, sin } from '../../../shared/geometry/exact-math.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { middleOf } from '../../../shared/picture/replay.ts';
import type { Layout } from '../../../shared/track/layout.ts';
import type { Pointed } from '../../canvas/paint-question.ts';
import { paintRobot } from '../../canvas/paint-robot.ts';
import type { Painter } from '../../canvas/painter.ts';

type LooseEnd = Extract<Choice, { kind: 'loose-end' }>;
const isLooseEnd = (choice: Choice): choice is LooseEnd => choice.kind === 'loose-end';

/** What a sheet is looked at for: a question, or the place where a run goes wrong. */
export type Pointing =
  | WithoutId<Question>
  | { readonly kind: 'why'; readonly start: Question['start']; readonly at?: PaperPoint | undefined };

type WithoutId<Q extends Question> = Q extends Question ? Omit<Q, 'id'> : never;

/** Where a question is about something on the sheet. */
export function pointedBy(question: Pointing, { sheet }: Pick<Challenge, 'sheet'>, layout: Layout): Pointed {
  const areaOf = (id: string) => sheet.areas.find((area) => area.id === id)?.polygon ?? null;
  const nothing: Pointed = { at: null, area: null, letters: [] };
  switch (question.kind) {
    case 'why':
      return { ...nothing, at: question.at ?? null };
    case 'mark':
      return { ...nothing, at: middleOf(question.mark, layout) ?? null };
    case 'pace':
      return { ...nothing, area: areaOf(question.area) };
    case 'end':
      return { ...nothing, letters: question.choices.filter(isLooseEnd) };
    case 'how-many': {
      const { place } = question;
      if (place.kind === 'area') return { ...nothing, area: areaOf(place.area) };
      return { ...nothing, at: (place.berth === 'start' ? sheet.start : sheet.finish)?.at ?? null };
    }
  }
}

/** The traveller of a question as it would stand in its berth. */
export function travellerOf(
  { start }: Pointing,
  { sheet, kit }: Pick<Challenge, 'sheet' | 'kit'>,
): Painter | null {
  const berth = start === 'start' ? sheet.start : sheet.finish;
  if (!berth) return null;
  const heading = { x: cos(berth.heading), y: sin(berth.heading) };
  return paintRobot({ at: berth.at, heading }, kit.robot, {});
}
