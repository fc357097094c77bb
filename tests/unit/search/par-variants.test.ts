import { describe, expect, test } from 'vitest';
import { type Challenge, VARIANTS } from '../../../shared/documents/challenge.ts';
import { challengeIn } from '../../../shared/library/variants.ts';
import { parOf } from '../../../shared/search/par.ts';
import { searchedFor } from '../../pars.ts';

/** Those with junctions that are quickly searched; `npm run long -- pars` compares all. */
const QUICK = ['ferry-junction', 'rail-crossing', 'late-choice'];

const costIn = (challenge: Challenge): number => {
  const par = parOf(challenge);
  if (par.kind !== 'par') throw new Error(`no par: ${JSON.stringify(par)}`);
  return par.cost;
};

const quick = searchedFor().filter(({ id }) => QUICK.includes(id));

describe('parOf a variant', () => {
  test.each(quick.map((one) => [one.id, one.kit.id, one] as const))(
    '%s with the kit %s: mirrored and turned it has the same par',
    (_, __, challenge) => {
      const variants = VARIANTS.map((variant) => challengeIn(variant, challenge));
      for (const other of variants) expect(other.id).not.toBe(challenge.id);
      expect(variants.map(costIn)).toEqual(VARIANTS.map(() => costIn(challenge)));
    },
  );
});
