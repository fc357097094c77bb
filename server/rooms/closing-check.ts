import { setImmediate as turn } from 'node:timers/promises';
import { Challenge } from '../../shared/documents/challenge.ts';
import { ClosingCheck, type ClosingQuestion } from '../../shared/documents/closing-check.ts';
import { Design, EMPTY_DESIGN } from '../../shared/documents/design.ts';
import { parseDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { closingCheckOf, type MadeCheck } from '../../shared/evidence/closing-check.ts';
import type { ClassDrawing, RealRun } from '../../shared/evidence/closing-questions.ts';
import { challengeUnder } from '../../shared/library/conditions.ts';
import type { DocumentId, Entry, RoomState } from '../../shared/room/state.ts';
import type { StoredDocument } from '../log/event-log.ts';

export type ReadDocument = (id: DocumentId) => Promise<StoredDocument | undefined>;

/** So many drawings are driven over at most: the first ones nearly always have enough to ask. */
const MOST_DRAWINGS = 24;

/**
 * Makes the closing check of a room out of what was handed in; undefined where there is nothing to ask. The
 * server sees to other things between two drawings.
 */
export async function madeCheck(
  state: RoomState,
  read: ReadDocument,
  count: number,
): Promise<MadeCheck | undefined> {
  const before: ClosingQuestion[] = [];
  for (const { document } of state.checks)
    before.push(...((await checkNamed(document, read))?.questions ?? []));
  const making = closingCheckOf(await drawingsOf(state, read), count, before);
  for (let step = making.next(); ; step = making.next()) {
    if (step.done) return step.value;
    await turn();
  }
}

/** The room's last check as it was asked; undefined where none was. */
export async function askedCheck(state: RoomState, read: ReadDocument): Promise<MadeCheck | undefined> {
  const last = state.checks.at(-1);
  const check = last && (await checkNamed(last.document, read));
  return check && last.key ? { check, key: last.key } : undefined;
}

async function checkNamed(id: DocumentId, read: ReadDocument): Promise<ClosingCheck | undefined> {
  const document = await read(id);
  const check = document && parseDocument(ClosingCheck, JSON.parse(document.body));
  return check?.ok ? check.value : undefined;
}

/**
 * Of every team and round the newest entry that meets the challenge and the newest that does not. The newest round
 * comes first, in it what real robots drove otherwise and what has been on the board; nothing that was given back, and
 * nothing of a team that would rather not be on the wall.
 */
function entriesToAsk({ teams, entries, driving }: RoomState): Entry[] {
  const willing = new Set(teams.filter(({ wall }) => wall !== 'not-at-all').map(({ id }) => id));
  const newest = new Map<string, Entry>();
  for (const entry of entries) {
    if (!willing.has(entry.team) || !entry.verdict || entry.returned) continue;
    newest.set(`${entry.round} ${entry.team} ${entry.verdict.met}`, entry);
    if (strangeTrial(driving, entry)) newest.set(entry.id, entry);
  }
  const rank = (entry: Entry) => Number(strangeTrial(driving, entry) !== undefined) * 2 + Number(entry.shown);
  const all = [...new Set(newest.values())];
  return all.sort((a, b) => b.round - a.round || rank(b) - rank(a)).slice(0, MOST_DRAWINGS);
}

/** The last trial of an entry in which a real robot did something else than was foretold. */
const strangeTrial = ({ trials }: RoomState['driving'], { id }: Entry) =>
  trials.findLast(
    ({ entry, withdrawn, outcome }) =>
      entry === id && !withdrawn && (outcome.kind === 'lost' || outcome.kind === 'other-branch'),
  );

async function realRun(
  { driving }: RoomState,
  entry: Entry,
  read: ReadDocument,
): Promise<RealRun | undefined> {
  const outcome = strangeTrial(driving, entry)?.outcome;
  if (outcome?.kind !== 'lost' && outcome?.kind !== 'other-branch') return undefined;
  const document = entry.verdict && (await read(entry.verdict.document));
  const verdict =
    document?.kind === 'verdict' ? parseDocument(Verdict, JSON.parse(document.body)) : undefined;
  const strays = verdict?.ok ? (verdict.value.steadiness?.strays ?? []) : [];
  return { trouble: outcome.kind, at: outcome.kind === 'lost' ? outcome.at : null, strays };
}

async function drawingsOf(state: RoomState, read: ReadDocument): Promise<ClassDrawing[]> {
  const challenges = new Map<DocumentId, Challenge | undefined>();
  const challengeOf = async (round: number) => {
    const id = state.rounds[round]?.challenge ?? '';
    if (!challenges.has(id)) challenges.set(id, challengeFrom(await read(id)));
    return challenges.get(id);
  };
  const drawings: ClassDrawing[] = [];
  for (const entry of entriesToAsk(state)) {
    const { round, design } = entry;
    const challenge = await challengeOf(round);
    const document = design === null ? undefined : await read(design);
    if (!challenge || document?.kind !== 'design') continue;
    const parsed = parseDocument(Design, JSON.parse(document.body));
    if (!parsed.ok) continue;
    const real = await realRun(state, entry, read);
    drawings.push({ challenge: challengeUnder(entry, challenge), design: parsed.value, real });
  }
  // Where all was given, that can be asked about whoever handed in what.
  for (const round of state.rounds.keys()) {
    const challenge = await challengeOf(round);
    if (challenge?.play === 'predict') drawings.push({ challenge, design: EMPTY_DESIGN });
  }
  return drawings;
}

function challengeFrom(document: StoredDocument | undefined): Challenge | undefined {
  const parsed = document && parseDocument(Challenge, JSON.parse(document.body));
  return parsed?.ok ? parsed.value : undefined;
}
