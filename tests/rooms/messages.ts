import fc from 'fast-check';
import { PHASES } from '../../shared/room/state.ts';
import { PROTOCOL_VERSION, ROUTES } from '../../shared/wire/protocol.ts';
import { lineDesign } from './harness.ts';

/** Everything that a curious child may send: sound, nearly sound and senseless messages of every kind. */

export const WHO = ['desk', 'board', 'first', 'second', 'stranger'] as const;
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
const id = fc.oneof(fc.string({ minLength: 1, maxLength: 64 }), fc.constantFrom('x', 'y', '__proto__'));

const design = fc.oneof(
  fc
    .tuple(fc.integer({ min: 1, max: 180 }), fc.integer({ min: 0, max: 180 }))
    .map(([l, y]) => lineDesign(l, y)),
  anything,
);
const round = fc.integer({ min: 0, max: 3 });
const seconds = fc.option(fc.integer({ min: 1, max: 14_400 }));
const ask = fc.oneof(
  fc.constant({ kind: 'watch-charger' }),
  fc.record({
    kind: fc.constant('choose-challenge'),
    key: fc.oneof(fc.constantFrom('first-line', 'sharp-corner'), id),
  }),
  fc.record({ kind: fc.constant('go-to'), phase: fc.constantFrom(...PHASES) }),
  fc.record({ kind: fc.constant('start-building'), seconds }),
  fc.record({ kind: fc.constant('extend-building'), seconds }),
  fc.constant({ kind: 'end-building' }),
  fc.record({ kind: fc.constantFrom('look-here', 'show-standings'), on: fc.boolean() }),
  fc.record({ kind: fc.constant('stage'), entries: fc.array(fc.oneof(known, id), { maxLength: 3 }) }),
  fc.record({
    kind: fc.constantFrom('judge-again', 'judge', 'join', 'time-is-up', 'give-up-judging'),
    entry: known,
  }),
  fc.record({ kind: fc.constant('hand-in'), round, design }),
);
const version = fc.oneof(
  { arbitrary: fc.constant<unknown>(PROTOCOL_VERSION), weight: 9 },
  { arbitrary: nasty, weight: 1 },
);
const command = fc.record({ version, id, ask });
const hello = fc.record({
  version,
  room: fc.oneof(fc.constant(null), known, id),
  seq: fc.integer({ min: -1, max: 400 }),
});
const clock = fc.record({ playing: fc.boolean(), speed: fc.constantFrom(1, 2, 3, 4), at: fc.double() });
const latest = fc.oneof(
  fc.record({ kind: fc.constant('draft'), round, design }),
  fc.record({
    kind: fc.constant('doing'),
    doing: fc.constantFrom('drawing', 'trying', 'handed-in', 'away', 'x'),
  }),
  fc.record({ kind: fc.constant('stage-clock'), clock }),
);

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
const socketMessage: fc.Arbitrary<SocketMessage> = fc.oneof(
  { arbitrary: say('command', command), weight: 6 },
  { arbitrary: say('latest', latest), weight: 2 },
  { arbitrary: say('fetch', fc.oneof(known, id)), weight: 1 },
  { arbitrary: say('hello', hello), weight: 1 },
);

const PATHS = [
  ...Object.values(ROUTES),
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
      name: fc.constantFrom('room', 'word', 'key', '__proto__'),
      value: fc.oneof(known, fc.string()),
    })
    .map(({ name, value }) => `?${name}=${encodeURIComponent(value)}`),
);
const bodyText = fc.oneof(
  fc.record({ word: fc.oneof(known, fc.string()) }).map((b) => JSON.stringify(b)),
  fc.record({ chargerWatched: fc.oneof(fc.boolean(), nasty) }).map((b) => JSON.stringify(b)),
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
