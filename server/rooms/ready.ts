import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Locale, type Texts, textIn } from '../../shared/documents/values.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../shared/library/ready.ts';

const PLAYABLE: ReadonlyMap<string, Challenge> = new Map(
  readyChallenges(DEMO_KIT).flatMap((ready) =>
    ready.playable ? [[ready.key, ready.challenge] as const] : [],
  ),
);

/** A ready challenge by its key, made for the demo kit. */
export const readyChallenge = (key: string): Challenge | undefined => PLAYABLE.get(key);

const NAMED: ReadonlyMap<string, { readonly title: Texts; readonly challenge: Challenge }> = new Map(
  readyChallenges(DEMO_KIT).flatMap((ready) =>
    ready.playable ? [[ready.key, { title: ready.title, challenge: ready.challenge }] as const] : [],
  ),
);

/** A ready challenge with its title in a language, also one that only paper can play. */
export function readyNamed(
  key: string,
  locale: Locale = 'en',
): { title: string; challenge: Challenge } | undefined {
  const named = NAMED.get(key);
  return named && { title: textIn(named.title, locale), challenge: named.challenge };
}
