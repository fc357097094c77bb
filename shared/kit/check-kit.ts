import { type Kit, PACES, reversed } from '../documents/kit.ts';
import { leastDifference, type SeenDifference } from './colour.ts';
import { isTwoWay } from './words.ts';

/** Colours of a kit closer than this (CIEDE2000) are easily taken for one another. Chosen: the demo kit keeps 21. */
export const COLOURS_APART = 20;

/** The paper that everything is drawn on. */
export const PAPER_COLOUR = '#FFFFFF';

/** What a colour stands for in a finding: an ink's letter, the line, or the paper. */
export type ColourPlace = { readonly ink: string } | 'line' | 'paper';

interface OfWord {
  readonly word: string;
}

type Found =
  | (OfWord & { readonly code: 'word-twice'; readonly first: number })
  | (OfWord & { readonly code: 'reverse-without-meaning'; readonly reverse: string })
  | (OfWord & { readonly code: 'equal-neighbours' })
  | (OfWord & { readonly code: 'two-way-turns-back' })
  | (OfWord & { readonly code: 'ink-not-in-kit'; readonly ink: string })
  | (OfWord & { readonly code: 'too-few-bands'; readonly least: number })
  | (OfWord & { readonly code: 'too-many-bands'; readonly most: number })
  | { readonly code: 'ink-letter-twice'; readonly ink: string }
  | { readonly code: 'size-zero' }
  | (SeenDifference & {
      readonly code: 'colours-too-close';
      readonly one: ColourPlace;
      readonly two: ColourPlace;
      readonly least: number;
    });

/**
 * What is wrong in a kit, and where in the document. `wrong` makes the chart ambiguous or a trap;
 * `caution` is for a person to weigh: inks also carry letters and hatches.
 */
export type KitProblem = Found & {
  readonly path: readonly (string | number)[];
  readonly severity: 'wrong' | 'caution';
};

/** Everything that a kit's robot, inks and chart get wrong, in the order of the document. */
export function checkKit(kit: Kit): KitProblem[] {
  return [
    ...sizeProblems(kit),
    ...inkProblems(kit),
    ...colourProblems(kit),
    ...kit.chart.flatMap((_, i) => rowProblems(kit, i)),
  ];
}

/** Lengths that the robot's motion and its reader divide by or wait for. */
const SIZES = [
  'width',
  'length',
  'wheelTrack',
  'barAhead',
  'sensorPitch',
  'topWheelSpeed',
  'bandUnit',
] as const;

/** Sizes and speeds of the robot that are 0, which no robot has and nothing can be driven with. */
export function sizeProblems({ robot }: Kit): KitProblem[] {
  const zero = (path: readonly string[]): KitProblem => ({ code: 'size-zero', path, severity: 'wrong' });
  return [
    ...SIZES.filter((size) => robot[size] <= 0).map((size) => zero(['robot', size])),
    ...PACES.filter((pace) => robot.paces[pace] <= 0).map((pace) => zero(['robot', 'paces', pace])),
  ];
}

function inkProblems({ inks }: Kit): KitProblem[] {
  return inks.flatMap(({ id }, i) =>
    inks.findIndex((ink) => ink.id === id) < i
      ? [{ code: 'ink-letter-twice', ink: id, path: ['inks', i, 'id'], severity: 'wrong' } as const]
      : [],
  );
}

function colourProblems(kit: Kit): KitProblem[] {
  const colours = [
    { place: 'paper' as ColourPlace, color: PAPER_COLOUR, path: ['line', 'color'] },
    { place: 'line' as ColourPlace, color: kit.line.color, path: ['line', 'color'] },
    ...kit.inks.map(({ id, color }, i) => ({
      place: { ink: id } as ColourPlace,
      color,
      path: ['inks', i, 'color'],
    })),
  ];
  return colours.flatMap((two, k) =>
    colours.slice(0, k).flatMap((one): KitProblem[] => {
      const least = leastDifference(one.color, two.color);
      if (least.difference >= COLOURS_APART) return [];
      const places = { one: one.place, two: two.place, path: two.path };
      return [{ code: 'colours-too-close', ...least, ...places, least: COLOURS_APART, severity: 'caution' }];
    }),
  );
}

function rowProblems(kit: Kit, row: number): KitProblem[] {
  const { word, action } = kit.chart[row]!;
  const { least, most } = kit.rules.bands;
  const meaningOf = (other: string): number => kit.chart.findIndex((r) => r.word === other);
  const found: Found[] = [];
  const first = meaningOf(word);
  const reverse = reversed(word);
  if (first < row) found.push({ code: 'word-twice', word, first });
  if (meaningOf(reverse) < 0) found.push({ code: 'reverse-without-meaning', word, reverse });
  if (!kit.equalNeighbours && /(.)\1/.test(word)) found.push({ code: 'equal-neighbours', word });
  if (isTwoWay(word) && action.kind === 'turn-back') found.push({ code: 'two-way-turns-back', word });
  for (const ink of new Set(word)) {
    if (!kit.inks.some(({ id }) => id === ink)) found.push({ code: 'ink-not-in-kit', word, ink });
  }
  if (word.length < least) found.push({ code: 'too-few-bands', word, least });
  if (word.length > most) found.push({ code: 'too-many-bands', word, most });
  return found.map((f) => ({ ...f, path: ['chart', row, 'word'], severity: 'wrong' }));
}
