import * as z from 'zod/mini';
import { VARIANTS } from '../documents/challenge.ts';
import { MOST_CLOSING_QUESTIONS } from '../documents/closing-check.ts';
import { Weather } from '../documents/outlook.ts';
import { Guess, Reason } from '../documents/reason.ts';
import { FINDING_VARIANTS, RuleId } from '../documents/verdict.ts';
import { BOARD_LIMITS, BOARD_SCENES, BOARD_SETTINGS } from '../room/board.ts';
import { LIGHTS } from '../room/calibration.ts';
import { HELP_STEPS, HINTS, LONGEST_NOTE, type NoteWords, RETURN_REASONS } from '../room/coaching.ts';
import { OWN_SHEETS } from '../room/conditions.ts';
import { LONGEST_QUEUE } from '../room/plan.ts';
import { EMBLEMS, PHASES, WALL_WISHES } from '../room/state.ts';
import { DRIVING_ASKS, RobotNumber } from './driving-forms.ts';
import { LIMITS } from './protocol.ts';

/** The form of everything that a page may ask a room for, and the parts of it that facts share. */

/** Stores of text have no place for the character NUL. */
const hasNoNul = (text: string) => !text.includes('\0');
export const Token = z
  .string()
  .check(z.minLength(1), z.maxLength(64), z.refine(hasNoNul, { error: 'character-nul' }));
const LONGEST_BUILDING = 4 * 3600;
const Seconds = z.int().check(z.gte(1), z.lte(LONGEST_BUILDING));
export const Round = z.int().check(z.gte(0), z.lte(10_000));
const On = z.boolean();
const differ = (list: readonly string[]) => new Set(list).size === list.length;

const Coordinate = z.int().check(z.gte(0), z.lte(4000));
/** What a team foretold and what came, and which of three reasons it took for the right one. */
export const TRIED = {
  round: Round,
  guess: Guess,
  at: z.nullable(z.strictObject({ x: Coordinate, y: Coordinate })),
  made: z.boolean(),
  found: z.optional(z.strictObject({ rule: RuleId, variant: z.optional(z.enum(FINDING_VARIANTS)) })),
};
export const BECAUSE = {
  round: Round,
  offered: z.array(Reason).check(z.length(3), z.refine(differ, { error: 'same-reason-twice' })),
  picked: Reason,
  right: Reason,
};

const atMost = (most: number) => z.int().check(z.gte(0), z.lte(most));
const Hands = z.array(atMost(BOARD_LIMITS.hands)).check(z.maxLength(BOARD_LIMITS.answers));
const Stop = atMost(BOARD_LIMITS.stops);
/** What the desk and the facts say of the board in the same form. */
export const ON_BOARD = {
  'show-scene': { scene: z.nullable(z.enum(BOARD_SCENES)) },
  'set-board': { setting: z.enum(BOARD_SETTINGS), on: On },
  'drive-on': { passed: Stop },
  'count-hands': { stop: Stop, hands: Hands },
  'count-back': {
    what: z.enum(['robots', 'caps']),
    counted: z.nullable(
      z.strictObject({ there: atMost(BOARD_LIMITS.counted), of: atMost(BOARD_LIMITS.counted) }),
    ),
  },
};
const BOARD_ASKS = [
  z.strictObject({ kind: z.literal('show-scene'), ...ON_BOARD['show-scene'] }),
  z.strictObject({ kind: z.literal('set-board'), ...ON_BOARD['set-board'] }),
  z.strictObject({
    kind: z.literal('hang'),
    entries: z
      .array(Token)
      .check(z.minLength(1), z.maxLength(BOARD_LIMITS.gallery), z.refine(differ, { error: 'same-id-twice' })),
  }),
  z.strictObject({ kind: z.literal('show-fleet'), entry: Token, weather: Weather }),
  z.strictObject({ kind: z.literal('foretell'), entry: z.nullable(Token) }),
  z.strictObject({ kind: z.literal('drive-on'), ...ON_BOARD['drive-on'] }),
  z.strictObject({ kind: z.literal('count-hands'), ...ON_BOARD['count-hands'] }),
  z.strictObject({ kind: z.literal('count-back'), ...ON_BOARD['count-back'] }),
] as const;
/** What was picked in a closing check; the text is the key of a choice. */
export const PICKED = {
  question: z.int().check(z.gte(0), z.lt(MOST_CLOSING_QUESTIONS)),
  picked: z.string().check(z.minLength(1), z.maxLength(80), z.refine(hasNoNul, { error: 'character-nul' })),
};
/** Which of a room's closing checks. */
const CheckNumber = z.int().check(z.gte(0), z.lte(10_000));
const isWritten = (text: string) =>
  text.trim() !== '' && [...text].every((sign) => sign === '\n' || sign >= ' ');
