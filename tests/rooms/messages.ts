import fc from 'fast-check';
import { Answers } from '../../shared/documents/answers.ts';
import { PROTOCOL_VERSION, ROUTES } from '../../shared/wire/protocol.ts';
import * as schemas from '../../shared/wire/schemas.ts';
import { arbitraryOf, type Form } from './forms.ts';
import { lineDesign } from './harness.ts';

const { WAYS } = schemas;

/** Everything that a curious child may send: sound, nearly sound and senseless messages of every kind. */

/** Seats of every kind: the owner's desk, those of a desk's link and of a room's, a board, two teams; and none. */
export const WHO = ['desk', 'teacher', 'substitute', 'board', 'first', 'second', 'stranger'] as const;
export type Who = (typeof WHO)[number];

export interface SocketMessage {
  readonly way: 'socket';
  readonly who: Who;
  readonly name: string;
  readonly body: unknown;
}
export interface HttpMessage {
  readonly way: 'http';
  readonly who: Who;
  readonly method: string;
  readonly path: string;
  /** null: none; a text is sent as it is. */
  readonly body: string | null;
  readonly type: string;
}
export type Message = SocketMessage | HttpMessage;

/** Stands for the id of the room's n-th entry or document, which only the test knows. */
export const KNOWN = /^known-(\d+)$/;
const known = fc.nat(20).map((n) => `known-${n}`);
const nasty = fc.constantFrom<unknown>(
  ...[
    null,
    true,
    -1,
    0.5,
    1e300,
    '',
    '__proto__',
    'constructor',
    '../../etc/passwd',
    [],
    {},
    '\u0000',
    '💧'.repeat(70),
  ],
  JSON.parse('{"__proto__":{"polluted":true}}'),
);
const anything = fc.oneof(nasty, fc.jsonValue({ maxDepth: 3 }));

const design = fc.oneof(
  fc
    .tuple(fc.integer({ min: 1, max: 180 }), fc.integer({ min: 0, max: 180 }))
    .map(([l, y]) => lineDesign(l, y)),
  arbitraryOf(Answers, { text: known, open: anything }),
  anything,
);
/** A sound value of a form; where it leaves open what it takes, that is a drawing or answers. */
const soundly = (form: Form) => arbitraryOf(form, { text: known, open: design });
const command = soundly(WAYS.command.form);

/** Most versions that a number may be are other ones. */
const withSoundVersion = (message: unknown): unknown => ({
  ...(message as object),
  version: PROTOCOL_VERSION,
});

/** The same with one thing, at any depth, taken away or made something else. */
function mended(value: unknown, steps: readonly number[], other: unknown): unknown {
  if (typeof value !== 'object' || value === null || steps.length === 0) return other;
  const keys = Object.keys(value);
  const key = keys[steps[0]! % Math.max(1, keys.length)];
  if (key === undefined) return other;
  const rest = mended((value as Record<string, unknown>)[key], steps.slice(1), other);
  if (Array.isArray(value)) return value.map((v, i) => (String(i) === key ? rest : v));
  return { ...value, [key]: rest };
}
const spoiled = (sound: fc.Arbitrary<unknown>) =>
  fc
    .tuple(
      sound,
      fc.array(fc.nat(9), { minLength: 1, maxLength: 5 }),
      fc.oneof(fc.constant(undefined), anything),
    )
    .map(([value, steps, other]) => mended(value, steps, other));

const who = fc.constantFrom(...WHO);
const say = (name: string, body: fc.Arbitrary<unknown>) =>
  fc.record({
    way: fc.constant('socket' as const),
    who,
    name: fc.constant(name),
    body: fc.oneof(
      { arbitrary: body, weight: 5 },
      { arbitrary: spoiled(body), weight: 4 },
      { arbitrary: anything, weight: 1 },
    ),
  });
const WEIGHTS = { command: 6, latest: 2, fetch: 1, hello: 1, handshake: 0 } as const;
const names = Object.keys(WAYS) as (keyof typeof WAYS)[];
const socketMessage: fc.Arbitrary<SocketMessage> = fc.oneof(
  ...names.map((name) => ({ arbitrary: say(name, soundly(WAYS[name].form)), weight: WEIGHTS[name] })),
  { arbitrary: say('command', command.map(withSoundVersion)), weight: 6 },
);

const PATHS = [
  ...Object.values(ROUTES),
  '/api/print/sheet.pdf',
  '/api/print/drawing.svg',
  '/api/print/__proto__.pdf',
  '/api/print/%ff.pdf',
  '/',
  '/desk',
  '/board',
  '/assets/../../package.json',
  '/%2e%2e/%00',
  '/api/x',
];
const query = fc.oneof(
  fc.constant(''),
  fc
    .record({
      name: fc.constantFrom('room', 'word', 'key', 'team', 'entry', 'page', '__proto__'),
      value: fc.oneof(known, fc.string()),
    })
    .map(({ name, value }) => `?${name}=${encodeURIComponent(value)}`),
);
/** Whatever a route may read has a form beside the others, named so. */
const HTTP_FORMS = Object.entries(schemas).flatMap(([name, form]) =>
  name.endsWith('Form') && '_zod' in form ? [form as unknown as Form] : [],
);
const bodyText = fc.oneof(
  ...HTTP_FORMS.map((form) => soundly(form).map((body) => JSON.stringify(body))),
  anything.map((value) => JSON.stringify(value)),
  fc.string(),
);
const httpMessage: fc.Arbitrary<HttpMessage> = fc.record({
  way: fc.constant('http' as const),
  who,
  method: fc.constantFrom('GET', 'GET', 'POST', 'POST', 'PUT', 'DELETE', 'HEAD', 'OPTIONS'),
  path: fc.tuple(fc.constantFrom(...PATHS), query).map(([path, q]) => path + q),
  body: fc.option(bodyText),
  type: fc.constantFrom(
    'application/json',
    'text/plain',
    'application/x-www-form-urlencoded',
    'a/b; charset=klingon',
  ),
});

export const message: fc.Arbitrary<Message> = fc.oneof(
  { arbitrary: socketMessage, weight: 4 },
  { arbitrary: httpMessage, weight: 1 },
);
