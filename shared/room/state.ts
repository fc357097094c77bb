import type { DrawnIn } from '../documents/challenge.ts';
import type { ClosingKey } from '../documents/closing-check.ts';
import type { Guess, Reason } from '../documents/reason.ts';
import type { FindingVariant, RuleId } from '../documents/verdict.ts';
import type { Millis, Mm } from '../geometry/units.ts';
import type { BoardState } from './board.ts';
import type { CalibrationNote } from './calibration.ts';
import type { Coaching, HelpStep } from './coaching.ts';
import type { Conditions } from './conditions.ts';
import type { Driving } from './driving.ts';
import type { DocumentId, EntryId, RoomId, TeamId } from './ids.ts';
import type { Plan } from './plan.ts';

/**
 * A room: one class playing together. Its state is the fold of its events, the same on server, desk,
 * board and tablets; what a seat may not see is missing or blank in its copy, never different.
 */

export type { DocumentId, EntryId, RoomId, TeamId } from './ids.ts';

export const PHASES = ['gather', 'brief', 'build', 'show', 'drive', 'close'] as const;
export type Phase = (typeof PHASES)[number];

/** What a team wants of the wall: to be named there, to stay without its emblem, or to stay away. */
export const WALL_WISHES = ['shown', 'no-emblem', 'not-at-all'] as const;
export type WallWish = (typeof WALL_WISHES)[number];

export interface Team {
  readonly id: TeamId;
  /** A key of EMBLEMS; nobody types a person's name. */
  readonly emblem: string;
  /** Number of the berth on the harbour wall, from 1, in order of joining; no two teams share one. */
  readonly berth: number;
  /** Its tablet has been asked to rest, and none has taken its place yet. */
  readonly seatFree: boolean;
  /** How often another tablet has taken the seat. */
  readonly moves: number;
  /** A help step of its own; null: the class's. */
  readonly help: HelpStep | null;
  /** null: it has not said yet; its drawings are then shown without its emblem. */
  readonly wall: WallWish | null;
  /** The rounds in which it had the engine mend something. */
  readonly mended: readonly number[];
}

/** One try of a changed drawing: what the team foretold, what came, and which reason it took for the right one. */
export interface Try {
  readonly team: TeamId;
  readonly round: number;
  readonly guess: Guess;
  /** Where, whole mm of the sheet, if it said where. */
  readonly at: { readonly x: Mm; readonly y: Mm } | null;
  /** Whether the robot made it. */
  readonly made: boolean;
  /** The gravest finding of the drawing that was tried; absent where there was none, or nobody said. */
  readonly found?: { readonly rule: RuleId; readonly variant?: FindingVariant | undefined } | undefined;
  readonly because: Because | null;
}

/** Three reasons were offered, of which one was right. */
export interface Because {
  readonly offered: readonly Reason[];
  readonly picked: Reason;
  readonly right: Reason;
}

/** One challenge chosen in this room; entries belong to the round in which they were handed in. */
export interface Round {
  readonly challenge: DocumentId;
  /** The library's key, for the desk's list. */
  readonly key: string;
  /** Neighbouring berths have mirrored or turned sheets. */
  readonly varied: boolean;
  /** The kit that the challenge was made for; absent where it is the demo kit. */
  readonly kit?: DocumentId | undefined;
  /** A design of the lines that teams get in its gentler form; absent where it has none. */
  readonly gentler?: DocumentId | undefined;
}

/** Whether a team draws a round in its gentler form: the desk wants it for that team, and the round has one. */
export const isGentler = (
  { rounds, coaching }: Pick<RoomState, 'rounds' | 'coaching'>,
  team: TeamId,
  round: number,
): boolean => rounds[round]?.gentler !== undefined && coaching.gentler.includes(team);

export interface EntryVerdict {
  readonly document: DocumentId;
  readonly points: number;
  readonly met: boolean;
}

/** Its sheet and its weather stay with it, whatever berth the team has later and whatever the desk says. */
export interface Entry extends DrawnIn {
  readonly id: EntryId;
  readonly team: TeamId;
  readonly round: number;
  /** 1 for the team's first entry in the round. */
  readonly number: number;
  /** Absent in the copy of a seat that may not see it. */
  readonly design: DocumentId | null;
  readonly at: Millis;
  /** Handed in after the building time had ended. */
  readonly late: boolean;
  /** The engine had mended something for the team in this round before. */
  readonly mended: boolean;
  /** Drawn in the gentler form. */
  readonly gentler: boolean;
  /** Building time when it was handed in. */
  readonly spent: Millis;
  /** It was in time, or the desk has taken it. */
  readonly taken: boolean;
  /** The desk has given it back. */
  readonly returned: boolean;
  readonly verdict: EntryVerdict | null;
  /** Whether it has been on the board. */
  readonly shown: boolean;
  /** Whether the board may know its verdict: it was staged, or the standings were shown. */
  readonly counted: boolean;
  /** The judge failed on it again and again; the desk may have it judged once more. */
  readonly unjudged: boolean;
}

