import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import type { Entry, RoomState, TeamId, Try } from '../../shared/room/state.ts';
import type { Doing } from '../../shared/wire/protocol.ts';
import { bestEntry, currentRound, entriesOf } from '../parts/figures.ts';
import { gravest } from '../parts/gravest.ts';

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
  /** Its last so many tries had the finding that its drawing still has. */
  | { readonly kind: 'same'; readonly tries: number; readonly finding: Finding }
  | { readonly kind: 'stops'; readonly finding: Finding }
  | { readonly kind: 'stuck'; readonly entries: number }
  /** So many tries in a row failed. */
  | { readonly kind: 'tries'; readonly tries: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'away' };

const URGENCY: readonly Need['kind'][] = ['same', 'stops', 'stuck', 'tries', 'empty', 'away'];

/** Lower for those who may need somebody more; who needs nobody comes last. */
export const urgencyOf = (need: Need | null | undefined): number =>
  need ? URGENCY.indexOf(need.kind) : URGENCY.length;

/** After so many entries or tries without meeting the challenge a word may help. */
const STUCK_AFTER = 3;
/** A team that has drawn nothing for so long may not know how to begin, ms. */
const EMPTY_AFTER = 90_000;

export interface GlanceSource {
  readonly room: RoomState;
  readonly team: TeamId;
  readonly design: Design | null;
  /** Of that drawing; null until they are known. */
  readonly findings: readonly Finding[] | null;
  readonly doing: Doing | undefined;
  readonly challenge: Challenge;
  /** Server time, ms. */
  readonly now: number;
}

export function glanceAt(source: GlanceSource): Glance {
  const { room, team, design, findings, doing, challenge, now } = source;
  const best = bestEntry(room, team);
  const last = entriesOf(room, team).at(-1);
  const finding = findings ? (gravest(findings)[0] ?? null) : null;
  const need = needOf();
  return { best, last, finding, need };

  function needOf(): Need | null {
    const entries = entriesOf(room, team).length;
    const tries = room.tries.filter((one) => one.team === team && one.round === currentRound(room));
    if (best?.verdict?.met) return null;
    const same = finding ? lastOnes(tries, ({ found }) => found?.rule === finding.rule) : 0;
    if (finding && same >= STUCK_AFTER) return { kind: 'same', tries: same, finding };
    if (finding?.severity === 'stops' && !isBare(design, challenge)) return { kind: 'stops', finding };
    if (entries >= STUCK_AFTER) return { kind: 'stuck', entries };
    const failed = lastOnes(tries, ({ made }) => !made);
    if (failed >= STUCK_AFTER) return { kind: 'tries', tries: failed };
    const since = room.building?.since ?? now;
    if (isBare(design, challenge) && entries === 0 && now - since > EMPTY_AFTER) return { kind: 'empty' };
    return doing === 'away' ? { kind: 'away' } : null;
  }
}

/** How many of the last ones, without a break, are so. */
const lastOnes = (tries: readonly Try[], isSo: (one: Try) => boolean): number =>
  tries.length - 1 - tries.findLastIndex((one) => !isSo(one));

/** Whether a drawing is still what the challenge began with. */
function isBare(design: Design | null, challenge: Challenge): boolean {
  if (!design) return true;
  const { lines, marks } = design.drawing;
  if (!challenge.begin) return lines.length === 0 && marks.length === 0;
  return JSON.stringify(design.drawing) === JSON.stringify(challenge.begin.drawing);
}
