import type { Kit } from '../../../shared/documents/kit.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';

/** How each ready challenge stands with a kit. */
export function ChallengesOfKit({ kit }: { readonly kit: Kit }) {
  const { kit: words } = useWholeWords();
  const locale = useLocale();
  const ready = readyChallenges(kit);
  const playable = ready.filter((one) => one.playable).length;
  return (
    <details className="kit-challenges">
      <summary>{words.shelf.challenges(playable, ready.length)}</summary>
      <ul>
        {ready.map((one) => (
          <li key={one.key}>
            <strong>{textIn(one.title, locale)}</strong> {words.shelf.standing(one)}
          </li>
        ))}
      </ul>
    </details>
  );
}
