import * as z from 'zod/mini';
import { VARIANTS } from '../documents/challenge.ts';
import { ClosingKey, MOST_CLOSING_QUESTIONS } from '../documents/closing-check.ts';
import { DOCUMENT_KINDS, DOCUMENT_SCHEMAS, type DocumentKind } from '../documents/kinds.ts';
import { Weather } from '../documents/outlook.ts';
import { parseDocument, writeDocument } from '../documents/values.ts';
import { stateOf } from '../room/apply.ts';
import { BOARD_LIMITS } from '../room/board.ts';
import { LIGHTS } from '../room/calibration.ts';
import { HELP_STEPS, RETURN_REASONS } from '../room/coaching.ts';
import { OWN_SHEETS } from '../room/conditions.ts';
import { EVENT_VERSION, type RoomEvent, type RoomFact } from '../room/events.ts';
import { LONGEST_QUEUE } from '../room/plan.ts';
import { EMBLEMS, PHASES, WALL_WISHES } from '../room/state.ts';
import { upgraded } from '../room/upgrade.ts';
import { BECAUSE, NOTE_WORDS, NoteNumber, ON_BOARD, OnVariant, PICKED, TRIED } from './ask-forms.ts';
import { DRIVING_FACTS, RobotNumber } from './driving-forms.ts';
import { LIMITS } from './protocol.ts';
import { type Checked, checkForm } from './schemas.ts';

/**
 * A whole room as one file: its events and all documents that they speak of, to be opened again on
 * another machine. Seats and answers stay behind: they are secrets of the first machine.
 */
export const ROOM_FILE = { format: 'harbour-lines-room', version: 1 } as const;

const ROOM_FILE_LIMITS = { events: 100_000, documents: 20_000 } as const;

const Name = z.string().check(z.minLength(1), z.maxLength(64));
const DocId = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const Time = z.int().check(z.gte(0));
const Word = z.string().check(z.regex(/^[a-z]{1,24}-[0-9]{1,8}$/));

const VERDICT = { document: DocId, points: z.int().check(z.gte(0), z.lte(100)), met: z.boolean() };
const Verdicts = z.array(z.strictObject({ entry: Name, ...VERDICT })).check(z.maxLength(100_000));

const Hung = z.strictObject({ entry: Name, design: DocId });
const BOARD_FACTS = [
  z.strictObject({ kind: z.literal('scene-shown'), ...ON_BOARD['show-scene'] }),
  z.strictObject({ kind: z.literal('board-set'), ...ON_BOARD['set-board'] }),
  z.strictObject({
    kind: z.literal('hung'),
    drawings: z.array(Hung).check(z.maxLength(BOARD_LIMITS.gallery)),
  }),
  z.strictObject({ kind: z.literal('fleet-shown'), drawing: Hung, weather: Weather }),
  z.strictObject({ kind: z.literal('foretold'), drawing: z.nullable(Hung) }),
  z.strictObject({ kind: z.literal('driven-on'), ...ON_BOARD['drive-on'] }),
  z.strictObject({ kind: z.literal('hands-counted'), ...ON_BOARD['count-hands'] }),
  z.strictObject({ kind: z.literal('counted-back'), ...ON_BOARD['count-back'] }),
] as const;
const Berth = z.int().check(z.gte(1), z.lte(EMBLEMS.length));
const Returned = z.strictObject({
  kind: z.literal('returned'),
  entry: Name,
  reason: z.enum(RETURN_REASONS),
});
const OnSheet = z.strictObject({ kind: z.literal('sheet'), variant: z.nullable(z.enum(VARIANTS)) });
const COACHED = [
  z.strictObject({
    kind: z.literal('note-sent'),
    note: NoteNumber,
    team: Name,
    words: z.discriminatedUnion('kind', [...NOTE_WORDS, Returned, OnSheet]),
  }),
  z.strictObject({ kind: z.literal('note-put-away'), note: NoteNumber, team: Name }),
  z.strictObject({ kind: z.literal('note-taken-back'), note: NoteNumber, team: Name }),
  z.strictObject({ kind: z.literal('gentler-set'), team: Name, on: z.boolean() }),
  z.strictObject({
    kind: z.literal('weather-set'),
    team: z.nullable(Name),
    weather: z.nullable(Weather),
  }),
  z.strictObject({
    kind: z.literal('sheet-set'),
    team: Name,
    sheet: z.nullable(z.enum(OWN_SHEETS)),
  }),
  z.strictObject({ kind: z.literal('entry-returned'), entry: Name }),
  z.strictObject({ kind: z.literal('entry-accepted'), entry: Name }),
] as const;
const Place = z.strictObject({
  team: Name,
  emblem: z.enum(EMBLEMS),
  berth: Berth,
  help: z.optional(z.enum(HELP_STEPS)),
  gentler: z.optional(z.literal(true)),
});
const PLANNED = [
  z.strictObject({
    kind: z.literal('queue-changed'),
    queue: z.array(Name).check(z.maxLength(LONGEST_QUEUE)),
  }),
  z.strictObject({
    kind: z.literal('continued'),
    room: Name,
    last: z.nullable(Name),
    places: z.array(Place).check(z.maxLength(EMBLEMS.length)),
  }),
] as const;

