import * as z from 'zod/mini';
import { Answers } from '../documents/answers.ts';
import { Design } from '../documents/design.ts';
import { Kit } from '../documents/kit.ts';
import { Id, parseDocument } from '../documents/values.ts';
import { WhatIf } from '../documents/what-if.ts';
import { ROOM_LIMITS } from '../room/decision.ts';
import { Ask, OnVariant, Round, Token } from './ask-forms.ts';
import {
  type ClientCommand,
  type Handshake,
  type Hello,
  type LatestUp,
  LIMITS,
  PROTOCOL_VERSION,
  type WireRefusal,
} from './protocol.ts';
import { STAGE_SPEEDS } from './stage.ts';

/**
 * The form of everything that a client may send. Checked in this order: size, version, form. What
 * fails is refused with the path of the first bad value; nothing here throws.
 */

export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: WireRefusal };

const Version = z.int();
const Command = z.strictObject({ version: Version, id: Token, ask: Ask });
const HelloForm = z.strictObject({
  version: Version,
  room: z.nullable(Token),
  seq: z.int().check(z.gte(0)),
  at: z.optional(z.number()),
});
const Shake = z.strictObject({
  page: z.enum(['desk', 'board', 'tablet']),
  room: z.nullable(Token),
  tab: z.optional(z.strictObject({ id: Token, connection: z.int().check(z.gte(1)) })),
});
const RunTime = z.number().check(z.gte(0), z.lte(3600));
const Loop = z
  .strictObject({ from: RunTime, to: RunTime })
  .check(z.refine(({ from, to }) => from < to, { error: 'no-stretch' }));
const Look = z.strictObject({
  sensors: z.boolean(),
  whole: z.boolean(),
  onTop: z.boolean(),
  ways: z
    .array(z.strictObject({ entry: Token, run: z.int().check(z.gte(0), z.lt(64)) }))
    .check(z.maxLength(4 * ROOM_LIMITS.onStage)),
  whatIf: z.nullable(WhatIf),
});
const LatestForm = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('draft'),
      round: Round,
      design: z.optional(z.unknown()),
      variant: OnVariant,
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
      speed: z.literal(STAGE_SPEEDS),
      at: RunTime,
      loop: z.optional(Loop),
      look: z.optional(Look),
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
export const OpenForm = z.strictObject({ chargerWatched: z.boolean(), continues: z.optional(Token) });

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
