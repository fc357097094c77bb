import { useMemo } from 'react';
import { Answers } from '../../shared/documents/answers.ts';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import { conditionsFor } from '../../shared/room/drawn-in.ts';
import type { RoomState, Team, TeamId } from '../../shared/room/state.ts';
import { currentRound, entriesOf } from './figures.ts';
import { useDocument } from './use-document.ts';
import { useLinkState } from './use-link.tsx';
import { drawnOn } from './variants.ts';

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

/**
 * The newest drawing of a team that this page may see: its draft, or what it handed in last. It lies on the sheet that
 * the team has now, also where its tablet has not said so yet.
 */
export function useTeamDrawing(room: RoomState, team: Team, challenge: Challenge): TeamDrawing | null {
  const draft = useLinkState((state) => state.drafts[team.id]);
  const last = entriesOf(room, team.id).at(-1);
  const { variant } = conditionsFor(room, team);
  const onSheet = (design: Design, from = variant) => drawnOn(design, from, variant, challenge);
  // Where answers are handed in there is no drawing.
  const isDrawn = challenge.play !== 'predict';
  const entry = useDocument('design', isDrawn && !draft ? (last?.design ?? null) : null);
  const drawn = draft && draft.round === currentRound(room) ? draftDesign(draft.design) : null;
  if (drawn) return { design: onSheet(drawn, draft?.variant), from: 'draft' };
  return entry.kind === 'here' ? { design: onSheet(entry.value, last?.variant), from: 'entry' } : null;
}