/** A closing check as it is asked, answered and ended in the room. */
export interface RoomCheck {
  readonly document: DocumentId;
  /** What is right; null in the copies of teams and board until it has ended. */
  readonly key: ClosingKey | null;
  /** The newest of each team to each question. A team knows its own, the desk all. */
  readonly answers: readonly CheckAnswer[];
  readonly ended: boolean;
  /** What the board says of it, without teams; null: nothing. */
  readonly shown: CheckResult | null;
}

export interface CheckAnswer {
  readonly team: TeamId;
  /** From 0. */
  readonly question: number;
  readonly picked: string;
}

/** How many teams were right, question by question, of so many that answered. */
export interface CheckResult {
  readonly right: readonly number[];
  readonly teams: number;
}
/** Whether an entry's points count. */
export const counts = ({ taken, returned }: Pick<Entry, 'taken' | 'returned'>): boolean => taken && !returned;

export interface Building {
  readonly since: Millis;
  /** Server time at which it ends by itself; null without a limit. */
  readonly until: Millis | null;
  readonly ended: boolean;
}

export interface RoomState {
  readonly id: RoomId;
  readonly word: string;
  /** Sequence number of the last event applied. */
  readonly seq: number;
  readonly openedAt: Millis;
  readonly phase: Phase;
  /** When the phase began, in the room's own time. */
  readonly phaseSince: Millis;
  /** By round, how long each phase has lasted that has ended. */
  readonly spent: readonly Readonly<Partial<Record<Phase, Millis>>>[];
  /** Whether somebody said that they stay with the charger. */
  readonly chargerWatched: boolean;
  /** The newest last. */
  readonly calibrations: readonly CalibrationNote[];
  /** Those who play, in the order of their berths. */
  readonly teams: readonly Team[];
  /** Those whom the desk has taken out, the last one last. Their entries are kept and count nowhere. */
  readonly removed: readonly Team[];
  /** What challenges to come are made for; null is the demo kit. Those that were chosen keep theirs. */
  readonly kit: DocumentId | null;
  readonly rounds: readonly Round[];
  /** Whether rounds to come have varied sheets, and the current one as long as nobody builds. */
  readonly variedSheets: boolean;
  /** Of the current round; null before its first building phase. */
  readonly building: Building | null;
  readonly lookHere: boolean;
  /** Server time at which everything was paused; null while time runs. */
  readonly paused: Millis | null;
  readonly standingsShown: boolean;
  /** The class's help step. */
  readonly help: HelpStep;
  /** Evidence, never ranked: a team knows its own, the desk all. */
  readonly tries: readonly Try[];
  readonly entries: readonly Entry[];
  /** Closing checks, the one that is asked last. */
  readonly checks: readonly RoomCheck[];
  /** One entry, or up to four in a heat. Empty: no stage. */
  readonly stage: readonly EntryId[];
  readonly board: BoardState;
  readonly coaching: Coaching;
  /** Of the current round. */
  readonly conditions: Conditions;
  readonly plan: Plan;
  /** Real robots on paper. */
  readonly driving: Driving;
}

export const isBuilding = ({ building }: RoomState): boolean => building !== null && !building.ended;

/** Whether a round's challenge was made for the kit that the room has now. */
export const isOfKit = ({ kit }: Pick<RoomState, 'kit'>, round: Round): boolean =>
  (round.kit ?? null) === kit;

/** The room's own time: it stands still while everything is paused. */
export const timeIn = (state: RoomState, now: Millis): Millis => state.paused ?? now;

/** Forty objects without faces; the keys are those of the icons. */
export const EMBLEMS = [
  'sailboat',
  'bell',
  'key',
  'feather',
  'umbrella',
  'shell',
  'leaf',
  'kite',
  'anchor',
  'lantern',
  'wheel',
  'compass',
  'teapot',
  'candle',
  'drum',
  'clock',
  'ladder',
  'bucket',
  'scissors',
  'hammer',
  'book',
  'pencil',
  'brush',
  'lamp',
  'mug',
  'crown',
  'gem',
  'cloud',
  'moon',
  'sun',
  'snowflake',
  'tent',
  'flag',
  'map',
  'telescope',
  'magnet',
  'puzzle',
  'ticket',
  'basket',
  'chair',
] as const;
export type Emblem = (typeof EMBLEMS)[number];

/**
 * The next emblem and berth that nobody has. Those of removed teams, and of teams that the lesson before
 * had, are kept for them as long as there are others. Undefined where forty teams play.
 */
export function freePlace({ teams, removed, plan }: RoomState): Pick<Team, 'emblem' | 'berth'> | undefined {
  const all = [...teams, ...removed, ...(plan.from?.places ?? [])];
  const berths = EMBLEMS.map((_, i) => i + 1);
  const free = <T>(list: readonly T[], of: (team: Pick<Team, 'emblem' | 'berth'>) => T): T | undefined =>
    list.find((one) => !all.some((team) => of(team) === one)) ??
    list.find((one) => !teams.some((team) => of(team) === one));
  const emblem = free<string>(EMBLEMS, (team) => team.emblem);
  const berth = free(berths, (team) => team.berth);
  return emblem === undefined || berth === undefined ? undefined : { emblem, berth };
}
