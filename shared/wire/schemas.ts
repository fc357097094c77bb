import * as z from 'zod/mini';
import { Answers } from '../documents/answers.ts';
import { MOST_CLOSING_QUESTIONS } from '../documents/closing-check.ts';
import { Design } from '../documents/design.ts';
import { Kit } from '../documents/kit.ts';
import { Weather } from '../documents/outlook.ts';
import { Guess, Reason } from '../documents/reason.ts';
import { Id, parseDocument } from '../documents/values.ts';
import { BOARD_LIMITS, BOARD_SCENES, BOARD_SETTINGS } from '../room/board.ts';
import { EMBLEMS, HELP_STEPS, PHASES, WALL_WISHES } from '../room/state.ts';
import {
  type ClientCommand,
  type Handshake,
  type Hello,
  type LatestUp,
  LIMITS,
  PROTOCOL_VERSION,
  type WireRefusal,
} from './protocol.ts';

/**
 * The form of everything that a client may send. Checked in this order: size, version, form. What
 * fails is refused with the path of the first bad value; nothing here throws.
 */

export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: WireRefusal };

/** Stores of text have no place for the character NUL. */
const hasNoNul = (text: string) => !text.includes('\0');
const Token = z
  .string()
  .check(z.minLength(1), z.maxLength(64), z.refine(hasNoNul, { error: 'character-nul' }));
const LONGEST_BUILDING = 4 * 3600;
const Seconds = z.int().check(z.gte(1), z.lte(LONGEST_BUILDING));
const Round = z.int().check(z.gte(0), z.lte(10_000));
const On = z.boolean();
const differ = (list: readonly string[]) => new Set(list).size === list.length;

const Coordinate = z.int().check(z.gte(0), z.lte(4000));
/** What a team foretold and what came, and which of three reasons it took for the right one. */
export const TRIED = {
  round: Round,
  guess: Guess,
  at: z.nullable(z.strictObject({ x: Coordinate, y: Coordinate })),
  made: z.boolean(),
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

const Ask = z.discriminatedUnion('kind', [
  ...BOARD_ASKS,
  z.strictObject({ kind: z.literal('watch-charger') }),
  z.strictObject({ kind: z.literal('choose-challenge'), key: Token }),
  z.strictObject({ kind: z.literal('choose-kit'), kit: z.unknown() }),
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
  z.strictObject({ kind: z.literal('show-check'), on: On }),
  z.strictObject({ kind: z.literal('hand-in'), round: Round, design: z.unknown() }),
  z.strictObject({ kind: z.literal('hand-in-answers'), round: Round, answers: z.unknown() }),
]);

const Version = z.int();
const Command = z.strictObject({ version: Version, id: Token, ask: Ask });
const HelloForm = z.strictObject({
  version: Version,
  room: z.nullable(Token),
  seq: z.int().check(z.gte(0)),
});
const Shake = z.strictObject({
  page: z.enum(['desk', 'board', 'tablet']),
  room: z.nullable(Token),
  tab: z.optional(z.strictObject({ id: Token, connection: z.int().check(z.gte(1)) })),
});
const SPEEDS = [1, 2, 4] as const;
const LatestForm = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('draft'),
      round: Round,
      design: z.optional(z.unknown()),
      answers: z.optional(z.unknown()),
    })
    .check(z.refine((d) => (d.design === undefined) !== (d.answers === undefined), { error: 'one-of' })),
  z.strictObject({
    kind: z.literal('doing'),
    doing: z.enum(['drawing', 'answering', 'trying', 'handed-in', 'away']),
  }),
  z.strictObject({
    kind: z.literal('stage-clock'),
    clock: z.strictObject({
      playing: z.boolean(),
      speed: z.literal(SPEEDS),
      at: z.number().check(z.gte(0), z.lte(3600)),
    }),
  }),
]);

export const JoinForm = z.strictObject({ word: Token });
export const RoomForm = z.strictObject({ room: Token });
export const SeatForm = z.strictObject({ room: Token, team: Token });
export const LinkIdForm = z.strictObject({ id: Token });
export const LinkForm = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('desk') }),
  z.strictObject({ kind: z.literal('room'), room: Token }),
]);
export const ShelfIdForm = z.strictObject({ id: Id });
export const ShelfForm = z.strictObject({ id: Id, body: z.unknown() });
export const OpenForm = z.strictObject({ chargerWatched: z.boolean() });

