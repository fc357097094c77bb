import type { Units } from '../documents/values.ts';

let said: Units = 'cm';
/** The units of the sentence that is being made. */
export const unitsNow = (): Units => said;

export type InBothUnits<Words> = Readonly<Record<Units, Words>>;
export const inBothUnits = <Words>(words: Words): InBothUnits<Words> => ({
  cm: inUnits(words, 'cm'),
  in: inUnits(words, 'in'),
});

/**
 * The same words with lengths in these units. Sentences are made at once, so whoever makes one sets the
 * units for that long; nothing is left set.
 */
function inUnits<Words>(words: Words, units: Units): Words {
  if (typeof words === 'function')
    return ((...values: unknown[]) => {
      const before = said;
      said = units;
      try {
        return words(...values);
      } finally {
        said = before;
      }
    }) as Words;
  if (typeof words !== 'object' || words === null || Array.isArray(words)) return words;
  const parts = Object.entries(words).map(([name, part]) => [name, inUnits<unknown>(part, units)]);
  return Object.fromEntries(parts) as Words;
}
