import { wordOf } from '../documents/design.ts';
import { reversed } from '../documents/kit.ts';
import { questionsOf } from '../judge/questions.ts';
import type { Entry, RoomCheck, RoomState, TeamId, Try } from '../room/state.ts';
import { type Answered, answersOf, isRight, rightIn } from './check-answers.ts';
import { graveFindings, judgedEntries, type LessonRecord, type Shown } from './record.ts';

/** What a team may show in a lesson. */
export const EVIDENCE_KINDS = [
  /** Challenges whose goals came true, in whichever way. */
  'met',
  /** At the first entry, without the engine's mending. */
  'met-first',
  /** By a later entry, from which a grave finding of an earlier one is gone. */
  'mended',
  /** After the engine had mended something. */
  'helped',
  /** One-way marks that were read rightly from both sides. */
  'both-sides',
  /** Runs that were foretold: "not sure" foretells nothing. */
  'forecasts',
  /** Reasons that were found for a run that went otherwise. */
  'reasons',
  /** Answers of closing checks that were right, of those that were given. */
  'closing',
] as const;
export type EvidenceKind = (typeof EVIDENCE_KINDS)[number];

export type EvidenceOf = Readonly<Record<EvidenceKind, Shown>>;

export interface TeamEvidence {
  readonly team: TeamId;
  readonly evidence: EvidenceOf;
}

export interface ClassEvidence {
  /** Of those who play, in the order of their berths. */
  readonly teams: readonly TeamEvidence[];
  /** Teams that have shown it, of those that had a chance to. */
  readonly together: EvidenceOf;
}

/** What each team and the class have shown. Pure: the same record gives the same evidence. */
export function evidenceOf(record: LessonRecord): ClassEvidence {
  const teams = record.room.teams.map(({ id }) => ({ team: id, evidence: teamEvidence(record, id) }));
  const together = perKind((kind) => {
    const had = teams.map(({ evidence }) => evidence[kind]).filter(({ of }) => of > 0);
    return { shown: had.filter((each) => hasShown(kind, each)).length, of: had.length };
  });
  return { teams, together };
}

const perKind = (of: (kind: EvidenceKind) => Shown): EvidenceOf =>
  Object.fromEntries(EVIDENCE_KINDS.map((kind) => [kind, of(kind)])) as EvidenceOf;

/** Here one time may be luck: more than half must be right. */
const BY_MOST: readonly EvidenceKind[] = ['forecasts', 'reasons', 'closing'];

/** Whether a team counts as one that has shown it. */
const hasShown = (kind: EvidenceKind, { shown, of }: Shown): boolean =>
  BY_MOST.includes(kind) ? 2 * shown > of : shown > 0;

/** What a class's page says first: reading marks from both sides where that was asked, else the goals. */
export function headlineOf({ together }: ClassEvidence): { readonly kind: EvidenceKind } & Shown {
  const kind = together['both-sides'].of > 0 ? 'both-sides' : 'met';
  return { kind, ...together[kind] };
}

function teamEvidence(record: LessonRecord, team: TeamId): EvidenceOf {
  const { room } = record;
  const ways = room.rounds.flatMap((_, round) => wayMet(record, team, round) ?? []);
  const count = (...wanted: Way[]): Shown => ({
    shown: ways.filter((way) => wanted.includes(way)).length,
    of: ways.length,
  });
  const tries = room.tries.filter((one) => one.team === team);
  return {
    met: count('first', 'mended', 'helped', 'later'),
    'met-first': count('first'),
    mended: count('mended'),
    helped: count('helped'),
    'both-sides': bothSides(record, team),
    forecasts: forecastsIn(tries),
    reasons: reasonsIn(tries),
    closing: sum(room.checks.map((check) => rightIn(check, team))),
  };
}

type Way = 'first' | 'mended' | 'helped' | 'later' | 'not';

