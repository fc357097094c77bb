import { VARIANTS } from '../../shared/documents/challenge.ts';
import { challengeIn } from '../../shared/library/variants.ts';
import { type ParResult, parOf } from '../../shared/search/par.ts';
import { searchedFor } from '../pars.ts';

/** What sheets that are fair to each other have in common. How it is known may differ: a search may end early. */
const told = (par: ParResult): string => (par.kind === 'par' ? `${par.cost}` : par.kind);

/** Whether every ready challenge about marks, with either kit, has the same par mirrored and turned. */
export async function long(): Promise<boolean> {
  let unequal = 0;
  let compared = 0;
  for (const challenge of searchedFor()) {
    const here = told(parOf(challenge));
    for (const variant of VARIANTS) {
      const there = told(parOf(challengeIn(variant, challenge)));
      compared++;
      if (there === here) continue;
      unequal++;
      process.stdout.write(`pars ${challenge.kit.id} ${challenge.id} ${variant}: ${here}, ${there}\n`);
    }
  }
  process.stdout.write(
    `pars ${compared - unequal} of ${compared} variants have the par of their challenge\n`,
  );
  return unequal === 0;
}
