import { useEffect, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import { askAside } from './judging.ts';

interface Mended {
  readonly of: Design;
  readonly finding: Finding['id'];
  readonly design: Design | null;
}

/**
 * The design in which a finding is mended: undefined while it is worked out or nothing is asked for, null
 * where the engine knows none or could not be loaded.
 */
export function useMended(
  challenge: Challenge,
  design: Design,
  finding: Finding['id'] | null,
): Design | null | undefined {
  const [mended, setMended] = useState<Mended | null>(null);
  useEffect(() => {
    if (finding === null) return;
    let current = true;
    const say = (found: Design | null) => current && setMended({ of: design, finding, design: found });
    askAside({ challenge, design, mend: finding }, 'now', () => !current).then(
      (outcome) => outcome && 'mended' in outcome && say(outcome.mended),
      () => say(null),
    );
    return () => {
      current = false;
    };
  }, [challenge, design, finding]);
  return mended?.of === design && mended.finding === finding ? mended.design : undefined;
}
