import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readyChallenge } from '../../server/rooms/ready.ts';
import { Design, type Mark } from '../../shared/documents/design.ts';
import { writeDocument } from '../../shared/documents/values.ts';
import { PAGES_HEAD, type PrintAsk, type PrintProgress, printPath } from '../../shared/wire/print.ts';
import {
  buildingRoom,
  joinCookie,
  lineDesign,
  quickJudging,
  seqOf,
  type TestServer,
  testServer,
} from './harness.ts';

let server: TestServer;
let room: Awaited<ReturnType<typeof buildingRoom>>;
let own: string;
let other: string;
let otherTeam: string;

beforeAll(async () => {
  server = await testServer({ judging: quickJudging });
  room = await buildingRoom(server);
  other = await joinCookie(server.url, room.word);
  await room.desk.until('two teams', () => room.desk.state?.teams.length === 2);
  own = room.desk.state!.teams[0]!.id;
  otherTeam = room.desk.state!.teams[1]!.id;
  const seq = seqOf(await room.tablet.command({ kind: 'hand-in', round: 0, design: lineDesign(150) }));
  await room.desk.reaches(seq);
});
afterAll(async () => {
  room.desk.close();
  room.tablet.close();
  await server.end();
});

const ask = (print: Partial<PrintAsk> & Pick<PrintAsk, 'kind' | 'format'>, cookie: string) =>
  fetch(server.url + printPath(print), { headers: { cookie } });
const codeOf = async (response: Response) =>
  response.ok ? 'fine' : ((await response.json()) as { refusal: { code: string } }).refusal.code;

