import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Finding, Severity, Verdict } from '../../shared/documents/verdict.ts';
import type { Entry, RoomState, TeamId } from '../../shared/room/state.ts';
import type { Doing } from '../../shared/wire/protocol.ts';
import { bestEntry, entriesOf } from '../parts/figures.ts';

/** What the desk may want to know of a team at a glance. */
export interface Glance {
  readonly best: Entry | undefined;
  readonly last: Entry | undefined;
  /** The gravest finding of its newest drawing. */
  readonly finding: Finding | null;
  readonly need: Need | null;
}

/** Why a team may need somebody, the most urgent first. */
export type Need =
  | { readonly kind: 'stops'; readonly finding: Finding }
  | { readonly kind: 'stuck'; readonly entries: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'away' };

/** After so many entries without meeting the challenge a word may help. */
const STUCK_AFTER = 3;
/** A team that has drawn nothing for so long may not know how to begin, ms. */
const EMPTY_AFTER = 90_000;

const GRAVITY: Readonly<Record<Severity, number>> = { stops: 0, 'may-stop': 1, untidy: 2 };

/** The gravest first; equal ones stay in the order of the rules. */
export const gravest = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort((a, b) => GRAVITY[a.severity] - GRAVITY[b.severity]);

export interface GlanceSource {
  readonly room: RoomState;
  readonly team: TeamId;
  readonly design: Design | null;
  readonly verdict: Verdict | null;
  readonly doing: Doing | undefined;
  readonly challenge: Challenge;
  /** Server time, ms. */
  readonly now: number;
}

export function glanceAt({ room, team, design, verdict, doing, challenge, now }: GlanceSource): Glance {
  const best = bestEntry(room, team);
  const last = entriesOf(room, team).at(-1);
  const finding = verdict ? (gravest(verdict.findings)[0] ?? null) : null;
  const need = needOf();
  return { best, last, finding, need };

  function needOf(): Need | null {
    const entries = entriesOf(room, team).length;
    if (best?.verdict?.met) return null;
    if (finding?.severity === 'stops' && !isBare(design, challenge)) return { kind: 'stops', finding };
    if (entries >= STUCK_AFTER) return { kind: 'stuck', entries };
    const since = room.building?.since ?? now;
    if (isBare(design, challenge) && entries === 0 && now - since > EMPTY_AFTER) return { kind: 'empty' };
    return doing === 'away' ? { kind: 'away' } : null;
  }
}

/** Whether a drawing is still what the challenge began with. */
export function isBare(design: Design | null, challenge: Challenge): boolean {
  if (!design) return true;
  const { lines, marks } = design.drawing;
  if (!challenge.begin) return lines.length === 0 && marks.length === 0;
  return JSON.stringify(design.drawing) === JSON.stringify(challenge.begin.drawing);
}