const MOST_MS = 600_000;
const Duration = z.number().check(z.gte(0), z.lte(MOST_MS));
export const CheckForm = z.strictObject({ roundTripMs: Duration, pageMs: Duration, live: z.boolean() });
export const AddressForm = z.strictObject({ address: z.string().check(z.maxLength(300)) });

const badForm = (path: readonly (string | number)[], problem: string): Checked<never> => ({
  ok: false,
  refusal: { code: 'bad-form', path: path.join('.'), problem },
});

/** Checks a value against a form; the refusal names the first bad place. */
export function checkForm<T>(form: z.ZodMiniType<T, unknown>, input: unknown): Checked<T> {
  const parsed = parseDocument(form, input);
  if (parsed.ok) return parsed;
  const first = parsed.problems[0];
  return badForm(first?.path ?? [], first?.code ?? 'invalid');
}

/** Bytes of a value as JSON in UTF-8; undefined where it is no JSON. */
export function sizeOf(input: unknown): number | undefined {
  try {
    const text = JSON.stringify(input);
    return text === undefined ? undefined : new TextEncoder().encode(text).length;
  } catch {
    return undefined;
  }
}

function checkSize(input: unknown, most: number): Checked<null> {
  const bytes = sizeOf(input);
  if (bytes === undefined) return badForm([], 'invalid');
  return bytes > most
    ? { ok: false, refusal: { code: 'too-large', bytes, most } }
    : { ok: true, value: null };
}

/** Another version may have another form, so it is named before the form is looked at. */
function checkVersion(input: unknown): Checked<null> {
  const version =
    typeof input === 'object' && input !== null && Object.hasOwn(input, 'version')
      ? (input as { version: unknown }).version
      : undefined;
  if (typeof version === 'number' && version !== PROTOCOL_VERSION) {
    return { ok: false, refusal: { code: 'other-version', ours: PROTOCOL_VERSION } };
  }
  return { ok: true, value: null };
}

/** How a message is checked: its form, the most bytes, and whether it says its version. */
interface Way<T> {
  readonly form: z.ZodMiniType<T, unknown>;
  readonly most: number;
  readonly versioned: boolean;
}

const { messageBytes, shortMessageBytes } = LIMITS;

/** Everything that a client may say over its socket, by the name of the event; and the handshake before. */
export const WAYS = {
  command: { form: Command, most: messageBytes, versioned: true } as Way<ClientCommand>,
  hello: { form: HelloForm, most: shortMessageBytes, versioned: true } as Way<Hello>,
  latest: { form: LatestForm, most: messageBytes, versioned: false } as Way<LatestUp>,
  fetch: { form: Token, most: shortMessageBytes, versioned: false } as Way<string>,
  handshake: { form: Shake, most: shortMessageBytes, versioned: false } as Way<Handshake>,
} as const;

function checkMessage<T>({ form, most, versioned }: Way<T>, input: unknown): Checked<T> {
  const size = checkSize(input, most);
  if (!size.ok) return size;
  const version = versioned ? checkVersion(input) : size;
  return version.ok ? checkForm(form, input) : version;
}

export const checkCommand = (input: unknown) => checkMessage(WAYS.command, input);
export const checkHello = (input: unknown) => checkMessage(WAYS.hello, input);
export const checkLatest = (input: unknown) => checkMessage(WAYS.latest, input);
export const checkHandshake = (input: unknown) => checkMessage(WAYS.handshake, input);
export const checkDocumentId = (input: unknown) => checkMessage(WAYS.fetch, input);

/** A document in its file form: size, then form. The value is the form in memory. */
function checkDocument<T>(
  name: string,
  form: z.ZodMiniType<T, unknown>,
  input: unknown,
  most: number = LIMITS.designBytes,
): Checked<T> {
  const size = checkSize(input, most);
  if (!size.ok) return size;
  const read = checkForm(form, input);
  if (read.ok || read.refusal.code !== 'bad-form') return read;
  return badForm([name, read.refusal.path].filter(Boolean), read.refusal.problem);
}

export const checkDesign = (input: unknown): Checked<Design> => checkDocument('design', Design, input);
export const checkAnswers = (input: unknown): Checked<Answers> => checkDocument('answers', Answers, input);
/** A kit need not be sound; that is a question of its own. */
export const checkKitForm = (input: unknown): Checked<Kit> =>
  checkDocument('kit', Kit, input, LIMITS.kitBytes);
