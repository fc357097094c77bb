import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LIMITS, type WireRefusal } from '../../shared/wire/protocol.ts';
import { refusalSentence } from '../../shared/wording/en/refusals.ts';
import {
  buildingRoom,
  codeOf,
  lineDesign,
  Page,
  quickJudging,
  seated,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

let server: TestServer;
let desk: Page;
let tablet: Page;
let board: Page;
let team: string;

beforeAll(async () => {
  server = await testServer({ judging: quickJudging });
  ({ desk, tablet, team } = await buildingRoom(server));
  board = await seated(server.url, 'board');
});
afterAll(async () => {
  for (const page of [desk, board, tablet]) page.close();
  await server.end();
});

let sent = 0;
const envelope = (ask: unknown) => ({ version: 1, id: `b${sent++}`, ask });
const handIn = (design: unknown) => envelope({ kind: 'hand-in', round: 0, design });

/** A sound design with one thing changed. */
function changed(change: (line: ReturnType<typeof lineDesign>['drawing']['lines'][0]) => object): unknown {
  const design = lineDesign(150);
  const line = design.drawing.lines[0]!;
  return { ...design, drawing: { ...design.drawing, lines: [{ ...line, ...change(line) }] } };
}
const zigzag = (pieces: number) =>
  Array.from({ length: pieces }, (_, i) => ({ to: { x: 5000 + i, y: i % 2 === 0 ? 3000 : 9000 }, bulge: 0 }));
const atStart = { to: { x: 4000, y: 10_000 }, bulge: 0 };

/** Name, message, code, and for a bad form where and what. */
type Case = [string, () => unknown, WireRefusal['code'], string?, string?];

const designs: Case[] = [
  ['no design', () => handIn(null), 'bad-form', 'design', 'invalid_type'],
  ['a text', () => handIn('line'), 'bad-form', 'design', 'invalid_type'],
  ['no version', () => handIn({ drawing: lineDesign(9).drawing }), 'bad-form', 'design.version'],
  [
    'another version of the document',
    () => handIn({ ...lineDesign(9), version: 2 }),
    'bad-form',
    'design.version',
  ],
  [
    'NaN or Infinity, which JSON sends as null',
    () => handIn(changed(() => ({ width: Number.NaN }))),
    'bad-form',
    'design.drawing.lines.0.width',
    'invalid_type',
  ],
  [
    'a number that no sheet holds',
    () => handIn(changed(() => ({ from: { x: 1e300, y: 0 } }))),
    'bad-form',
    'design.drawing.lines.0.from.x',
  ],
  [
    'a number that is not whole',
    () => handIn(changed(() => ({ from: { x: 0.5, y: 0 } }))),
    'bad-form',
    'design.drawing.lines.0.from.x',
  ],
  [
    'a bulge beyond a circle',
    () => handIn(changed(() => ({ pieces: [{ to: { x: 9000, y: 9000 }, bulge: 13 }] }))),
    'bad-form',
    'design.drawing.lines.0.pieces.0.bulge',
    'too_big',
  ],
  [
    'a line of length zero',
    () => handIn(changed(() => ({ pieces: [atStart] }))),
    'bad-form',
    'design.drawing.lines',
    'line-of-length-zero',
  ],
  [
    'a line without pieces',
    () => handIn(changed(() => ({ pieces: [] }))),
    'bad-form',
    'design.drawing.lines.0.pieces',
    'too_small',
  ],
  [
    'too many points',
    () => handIn(changed(() => ({ pieces: zigzag(501) }))),
    'bad-form',
    'design.drawing.lines.0.pieces',
    'too_big',
  ],
  [
    'too many points over several lines',
    () => {
      const line = lineDesign(9).drawing.lines[0]!;
      const lines = ['a', 'b'].map((id) => ({ ...line, id, pieces: zigzag(300) }));
      return handIn({ version: 1, drawing: { lines, marks: [] } });
    },
    'bad-form',
    'design.drawing.lines',
    'too-many-pieces',
  ],
  [
    'a key that is not known',
    () => handIn({ ...lineDesign(150), colour: 'red' }),
    'bad-form',
    'design',
    'unrecognized_keys',
  ],
  [
    'a key that would reach into every object',
    () => handIn(JSON.parse('{"version":1,"drawing":{"lines":[],"marks":[],"__proto__":{"polluted":true}}}')),
    'bad-form',
    'design.drawing',
    'unrecognized_keys',
  ],
  [
    'a constructor key',
    () => handIn({ ...lineDesign(150), constructor: { prototype: { polluted: true } } }),
    'bad-form',
    'design',
    'unrecognized_keys',
  ],
  ['more than a drawing may weigh', () => handIn({ lines: 'x'.repeat(LIMITS.designBytes) }), 'too-large'],
];

const messages: Case[] = [
  ['nothing', () => undefined, 'bad-form', '', 'invalid_type'],
  ['null', () => null, 'bad-form', '', 'invalid_type'],
  ['a list', () => [1, 2, 3], 'bad-form', '', 'invalid_type'],
  ['a number', () => 7, 'bad-form', '', 'invalid_type'],
  ['bytes', () => Buffer.from('hello'), 'bad-form'],
  ['no ask', () => ({ version: 1, id: 'x' }), 'bad-form', 'ask'],
  ['an ask of no known kind', () => envelope({ kind: 'win' }), 'bad-form', 'ask.kind'],
  ['an ask named like an object’s own', () => envelope({ kind: 'constructor' }), 'bad-form', 'ask.kind'],
  ['the server’s own command', () => envelope({ kind: 'judge', entry: 'x' }), 'bad-form', 'ask.kind'],
  ['an unknown version', () => ({ ...envelope({ kind: 'end-building' }), version: 2 }), 'other-version'],
  ['an unknown version of another form', () => ({ version: 99, mystery: true }), 'other-version'],
  [
    'a version that is a text',
    () => ({ ...envelope({ kind: 'end-building' }), version: '1' }),
    'bad-form',
    'version',
  ],
  [
    'an id that is too long',
    () => ({ ...handIn(lineDesign(9)), id: 'x'.repeat(65) }),
    'bad-form',
    'id',
    'too_big',
  ],
  ['an empty id', () => ({ ...handIn(lineDesign(9)), id: '' }), 'bad-form', 'id', 'too_small'],
  ['more than a message may weigh', () => handIn('x'.repeat(LIMITS.messageBytes)), 'too-large'],
  ['a desk’s command', () => envelope({ kind: 'end-building' }), 'not-for-this-seat'],
  [
    'a round below zero',
    () => envelope({ kind: 'hand-in', round: -1, design: lineDesign(9) }),
    'bad-form',
    'ask.round',
  ],
  ['another round', () => envelope({ kind: 'hand-in', round: 1, design: lineDesign(9) }), 'other-round'],
];

/** The code, a sentence for people, and the place; and the room still takes a sound command. */
async function refusesAndGoesOn(page: Page, [, make, code, path, problem]: Case): Promise<void> {
  const answer = await page.ask('command', make());
  expect(codeOf(answer)).toBe(code);
  const { refusal } = answer as { refusal: WireRefusal };
  expect(refusalSentence(refusal).length).toBeGreaterThan(20);
  if (path !== undefined) expect(refusal).toMatchObject({ path, ...(problem ? { problem } : {}) });
  const on = !desk.state?.lookHere;
  const seq = seqOf(await desk.command({ kind: 'look-here', on }));
  await tablet.reaches(seq);
}

/** Twenty commands a second are allowed, and a table of cases is faster than that. */
const pace = () => new Promise((resolve) => setTimeout(resolve, 55));

describe('a drawing that is wrong', () => {
  it.each(designs)('is refused: %s', async (...one) => {
    await pace();
    await refusesAndGoesOn(tablet, one);
    expect(tablet.state?.entries).toEqual([]);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

describe('a message that is wrong', () => {
  it.each(messages)('is refused: %s', async (...one) => {
    await pace();
    await refusesAndGoesOn(tablet, one);
    expect(tablet.state?.entries).toEqual([]);
  });

  it.each([
    ['hello', { version: 1, room: null, seq: -1 }, 'bad-form'],
    ['hello', { version: 7 }, 'other-version'],
    ['hello', 'hello', 'bad-form'],
    ['hello', { version: 1, room: null, seq: 0, padding: 'x'.repeat(2000) }, 'too-large'],
    ['fetch', 'x'.repeat(2001), 'too-large'],
    ['latest', { kind: 'draft', round: 0, design: 'x'.repeat(LIMITS.messageBytes) }, 'too-large'],
    ['fetch', { id: 1 }, 'bad-form'],
    ['fetch', 'no such document', 'unknown-document'],
    ['fetch', '__proto__', 'unknown-document'],
    ['latest', { kind: 'doing', doing: 'sleeping' }, 'bad-form'],
    ['latest', { kind: 'stage-clock', clock: { playing: true, speed: 1, at: 0 } }, 'not-for-this-seat'],
    ['latest', { kind: 'draft', round: 3, design: lineDesign(9) }, 'other-round'],
    ['latest', { kind: 'draft', round: 0, design: changed(() => ({ pieces: [atStart] })) }, 'bad-form'],
  ])('is refused as %s: %.60j', async (name, body, code) => {
    expect(codeOf(await tablet.ask(name, body))).toBe(code);
  });

  it('without an acknowledgement is harmless', async () => {
    tablet.socket.emit('command', { wrong: true });
    tablet.socket.emit('latest');
    tablet.socket.emit('hello', null, 'no function');
    tablet.socket.emit('no such event', {});
    expect(codeOf(await tablet.hello())).toBe('accepted');
  });

  it('of a megabyte ends that link alone', async () => {
    const reckless = await seated(server.url, 'board');
    reckless.socket.emit('command', 'x'.repeat(1_100_000));
    await reckless.until('cut off', () => !reckless.socket.connected);
    expect(codeOf(await desk.command({ kind: 'show-standings', on: true }))).toBe('accepted');
    reckless.close();
  });

  it('too many in a second are refused, and later ones are not', async () => {
    const answers = await Promise.all(
      Array.from({ length: 60 }, () => board.ask('command', envelope({ kind: 'end-building' }))),
    );
    const codes = answers.map(codeOf);
    expect(codes.filter((code) => code === 'too-fast').length).toBe(60 - LIMITS.commandsPerSecond);
    await new Promise((resolve) => setTimeout(resolve, 1100));
    expect(codeOf(await board.ask('command', envelope({ kind: 'end-building' })))).toBe('not-for-this-seat');
  });

  it.each([
    ['drawings', (i: number) => handIn(lineDesign(100 + i)), 'accepted'],
    ['answers', () => envelope({ kind: 'hand-in-answers', round: 0, answers: null }), 'bad-form'],
  ])('more %s in a minute than a team can make are refused', async (_, message, before) => {
    const codes: string[] = [];
    const { desk: other, tablet: eager } = await buildingRoom(server);
    for (let i = 0; i <= LIMITS.handInsPerMinute; i++) {
      await pace();
      codes.push(codeOf(await eager.ask('command', message(i))));
    }
    expect([...new Set(codes), codes.at(-1)]).toEqual([before, 'too-fast', 'too-fast']);
    other.close();
    eager.close();
  });

  it('too many hellos of a seat are refused, over however many connections', async () => {
    const { desk: other, tablet: first, team: cookie } = await buildingRoom(server);
    const many = Array.from({ length: 30 }, () => new Page(server.url, 'tablet', cookie));
    const codes = await Promise.all(many.map(async (page) => codeOf(await page.hello())));
    expect(codes.filter((code) => code === 'too-fast').length).toBeGreaterThanOrEqual(10);
    for (const page of [other, first, ...many]) page.close();
  });

  it('in the handshake closes the socket', async () => {
    const stranger = new Page(server.url, 'burglar' as 'desk');
    await stranger.until('closed', () => stranger.socket.disconnected && !stranger.socket.active);
    stranger.close();
  });

  it('from a page of another site gets no socket', async () => {
    const foreign = new Page(server.url, 'tablet', `${team}`, null);
    foreign.socket.disconnect();
    foreign.socket.io.opts.extraHeaders = { cookie: team, origin: 'http://elsewhere.example' };
    const failed = new Promise<boolean>((resolve) => {
      foreign.socket.on('connect_error', () => resolve(true));
      foreign.socket.on('connect', () => resolve(false));
    });
    foreign.socket.connect();
    expect(await failed).toBe(true);
    foreign.close();
  });
});
