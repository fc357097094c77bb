import { beforeAll, describe, expect, it } from 'vitest';
import { ROUTES, type WireRefusal } from '../../shared/wire/protocol.ts';
import { joinCookie, lineDesign, openRoom, type Page, post, quickJudging, seated } from './harness.ts';
import { type Stage, stage } from './stage.ts';

interface FiledEvent {
  seq: number;
  fact: Record<string, unknown> & { kind: string };
}
interface Filed {
  format: string;
  version: number;
  events: FiledEvent[];
  documents: { id: string; kind: string; body: Record<string, unknown> }[];
}

const here = stage('file', { judging: quickJudging });
const elsewhere = stage('file', { judging: quickJudging });
let word: string;
let desk: Page;
let file: string;

beforeAll(async () => {
  ({ word } = await openRoom(here.url, here.owner));
  desk = await here.page(here.url, 'desk', here.owner);
  const [first, second] = [await tablet(), await tablet()];
  await desk.command({ kind: 'choose-challenge', key: 'first-line' });
  await desk.command({ kind: 'start-building', seconds: null });
  await first.command({ kind: 'hand-in', round: 0, design: lineDesign(50) });
  await first.command({ kind: 'hand-in', round: 0, design: lineDesign(150) });
  await desk.until('verdicts', () => desk.state?.entries.filter((e) => e.verdict).length === 2);
  await desk.command({ kind: 'go-to', phase: 'show' });
  await desk.command({ kind: 'stage', entries: [desk.state?.entries[1]?.id ?? ''] });
  file = await (await get(here, ROUTES.roomFile, here.owner)).text();
  first.close();
  second.close();
});

const tablet = async () => seated(here.url, 'tablet', await joinCookie(here.url, word));
const get = (at: Stage, path: string, cookie: string) => fetch(at.url + path, { headers: { cookie } });
const restore = (body: unknown) => post(`${elsewhere.url}${ROUTES.restoreRoom}`, body, elsewhere.owner);
const parsed = (): Filed => JSON.parse(file) as Filed;

describe('results as CSV', () => {
  it('have a row an entry, the best one named, and a row for a team without', async () => {
    const response = await get(here, `${ROUTES.resultsCsv}?room=${word}`, here.owner);
    expect(response.headers.get('content-type')).toBe('text/csv; charset=utf-8');
    const bytes = new Uint8Array(await response.arrayBuffer());
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const lines = new TextDecoder().decode(bytes).split('\r\n');
    const tenths = '\\d+(?:\\.\\d)?';
    const time = '\\d{4}-\\d\\d-\\d\\dT[\\d:.]+Z';
    expect(lines[1]).toMatch(
      new RegExp(`^1,first-line,1,sailboat,1,${time},no,yes,no,0,no,60,1,,,0,${tenths},${tenths},0,$`),
    );
    expect(lines[2]).toMatch(
      new RegExp(`^1,first-line,1,sailboat,2,${time},no,yes,yes,60,yes,60,1,,,0,${tenths},${tenths},0,$`),
    );
    expect(lines[3]).toBe(',,2,bell,,,,,,,,0,2,,,,,,,');
    expect(lines[4]).toBe('');
  });

  it('take the sting out of a text that a spreadsheet would run', async () => {
    const evil = parsed();
    const chosen = evil.events.find((event) => event.fact.kind === 'challenge-chosen');
    chosen!.fact.key = '=HYPERLINK("http://x","y")';
    const { word: other } = (await (await restore(evil)).json()) as { word: string };
    const text = await (await get(elsewhere, `${ROUTES.resultsCsv}?room=${other}`, elsewhere.owner)).text();
    expect(text).toContain(`1,"'=HYPERLINK(""http://x"",""y"")",1,sailboat`);
  });
});

describe('a room as one file', () => {
  it('opens on another machine as it was, under its own word', async () => {
    const response = await restore(file);
    const opened = (await response.json()) as { room: string; word: string };
    expect(response.status).toBe(201);
    const there = await seated(elsewhere.url, 'desk', elsewhere.owner, opened.room);
    const { id: _, openedAt: __, ...rest } = there.state!;
    expect(desk.state).toMatchObject({ ...rest, word: desk.state?.word });
    const [entry] = there.state?.entries ?? [];
    const design = await there.document(entry?.design ?? '');
    expect(design).toEqual(await desk.document(entry?.design ?? ''));
    there.close();
  });

  it('gets a new word where its own is taken', async () => {
    await restore(file);
    const again = (await (await restore(file)).json()) as { word: string };
    expect(again.word).not.toBe(word);
    const open = await seated(elsewhere.url, 'board', '', again.word);
    expect(open.state?.word).toBe(again.word);
    open.close();
  });

  it('holds no secret of the machine it came from', async () => {
    expect(file).not.toContain(here.ownerKey);
    expect(file).not.toMatch(/token|seat|cookie/i);
  });

  const wrong: [string, (filed: Filed) => unknown, string, string][] = [
    ['another format', (f) => ({ ...f, format: 'song' }), 'format', 'invalid_value'],
    ['another version', (f) => ({ ...f, version: 2 }), 'version', 'invalid_value'],
    ['no events', (f) => ({ ...f, events: [] }), 'events', 'too_small'],
    ['a list', () => [], '', 'invalid_type'],
    [
      'a hole in the numbering',
      (f) => ({ ...f, events: f.events.filter((e) => e.seq !== 3) }),
      'events.2.seq',
      'hole-in-numbering',
    ],
    [
      'a beginning that opens no room',
      (f) => ({ ...f, events: f.events.slice(1).map((e) => ({ ...e, seq: e.seq - 1 })) }),
      'events.0.fact',
      'room-not-opened',
    ],
    ['a missing document', (f) => ({ ...f, documents: f.documents.slice(1) }), 'documents', ''],
    [
      'a document that was changed',
      (f) => ({
        ...f,
        documents: f.documents.map((d) =>
          d.kind === 'verdict' ? { ...d, body: { ...d.body, total: 99 } } : d,
        ),
      }),
      '',
      'not-the-hash-of-its-body',
    ],
    [
      'a document that is none',
      (f) => ({ ...f, documents: f.documents.map((d) => ({ ...d, body: { hello: 1 } })) }),
      '',
      'invalid',
    ],
    [
      'a fact with a foreign key',
      (f) => ({ ...f, events: [{ ...f.events[0], fact: { ...f.events[0]?.fact, extra: 1 } }] }),
      'events.0.fact',
      'unrecognized_keys',
    ],
  ];

  it.each(wrong)('is refused with %s', async (_, change, path, problem) => {
    const response = await restore(change(parsed()));
    const { refusal } = (await response.json()) as { refusal: WireRefusal };
    expect([response.status, refusal.code]).toEqual([400, 'bad-form']);
    if (path) expect(refusal).toMatchObject({ path });
    if (problem) expect(refusal).toMatchObject({ problem });
  });

  it('is refused when it is no JSON', async () => {
    const { refusal } = (await (await restore('{"format":')).json()) as { refusal: WireRefusal };
    expect(refusal.code).toBe('bad-form');
  });
});