/** What a desk says to a team. A note is text and nothing else. */
export const NOTE_WORDS = [
  z.strictObject({ kind: z.literal('hint'), hint: z.enum(HINTS) }),
  z.strictObject({
    kind: z.literal('text'),
    text: z.string().check(z.maxLength(LONGEST_NOTE), z.refine(isWritten, { error: 'not-written' })),
  }),
] as const;
const Words: z.ZodMiniType<NoteWords, unknown> = z.discriminatedUnion('kind', [...NOTE_WORDS]);
/** Number of the event that brought it. */
export const NoteNumber = z.int().check(z.gte(1));
/** The sheet that a drawing is on; pages that don't say so draw on what their team has. */
export const OnVariant = z.optional(z.nullable(z.enum(VARIANTS)));
const Place = z.int().check(z.gte(0), z.lte(LONGEST_QUEUE));

/** What a page may ask the room for. */
export const Ask = z.discriminatedUnion('kind', [
  ...BOARD_ASKS,
  z.strictObject({ kind: z.literal('watch-charger') }),
  z.strictObject({ kind: z.literal('calibrate'), robot: RobotNumber, light: z.enum(LIGHTS) }),
  z.strictObject({ kind: z.literal('take-calibration-back'), robot: RobotNumber }),
  z.strictObject({ kind: z.literal('change-light'), on: On }),
  z.strictObject({ kind: z.literal('choose-challenge'), key: Token }),
  z.strictObject({ kind: z.literal('choose-kit'), kit: z.unknown() }),
  z.strictObject({ kind: z.literal('queue-challenge'), key: Token, place: z.nullable(Place) }),
  z.strictObject({ kind: z.literal('vary-sheets'), on: On }),
  z.strictObject({ kind: z.literal('go-to'), phase: z.enum(PHASES) }),
  z.strictObject({ kind: z.literal('start-building'), seconds: z.nullable(Seconds) }),
  z.strictObject({ kind: z.literal('extend-building'), seconds: Seconds }),
  z.strictObject({ kind: z.literal('end-building') }),
  z.strictObject({ kind: z.literal('look-here'), on: On }),
  z.strictObject({ kind: z.literal('pause'), on: On }),
  z.strictObject({ kind: z.literal('swap-emblem'), emblem: z.enum(EMBLEMS) }),
  z.strictObject({ kind: z.literal('remove-team'), team: Token }),
  z.strictObject({ kind: z.literal('put-back-team'), team: Token }),
  z.strictObject({ kind: z.literal('free-seat'), team: Token }),
  z.strictObject({ kind: z.literal('keep-seat'), team: Token }),
  z.strictObject({ kind: z.literal('show-standings'), on: On }),
  z.strictObject({
    kind: z.literal('stage'),
    entries: z.array(Token).check(z.maxLength(16), z.refine(differ, { error: 'same-id-twice' })),
  }),
  z.strictObject({
    kind: z.literal('set-help'),
    team: z.nullable(Token),
    step: z.nullable(z.enum(HELP_STEPS)),
  }),
  z.strictObject({ kind: z.literal('wish-wall'), wish: z.enum(WALL_WISHES) }),
  z.strictObject({ kind: z.literal('try'), ...TRIED }),
  z.strictObject({ kind: z.literal('explain'), ...BECAUSE }),
  z.strictObject({ kind: z.literal('mend'), round: Round }),
  z.strictObject({
    kind: z.literal('take-late'),
    entries: z.array(Token).check(z.minLength(1), z.maxLength(LIMITS.lateAtOnce)),
    on: On,
  }),
  z.strictObject({ kind: z.literal('judge-again'), entry: Token }),
  z.strictObject({
    kind: z.literal('start-check'),
    questions: z.int().check(z.gte(1), z.lte(MOST_CLOSING_QUESTIONS)),
  }),
  z.strictObject({ kind: z.literal('answer-check'), check: CheckNumber, ...PICKED }),
  z.strictObject({ kind: z.literal('note-answer'), check: CheckNumber, team: Token, ...PICKED }),
  z.strictObject({ kind: z.literal('end-check') }),
  z.strictObject({ kind: z.literal('resume-check') }),
  z.strictObject({ kind: z.literal('show-check'), on: On }),
  z.strictObject({ kind: z.literal('accept-entry'), entry: Token }),
  z.strictObject({ kind: z.literal('return-entry'), entry: Token, reason: z.enum(RETURN_REASONS) }),
  z.strictObject({ kind: z.literal('send-note'), team: Token, words: Words }),
  z.strictObject({ kind: z.literal('put-note-away'), note: NoteNumber }),
  z.strictObject({ kind: z.literal('take-note-back'), note: NoteNumber }),
  z.strictObject({ kind: z.literal('set-gentler'), team: Token, on: On }),
  z.strictObject({
    kind: z.literal('set-weather'),
    team: z.nullable(Token),
    weather: z.nullable(Weather),
  }),
  z.strictObject({
    kind: z.literal('set-sheet'),
    team: Token,
    sheet: z.nullable(z.enum(OWN_SHEETS)),
  }),
  ...DRIVING_ASKS,
  z.strictObject({
    kind: z.literal('hand-in'),
    round: Round,
    design: z.unknown(),
    variant: OnVariant,
  }),
  z.strictObject({ kind: z.literal('hand-in-answers'), round: Round, answers: z.unknown() }),
]);
