import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import { type Locale, type Texts, textIn } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';

/** Those that can be played with a kit, by their keys; worked out once a kit. */
const PLAYABLE = new WeakMap<Kit, ReadonlyMap<string, Challenge>>();

const TITLES: ReadonlyMap<string, Texts> = new Map(
  readyChallenges(DEMO_KIT).map(({ key, title }) => [key, title]),
);

function playable(kit: Kit): ReadonlyMap<string, Challenge> {
  const known = PLAYABLE.get(kit);
  if (known) return known;
  const found = new Map(
    readyChallenges(kit).flatMap((ready) => (ready.playable ? [[ready.key, ready.challenge] as const] : [])),
  );
  PLAYABLE.set(kit, found);
  return found;
}

/** A ready challenge by its key, made for a kit, the demo kit where none is named; undefined also where the kit can't play it. */
export const readyChallenge = (key: string, kit: Kit = DEMO_KIT): Challenge | undefined =>
  playable(kit).get(key);

/** What a ready challenge is called; undefined for a key that no challenge of this library has. */
export const readyTitle = (key: string, locale: Locale): string | undefined => {
  const title = TITLES.get(key);
  return title && textIn(title, locale);
};

/** A ready challenge with its title in a language. */
export function readyNamed(
  key: string,
  locale: Locale = 'en',
  kit: Kit = DEMO_KIT,
): { title: string; challenge: Challenge } | undefined {
  const challenge = readyChallenge(key, kit);
  return challenge && { title: readyTitle(key, locale) ?? key, challenge };
}
