import { useCallback, useMemo, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { type Finding, type RuleId, SEVERITIES } from '../../../shared/documents/verdict.ts';
import type { Judged } from '../../../shared/judge/judge.ts';
import { useMended } from '../../parts/mending.ts';
import type { Help } from './use-help.ts';

export interface Findings {
  /** The worst first. */
  readonly all: readonly Finding[];
  /** The one whose callout is open. */
  readonly open: Finding | null;
  /** Whether it is said what is wrong, or only where. */
  readonly withWords: boolean;
  /** The engine may mend; `triesLeft` says how many tries come before that, where it will. */
  readonly mayMend: boolean;
  readonly triesLeft: number;
  /** The drawing in which the open one is mended: undefined while it is not known, null where there is none. */
  readonly mended: Design | null | undefined;
  /** Nothing is said before this drawing has been tried. */
  readonly afterTry: boolean;
  readonly next: () => void;
  readonly close: () => void;
  /** Opens the first, or closes what is open. */
  readonly toggle: () => void;
}

const NONE: readonly Finding[] = [];
/** A drawing that is not finished yet breaks these; the goals say so already. They come last and stay closed. */
const UNFINISHED: readonly RuleId[] = ['R-finish-reachable', 'R-start-on-line'];
const isUnfinished = ({ rule }: Finding) => UNFINISHED.includes(rule);
const rank = (finding: Finding) =>
  SEVERITIES.indexOf(finding.severity) + (isUnfinished(finding) ? SEVERITIES.length : 0);

/**
 * What was found in the drawing as it is. The worst one opens by itself, unless it is merely untidy,
 * is about what is still to be drawn, or has been closed before. How much is said is the help step's.
 */
export function useFindings(
  challenge: Challenge,
  judged: Judged | null,
  design: Design,
  help: Help,
): Findings {
  const { step } = help;
  const afterTry = step === 'after-try' && !help.triedAs(design);
  const all = useMemo(
    () => (judged && !afterTry ? [...judged.verdict.findings].sort((a, b) => rank(a) - rank(b)) : NONE),
    [judged, afterTry],
  );
  const [closed, setClosed] = useState<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = useState<string | null>(null);
  const opens = (finding: Finding) =>
    finding.severity !== 'untidy' && !isUnfinished(finding) && !closed.has(finding.id);
  const byItself = all.find(opens) ?? null;
  const open = all.find((finding) => finding.id === asked) ?? byItself;
  const close = useCallback(() => {
    setAsked(null);
    setClosed((before) => new Set([...before, ...all.map((finding) => finding.id)]));
  }, [all]);
  const at = open ? all.indexOf(open) : -1;
  const next = useCallback(() => setAsked(all[(at + 1) % all.length]?.id ?? null), [all, at]);
  const toggle = useCallback(() => {
    if (open) close();
    else setAsked(all[0]?.id ?? null);
  }, [open, close, all]);
  const mends = step === 'mend';
  const mended = useMended(challenge, design, mends && open ? open.id : null);
  return {
    all,
    open,
    withWords: step !== 'place',
    mayMend: mends && help.triesLeft === 0,
    triesLeft: mends ? help.triesLeft : 0,
    mended,
    afterTry,
    next,
    close,
    toggle,
  };
}
