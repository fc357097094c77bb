import type { Ink, Kit } from '../documents/kit.ts';

/**
 * Other colours for a kit's inks on a screen, for eyes that tell these apart more easily: the first for
 * its first ink, and so on. They differ from each other, from the line and from paper by more than 21
 * (CIEDE2000) for normal and colour-deficient sight. Paper, rules and robot know only the kit's own.
 */
export const SCREEN_INKS: readonly Pick<Ink, 'name' | 'color'>[] = [
  { name: { en: 'amber', es: 'ámbar' }, color: '#FFA500' },
  { name: { en: 'blue', es: 'azul' }, color: '#1E7CB5' },
  { name: { en: 'brown', es: 'marrón' }, color: '#745516' },
];

/**
 * The kit as a screen with the other colours shows it: the name says the colour that is seen and the
 * letter that the ink has on paper. Letters and hatches stay. A kit with more inks than there are other
 * colours stays as it is: nobody has looked at a mixture of both.
 */
export function withScreenInks(kit: Kit): Kit {
  if (kit.inks.length > SCREEN_INKS.length) return kit;
  const inks = kit.inks.map((ink, place) => {
    const { name, color } = SCREEN_INKS[place]!;
    return { ...ink, color, name: { en: `${name.en} (${ink.id})`, es: `${name.es} (${ink.id})` } };
  });
  return { ...kit, inks };
}