const Fact: z.ZodMiniType<RoomFact, unknown> = z.discriminatedUnion('kind', [
  ...BOARD_FACTS,
  z.strictObject({ kind: z.literal('opened'), room: Name, word: Word, chargerWatched: z.boolean() }),
  z.strictObject({ kind: z.literal('charger-watched') }),
  z.strictObject({ kind: z.literal('robot-calibrated'), robot: RobotNumber, light: z.enum(LIGHTS) }),
  z.strictObject({ kind: z.literal('calibration-taken-back'), robot: RobotNumber }),
  z.strictObject({ kind: z.literal('light-changed') }),
  z.strictObject({ kind: z.literal('light-kept') }),
  z.strictObject({
    kind: z.literal('team-joined'),
    team: Name,
    emblem: z.enum(EMBLEMS),
    berth: z.optional(Berth),
  }),
  z.strictObject({ kind: z.literal('emblem-changed'), team: Name, emblem: z.enum(EMBLEMS) }),
  z.strictObject({ kind: z.literal('team-removed'), team: Name }),
  z.strictObject({
    kind: z.literal('team-put-back'),
    team: Name,
    emblem: z.enum(EMBLEMS),
    berth: Berth,
  }),
  z.strictObject({ kind: z.literal('seat-freed'), team: Name }),
  z.strictObject({ kind: z.literal('seat-kept'), team: Name }),
  z.strictObject({ kind: z.literal('seat-moved'), team: Name }),
  z.strictObject({
    kind: z.literal('help-set'),
    team: z.nullable(Name),
    step: z.nullable(z.enum(HELP_STEPS)),
  }),
  z.strictObject({ kind: z.literal('wall-wished'), team: Name, wish: z.enum(WALL_WISHES) }),
  z.strictObject({ kind: z.literal('tried'), team: Name, ...TRIED }),
  z.strictObject({ kind: z.literal('explained'), team: Name, ...BECAUSE }),
  z.strictObject({ kind: z.literal('mended'), team: Name, round: TRIED.round }),
  z.strictObject({ kind: z.literal('kit-chosen'), kit: z.nullable(DocId) }),
  z.strictObject({
    kind: z.literal('challenge-chosen'),
    challenge: DocId,
    key: Name,
    kit: z.optional(DocId),
    gentler: z.optional(DocId),
  }),
  z.strictObject({ kind: z.literal('sheets-varied'), on: z.boolean() }),
  z.strictObject({ kind: z.literal('phase-changed'), phase: z.enum(PHASES) }),
  z.strictObject({ kind: z.literal('building-started'), until: z.nullable(Time) }),
  z.strictObject({ kind: z.literal('building-extended'), until: Time }),
  z.strictObject({ kind: z.literal('building-ended'), by: z.enum(['desk', 'time']) }),
  z.strictObject({ kind: z.literal('look-here'), on: z.boolean() }),
  z.strictObject({ kind: z.literal('paused') }),
  z.strictObject({ kind: z.literal('resumed'), after: Time }),
  z.strictObject({ kind: z.literal('standings-shown'), on: z.boolean(), verdicts: Verdicts }),
  z.strictObject({
    kind: z.literal('handed-in'),
    entry: Name,
    team: Name,
    design: DocId,
    late: z.boolean(),
    taken: z.optional(z.boolean()),
    variant: OnVariant,
  }),
  z.strictObject({
    kind: z.literal('late-taken'),
    entries: z.array(Name).check(z.maxLength(LIMITS.lateAtOnce)),
    on: z.boolean(),
  }),
  z.strictObject({ kind: z.literal('judged'), entry: Name, ...VERDICT, counted: z.boolean() }),
  z.strictObject({ kind: z.literal('not-judged'), entry: Name }),
  z.strictObject({ kind: z.literal('judging-again'), entry: Name }),
  z.strictObject({
    kind: z.literal('staged'),
    entries: z.array(Name).check(z.maxLength(16)),
    designs: z.array(DocId).check(z.maxLength(16)),
    verdicts: Verdicts,
  }),
  z.strictObject({ kind: z.literal('verdicts-told'), verdicts: Verdicts }),
  z.strictObject({ kind: z.literal('check-started'), check: DocId, key: ClosingKey }),
  z.strictObject({ kind: z.literal('check-answered'), team: Name, ...PICKED }),
  z.strictObject({ kind: z.literal('check-ended'), key: ClosingKey }),
  z.strictObject({ kind: z.literal('check-resumed'), key: ClosingKey }),
  z.strictObject({
    kind: z.literal('check-shown'),
    result: z.nullable(
      z.strictObject({
        right: z.array(z.int().check(z.gte(0))).check(z.maxLength(MOST_CLOSING_QUESTIONS)),
        teams: z.int().check(z.gte(0)),
      }),
    ),
  }),
  ...COACHED,
  ...PLANNED,
  ...DRIVING_FACTS,
  z.strictObject({ kind: z.literal('lost') }),
]);