describe('a download of print', () => {
  it('is a PDF with a name, or a page as SVG that says of how many', async () => {
    const pdf = await ask({ kind: 'drawing', format: 'pdf', room: room.word, team: own }, room.owner);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    expect(pdf.headers.get('content-disposition')).toContain('harbour-lines-drawing-sailboat.pdf');
    expect(new TextDecoder().decode(await pdf.arrayBuffer()).slice(0, 5)).toBe('%PDF-');
    const svg = await ask(
      { kind: 'predict', format: 'svg', challenge: 'two-jobs', key: 'yes', page: '2' },
      room.owner,
    );
    expect(svg.headers.get('content-type')).toMatch(/^image\/svg\+xml/);
    expect(svg.headers.get(PAGES_HEAD)).toBe('2');
    expect(await svg.text()).toContain('Key: What will the robot do?');
  });

  it('speaks the language that is asked for, English where none is, and no other', async () => {
    const titled = async (more: Partial<PrintAsk>) =>
      await (
        await ask({ kind: 'sheet', format: 'svg', challenge: 'first-line', ...more }, room.owner)
      ).text();
    expect(await titled({ language: 'es' })).toContain('La primera línea');
    expect(await titled({})).toContain('The first line');
    const foreign = await ask({ kind: 'chart', format: 'svg', language: 'xx' as 'es' }, room.owner);
    expect(await codeOf(foreign)).toBe('bad-form');
  });

  it('is for the desk, and for a team what is its own', async () => {
    const teamKinds = ['sheet', 'drawing', 'chart', 'gauge', 'slips'] as const;
    for (const kind of teamKinds)
      expect(await codeOf(await ask({ kind, format: 'svg' }, room.team)), kind).toBe('fine');
    const closed = [
      ...(['patch', 'strip', 'predict', 'two-travellers', 'mend'] as const),
      ...(['pack', 'class', 'evidence', 'picture'] as const),
    ];
    for (const kind of closed) {
      expect(await codeOf(await ask({ kind, format: 'pdf' }, room.team)), kind).toBe('not-for-this-seat');
      expect(await codeOf(await ask({ kind, format: 'pdf' }, '')), kind).toBe('no-seat');
    }
    const foreign = [{ team: otherTeam }, { challenge: 'first-line' }, { key: 'yes' }] as const;
    for (const more of foreign)
      expect(await codeOf(await ask({ kind: 'sheet', format: 'svg', ...more }, room.team))).toBe(
        'not-for-this-seat',
      );
  });

  it('has the class picture of the round that is played, and no closing check before one is asked', async () => {
    const picture = await ask({ kind: 'picture', format: 'svg', language: 'es', offset: '60' }, room.owner);
    expect(picture.headers.get(PAGES_HEAD)).toBe('1');
    const closing = await ask({ kind: 'closing', format: 'svg' }, room.owner);
    expect(await closing.json()).toEqual({ refusal: { code: 'cannot-print', why: 'not-asked' } });
  });

  it('gives no team the entry of another', async () => {
    const entry = room.desk.state!.entries[0]!.id;
    expect(await codeOf(await ask({ kind: 'drawing', format: 'svg', entry }, room.team))).toBe('fine');
    expect(await codeOf(await ask({ kind: 'drawing', format: 'svg', entry }, other))).toBe('cannot-print');
  });

  it('is refused in a word where there is nothing to print or the asking is wrong', async () => {
    const svg = (more: Partial<PrintAsk> & Pick<PrintAsk, 'kind'>) =>
      ask({ format: 'svg', ...more }, room.owner);
    expect(await codeOf(await svg({ kind: 'drawing', team: otherTeam }))).toBe('cannot-print');
    expect(await codeOf(await svg({ kind: 'sheet', challenge: 'no-such' }))).toBe('cannot-print');
    expect(await codeOf(await svg({ kind: 'chart', page: '9' }))).toBe('cannot-print');
    expect(await codeOf(await svg({ kind: 'chart', room: 'nowhere-1' }))).toBe('unknown-room');
    const wrong = await fetch(`${server.url}/api/print/chart.pdf?paper=A7`, {
      headers: { cookie: room.owner },
    });
    expect(await codeOf(wrong)).toBe('bad-form');
    for (const offset of ['841', '-721', '60m', ''])
      expect(await codeOf(await svg({ kind: 'evidence', offset })), offset).toBe('bad-form');
    expect(await codeOf(await svg({ kind: 'evidence', offset: '840' }))).toBe('fine');
    const unknown = await fetch(`${server.url}/api/print/flag.pdf`, { headers: { cookie: room.owner } });
    expect(await codeOf(unknown)).toBe('bad-form');
  });

  it('tells how far a pack is, part by part, and then carries the file', async () => {
    const response = await ask({ kind: 'class', format: 'pdf', progress: 'yes' }, room.owner);
    const bytes = new Uint8Array(await response.arrayBuffer());
    const told: PrintProgress[] = [];
    let from = 0;
    while (!told.some((line) => 'bytes' in line)) {
      const end = bytes.indexOf(10, from);
      told.push(JSON.parse(new TextDecoder().decode(bytes.subarray(from, end))) as PrintProgress);
      from = end + 1;
    }
    // The common pages, and a pack for each of the two teams.
    expect(told.slice(0, -1)).toEqual([0, 1, 2, 3].map((done) => ({ done, of: 3 })));
    expect(told.at(-1)).toEqual({ bytes: bytes.length - from, name: 'harbour-lines-class.pdf' });
    expect(new TextDecoder().decode(bytes.subarray(from, from + 5))).toBe('%PDF-');
  });

  it('has the draft of a team that puts marks on lines that are given, once there is a mark', async () => {
    const { desk, tablet } = room;
    seqOf(await desk.command({ kind: 'end-building' }));
    seqOf(await desk.command({ kind: 'choose-challenge', key: 'ferry-junction' }));
    seqOf(await desk.command({ kind: 'start-building', seconds: null }));
    const { drawing } = readyChallenge('ferry-junction')!.model!;
    expect([drawing.lines.length, drawing.marks.length]).toEqual([0, 1]);
    const printed = async (marks: readonly Mark[]) => {
      const design = writeDocument(Design, { version: 1, drawing: { lines: [], marks: [...marks] } });
      await tablet.ask('latest', { kind: 'draft', round: 1, design });
      return codeOf(await ask({ kind: 'drawing', format: 'svg', team: own }, room.owner));
    };
    expect(await printed([])).toBe('cannot-print');
    expect(await printed(drawing.marks)).toBe('fine');
  });
});
