import { expect, test } from 'vitest';
import { Kit } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { differences, leastOf } from '../../../shared/kit/colour.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SCREEN_INKS, withScreenInks } from '../../../shared/kit/screen-inks.ts';
import { KITS } from '../../kits.ts';

/** Least CIEDE2000 difference that the demo kit's own inks have, over all sights and both conventions. */
const APART = 21;

test('the other colours keep more than 21 from each other, every line and paper, for every kind of sight', () => {
  const inks = SCREEN_INKS.map(({ color }) => color);
  const pairs = inks.flatMap((two, k) => [
    ...inks.slice(0, k).map((one) => [one, two] as const),
    ...['#FFFFFF', ...KITS.map((kit) => kit.line.color)].map((one) => [one, two] as const),
  ]);
  expect(pairs).toHaveLength(3 + 3 * (1 + KITS.length));
  for (const [one, two] of pairs)
    expect(leastOf(differences(one, two)).difference, `${one} ${two}`).toBeGreaterThan(APART);
});

test.each(KITS)('withScreenInks leaves all of the kit $id but the colours and names of its inks', (kit) => {
  const shown = withScreenInks(kit);
  expect(parseDocument(Kit, JSON.parse(JSON.stringify(writeDocument(Kit, shown)))).ok).toBe(true);
  const apartFromColours = (one: Kit) => ({ ...one, inks: one.inks.map(({ id, hatch }) => [id, hatch]) });
  expect(apartFromColours(shown)).toEqual(apartFromColours(kit));
});

test('an ink is called by what is seen and by its letter', () => {
  const { inks } = withScreenInks(DEMO_KIT);
  expect(inks.map(({ color }) => color)).toEqual(['#FFA500', '#1E7CB5', '#745516']);
  expect(inks.map(({ name }) => name.en)).toEqual(['amber (C)', 'blue (A)', 'brown (V)']);
  expect(inks.map(({ name }) => name.es)).toEqual(['ámbar (C)', 'azul (A)', 'marrón (V)']);
});

test('a kit of two inks takes the first two colours, one of four stays as it is', () => {
  const [coral, aqua, violet] = DEMO_KIT.inks;
  const two = { ...DEMO_KIT, inks: [violet!, coral!] };
  expect(withScreenInks(two).inks.map(({ id, color }) => [id, color])).toEqual([
    ['V', '#FFA500'],
    ['C', '#1E7CB5'],
  ]);
  const four = { ...DEMO_KIT, inks: [coral!, aqua!, violet!, { ...coral!, id: 'G' }] };
  expect(withScreenInks(four)).toBe(four);
});
