import { useEffect, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import type { JudgedHere } from '../../parts/judge-here.ts';
import { useJudged } from '../../parts/judging.ts';

/** Nothing is said about a drawing before the finger has been up for so long. */
const QUIET_MS = 1000;

export interface LiveVerdict {
  /** What the engine says of the drawing as it is now; null while it is drawn or worked out. */
  readonly now: JudgedHere | null;
  /** The last thing that was said, of whichever drawing. */
  readonly last: JudgedHere | null;
}

/** The drawing once it has been left alone for a while; null while it is being drawn. */
function useSettled(session: DrawingSession): Design | null {
  const design = useSessionState(session, (state) => state.editor.design);
  const fingerDown = useSessionState(session, (state) => state.fingerDown);
  const [settled, setSettled] = useState<Design | null>(null);
  useEffect(() => {
    if (fingerDown) return setSettled(null);
    const timer = setTimeout(() => setSettled(design), QUIET_MS);
    return () => clearTimeout(timer);
  }, [design, fingerDown]);
  return settled === design && !fingerDown ? settled : null;
}

/** Judges the drawing beside the page whenever it has come to rest. */
export function useLiveVerdict(challenge: Challenge, session: DrawingSession): LiveVerdict {
  const settled = useSettled(session);
  const now = useJudged(challenge, settled);
  const [last, setLast] = useState<JudgedHere | null>(null);
  useEffect(() => {
    if (now) setLast(now);
  }, [now]);
  return { now, last: now ?? last };
}
