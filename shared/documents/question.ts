import * as z from 'zod/mini';
import type { PaperPoint } from '../geometry/units.ts';
import type { Action, Pace } from './kit.ts';
import { Id } from './values.ts';

/** From which berth the traveller of a question sets out. */
const Traveller = z.enum(['start', 'finish']);

/** A named place where a robot can come to stand. */
export const StandingPlace = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('berth'), berth: Traveller }),
  z.strictObject({ kind: z.literal('area'), area: Id }),
]);

/** What a challenge of the way to play `predict` asks about the runs over what is given. */
export const Ask = z.discriminatedUnion('kind', [
  /** Where the run ends. */
  z.strictObject({ kind: z.literal('end'), start: Traveller }),
  /** What happens at each given mark: one question a mark. */
  z.strictObject({ kind: z.literal('marks'), start: Traveller }),
  /** At which pace the robot drives most of its way through an area. */
  z.strictObject({ kind: z.literal('pace'), start: Traveller, area: Id }),
  /** How many of so many robots are to be expected to end at a place. */
  z.strictObject({
    kind: z.literal('how-many'),
    start: Traveller,
    place: StandingPlace,
    of: z.int().check(z.gte(2), z.lte(100)),
  }),
]);

export type StandingPlace = z.output<typeof StandingPlace>;
export type Ask = z.output<typeof Ask>;
type Start = z.output<typeof Traveller>;

/** One answer that may be chosen. `key` stands for it in `Answers`. */
export type Choice = { readonly key: string } & (
  | StandingPlace
  /** An end of a line that lies in no named place; letters go from A in the order of the list. */
  | { readonly kind: 'loose-end'; readonly letter: string; readonly at: PaperPoint }
  | { readonly kind: 'action'; readonly action: Action }
  | { readonly kind: 'pace'; readonly pace: Pace }
  /** The robot never reads the mark, or never comes there. */
  | { readonly kind: 'never' }
  | { readonly kind: 'elsewhere' }
  /** Not the same in every run: the robot decides by itself. */
  | { readonly kind: 'chance' }
);

/** A question as it is put to a team. Ids are unique within the challenge and stable. */
export type Question = { readonly id: string; readonly start: Start } & (
  | { readonly kind: 'end'; readonly choices: readonly Choice[] }
  | { readonly kind: 'mark'; readonly mark: string; readonly choices: readonly Choice[] }
  | { readonly kind: 'pace'; readonly area: string; readonly choices: readonly Choice[] }
  | { readonly kind: 'how-many'; readonly place: StandingPlace; readonly of: number }
);
