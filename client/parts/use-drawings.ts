import { useMemo } from 'react';
import { Answers } from '../../shared/documents/answers.ts';
import type { Play } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import type { RoomState, TeamId } from '../../shared/room/state.ts';
import { currentRound, entriesOf } from './figures.ts';
import { useDocument } from './use-document.ts';
import { useLinkState } from './use-link.tsx';

const read = new WeakMap<object, Design | null>();

/** A draft as it came over the lossy channel; null where it is no design. Read once. */
function draftDesign(raw: unknown): Design | null {
  if (typeof raw !== 'object' || raw === null) return null;
  const before = read.get(raw);
  if (before !== undefined) return before;
  const parsed = parseDocument(Design, raw);
  const design = parsed.ok ? parsed.value : null;
  read.set(raw, design);
  return design;
}

/** What a team has answered so far, where the challenge is predicted. */
export function useTeamAnswers(room: RoomState, team: TeamId): Answers | null {
  const draft = useLinkState((state) => state.drafts[team]);
  const now = draft && draft.round === currentRound(room) ? draft.answers : undefined;
  return useMemo(() => {
    const parsed = now === undefined ? null : parseDocument(Answers, now);
    return parsed?.ok ? parsed.value : null;
  }, [now]);
}

export interface TeamDrawing {
  readonly design: Design;
  /** `draft` is on the tablet now; `entry` was handed in last. */
  readonly from: 'draft' | 'entry';
}

/** The newest drawing of a team that this page may see: its draft, or what it handed in last. */
export function useTeamDrawing(room: RoomState, team: TeamId, play: Play): TeamDrawing | null {
  const draft = useLinkState((state) => state.drafts[team]);
  const last = entriesOf(room, team).at(-1);
  // Where answers are handed in there is no drawing.
  const isDrawn = play !== 'predict';
  const entry = useDocument('design', isDrawn && !draft ? (last?.design ?? null) : null);
  const drawn = draft && draft.round === currentRound(room) ? draftDesign(draft.design) : null;
  if (drawn) return { design: drawn, from: 'draft' };
  return entry.kind === 'here' ? { design: entry.value, from: 'entry' } : null;
}