/** How a team came to meet a round's challenge; undefined where it has no judged entry there. */
function wayMet(record: LessonRecord, team: TeamId, round: number): Way | undefined {
  const entries = judgedEntries(record.room, team, round);
  if (entries.length === 0) return undefined;
  const at = entries.findIndex(({ verdict }) => verdict?.met);
  const met = entries[at];
  if (!met) return 'not';
  if (met.mended) return 'helped';
  if (met.number === 1) return 'first';
  return isMended(record, entries.slice(0, at), met) ? 'mended' : 'later';
}

/** Whether a grave finding of the entries before is gone. */
function isMended(record: LessonRecord, before: readonly Entry[], met: Entry): boolean {
  const left = new Set(graveFindings(record, met).map(({ rule }) => rule));
  return before.some((entry) => graveFindings(record, entry).some(({ rule }) => !left.has(rule)));
}

/** Of a try or several: how many runs were foretold. */
export function forecastsIn(tries: readonly Try[]): Shown {
  const said = tries.filter(({ guess }) => guess !== 'not-sure');
  const right = said.filter(({ guess, made }) => (guess === 'makes-it') === made);
  return { shown: right.length, of: said.length };
}

export function reasonsIn(tries: readonly Try[]): Shown {
  const given = tries.flatMap(({ because }) => because ?? []);
  return { shown: given.filter(({ picked, right }) => picked === right).length, of: given.length };
}

/** Of the one-way marks that a team was asked about from both sides: those of which it knew both. */
function bothSides(record: LessonRecord, team: TeamId): Shown {
  const { rounds, checks } = record.room;
  return sum([
    ...rounds.map((_, round) => bothSidesIn(record, team, round)),
    ...checks.map((check) => bothSidesAtEnd(check, team)),
  ]);
}

const sum = (all: readonly Shown[]): Shown => ({
  shown: all.reduce((n, { shown }) => n + shown, 0),
  of: all.reduce((n, { of }) => n + of, 0),
});

/** In a round that is predicted. Both sides must be right in one and the same entry. */
function bothSidesIn({ room, answers, challenges }: LessonRecord, team: TeamId, round: number): Shown {
  const marks = askedFromBoth(challenges, room, round);
  const entries = judgedEntries(room, team, round);
  if (entries.length === 0) return { shown: 0, of: 0 };
  const known = marks.filter((questions) =>
    entries.some(({ verdict }) => {
      const lines = (verdict && answers.get(verdict.document)?.lines) ?? [];
      return questions.every((id) => lines.some((line) => line.question === id && line.right));
    }),
  );
  return { shown: known.length, of: marks.length };
}

/** For each one-way mark that a round asks about from both berths, the ids of the two questions. */
function askedFromBoth(
  challenges: LessonRecord['challenges'],
  { rounds }: RoomState,
  round: number,
): readonly (readonly string[])[] {
  const challenge = challenges.get(rounds[round]?.challenge ?? '');
  if (!challenge) return [];
  const questions = questionsOf(challenge);
  const oneWay = challenge.sheet.given.marks.filter((mark) => wordOf(mark) !== reversed(wordOf(mark)));
  return oneWay
    .map(({ id }) => questions.filter((question) => question.kind === 'mark' && question.mark === id))
    .filter((of) => new Set(of.map(({ start }) => start)).size === 2)
    .map((of) => of.map(({ id }) => id));
}

/** In a closing check that asks about one mark from both sides; whoever left one out was not asked. */
function bothSidesAtEnd(check: RoomCheck, team: TeamId): Shown {
  const given = answersOf(check, team);
  return { shown: fromBothSides(given.filter(isRight)), of: fromBothSides(given) };
}

/** Of how many one-way marks both sides are among these; the same mark in several drawings is one. */
function fromBothSides(answers: readonly Answered[]): number {
  const words = new Set(answers.flatMap(({ answer }) => answer.word ?? []));
  return [...words].filter((word) => word < reversed(word) && words.has(reversed(word))).length;
}