/** Version 1 had three facts without what the board is told. */
const FirstFact = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('standings-shown'), on: z.boolean() }),
  z.strictObject({ kind: z.literal('judged'), entry: Name, ...VERDICT }),
  z.strictObject({
    kind: z.literal('staged'),
    entries: z.array(Name).check(z.maxLength(16)),
    designs: z.array(DocId).check(z.maxLength(16)),
  }),
]);

const EVENT = { seq: z.int().check(z.gte(1)), at: Time };
const Event = z.discriminatedUnion('version', [
  z.strictObject({ ...EVENT, version: z.literal(EVENT_VERSION), fact: Fact }),
  z.strictObject({ ...EVENT, version: z.literal(1), fact: z.union([FirstFact, Fact]) }),
]);

const Document = z.strictObject({
  id: DocId,
  kind: z.enum(DOCUMENT_KINDS),
  body: z.unknown(),
});

const Form = z.strictObject({
  format: z.literal(ROOM_FILE.format),
  version: z.literal(ROOM_FILE.version),
  events: z.array(Event).check(z.minLength(1), z.maxLength(ROOM_FILE_LIMITS.events)),
  documents: z.array(Document).check(z.maxLength(ROOM_FILE_LIMITS.documents)),
});

export interface FiledDocument {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly body: unknown;
}

export interface RoomFile {
  readonly format: typeof ROOM_FILE.format;
  readonly version: typeof ROOM_FILE.version;
  readonly events: readonly RoomEvent[];
  readonly documents: readonly FiledDocument[];
}

const bad = (path: string, problem: string): Checked<never> => ({
  ok: false,
  refusal: { code: 'bad-form', path, problem },
});

/** A document's body read and written again: what is left is exactly its schema's file form. */
export function cleanBody({ kind, body }: FiledDocument): Checked<unknown> {
  const schema = DOCUMENT_SCHEMAS[kind] as z.ZodMiniType<unknown, unknown>;
  const parsed = parseDocument(schema, body);
  if (parsed.ok) return { ok: true, value: writeDocument(schema, parsed.value) };
  const first = parsed.problems[0];
  return bad(['body', ...(first?.path ?? [])].join('.'), first?.code ?? 'invalid');
}

/** The kinds that a reference may be of, the usual one first. */
const KITS: readonly DocumentKind[] = ['kit'];
const CHALLENGES: readonly DocumentKind[] = ['challenge'];
const DRAWN: readonly DocumentKind[] = ['design'];
const HANDED_IN: readonly DocumentKind[] = ['design', 'answers'];
const CHECKS: readonly DocumentKind[] = ['closing-check'];
const VERDICTS: readonly DocumentKind[] = ['verdict', 'answers-verdict'];

/**
 * Reads a room file: form, numbering without holes, and that every document that an event speaks of is
 * there. Whether ids are the hashes of bodies is for the server, which has a hash.
 */
export function checkRoomFile(input: unknown): Checked<RoomFile> {
  const form = checkForm<RoomFile>(Form as z.ZodMiniType<RoomFile, unknown>, input);
  if (!form.ok) return form;
  const { documents } = form.value;
  const events = upgraded(form.value.events);
  const hole = events.findIndex((event, i) => event.seq !== i + 1);
  if (hole >= 0) return bad(`events.${hole}.seq`, 'hole-in-numbering');
  const state = stateOf(events);
  if (!state) return bad('events.0.fact', 'room-not-opened');
  const kinds = new Map(documents.map((d) => [d.id, d.kind]));
  const wanted = [
    ...(state.kit === null ? [] : [[state.kit, KITS] as const]),
    ...state.rounds.map((round) => [round.challenge, CHALLENGES] as const),
    ...state.rounds.flatMap(({ gentler }) => (gentler ? [[gentler, DRAWN] as const] : [])),
    ...state.entries.map((entry) => [entry.design, HANDED_IN] as const),
    ...state.checks.map((check) => [check.document, CHECKS] as const),
    ...state.entries.flatMap((e) => (e.verdict ? [[e.verdict.document, VERDICTS] as const] : [])),
  ];
  const missing = wanted.find(([id, these]) => id === null || !these.some((kind) => kinds.get(id) === kind));
  if (missing) return bad('documents', `missing-${missing[1][0]}`);
  return { ok: true, value: { ...form.value, events } };
}
