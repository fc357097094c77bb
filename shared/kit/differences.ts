import type { Kit } from '../documents/kit.ts';
import { differences, leastOf, type SeenDifference } from './colour.ts';
import type { ColourPlace, KitPath } from './kit-problem.ts';

/** Colours of a kit closer than this (CIEDE2000) are easily taken for one another. Chosen: the demo kit keeps 21. */
export const COLOURS_APART = 20;

/** The paper that everything is drawn on. */
export const PAPER_COLOUR = '#FFFFFF';

/** Two colours of a kit and how far apart they are. */
export interface PairDifferences {
  readonly one: ColourPlace;
  readonly two: ColourPlace;
  /** Where the second of them is written in the kit. */
  readonly path: KitPath;
  /** In each of LOOKS. */
  readonly seen: readonly SeenDifference[];
  readonly least: SeenDifference;
}

interface Coloured {
  readonly place: ColourPlace;
  readonly color: string;
  readonly path: KitPath;
}

type Colours = Pick<Kit, 'line' | 'inks'>;

const coloursOf = ({ line, inks }: Colours): Coloured[] => [
  { place: 'paper', color: PAPER_COLOUR, path: ['line', 'color'] },
  { place: 'line', color: line.color, path: ['line', 'color'] },
  ...inks.map(({ id, color }, i): Coloured => ({ place: { ink: id }, color, path: ['inks', i, 'color'] })),
];

/** Every two colours of a kit, paper and line among them, and how far apart each kind of sight has them. */
export function pairDifferences(kit: Colours): PairDifferences[] {
  const colours = coloursOf(kit);
  return colours.flatMap((two, k) =>
    colours.slice(0, k).map((one): PairDifferences => {
      const seen = differences(one.color, two.color);
      return { one: one.place, two: two.place, path: two.path, seen, least: leastOf(seen) };
    }),
  );
}
