import { useEffect, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { Guess } from '../../../shared/documents/reason.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import type { Because } from '../../../shared/room/state.ts';
import { gravest } from '../../parts/gravest.ts';
import { useJudged } from '../../parts/judging.ts';
import { useLink } from '../../parts/use-link.tsx';
import type { Help, Tried } from '../build/use-help.ts';

export interface Evidence {
  /** How this drawing was foretold; undefined before. */
  readonly tried: Tried | undefined;
  readonly foretell: (guess: Guess, at: PaperPoint | null) => void;
  readonly explain: (because: Because) => void;
}

/** What a team foretells of a drawing, and why it went otherwise: told to the room with what came. */
export function useEvidence(challenge: Challenge, design: Design, round: number, help: Help): Evidence {
  const link = useLink();
  const tried = help.triedAs(design);
  const judged = useJudged(challenge, design);
  const [said, setSaid] = useState<{ readonly guess: Guess; readonly at: PaperPoint | null } | null>(null);
  useEffect(() => {
    if (!said || !judged) return;
    setSaid(null);
    const worst = gravest(judged.verdict.findings)[0];
    const found = worst && { rule: worst.rule, ...(worst.variant && { variant: worst.variant }) };
    void link.command({ kind: 'try', round, ...said, made: judged.verdict.met, ...(found && { found }) });
  }, [said, judged, link, round]);
  return {
    tried,
    foretell: (guess, at) => {
      help.note(design, { guess, because: null });
      setSaid({ guess, at });
    },
    explain: (because) => {
      if (tried) help.note(design, { ...tried, because });
      void link.command({ kind: 'explain', round, ...because });
    },
  };
}
