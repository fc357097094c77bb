import { beforeAll, describe, expect, it } from 'vitest';
import type { JudgeTask } from '../../server/judging/judging.ts';
import judgeEntry from '../../server/judging/worker.ts';
import { readyChallenge } from '../../server/rooms/ready.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { designIn } from '../../shared/library/variants.ts';
import { printPath } from '../../shared/wire/print.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { codeOf, joinCookie, openRoom, type Page, seqOf } from './harness.ts';
import { stage } from './stage.ts';

/** One team drives in a storm, and draws on a mirrored sheet, of which the class knows nothing. */

const KEY = 'long-pier';
const MODEL = writeDocument(Design, readyChallenge(KEY)!.model!);
const FAST = readyChallenge('one-fast-stretch')!;
const PLAIN = writeDocument(Design, FAST.model!);
const MIRRORED = writeDocument(Design, designIn('mirrored', FAST, FAST.model!)!);

/** The judge itself, without the time that a thread takes to begin. */
const judging = { judge: async (task: JudgeTask) => judgeEntry(task), close: async () => undefined };
const here = stage('file', { judging });
const { page } = here;
let desk: Page;
let inStorm: Page;
let other: Page;
let board: Page;

const verdictOf = async (entry: number): Promise<Verdict> => {
  const fetched = await desk.document(desk.state!.entries[entry]!.verdict!.document);
  const read = parseDocument(Verdict, fetched.ok ? fetched.body : null);
  if (!read.ok) throw new Error('the verdict of an entry is one');
  return read.value;
};
const handIn = async (tablet: Page) =>
  seqOf(await tablet.command({ kind: 'hand-in', round: 0, design: MODEL }));
const judged = (entries: number) =>
  desk.until('verdicts', () => desk.state!.entries.filter(({ verdict }) => verdict).length === entries);
const everybodyKnows = () => Promise.all([inStorm, other, board].map((one) => one.reaches(desk.state!.seq)));

beforeAll(async () => {
  const { word } = await openRoom(here.url, here.owner);
  desk = await page(here.url, 'desk', here.owner);
  inStorm = await page(here.url, 'tablet', await joinCookie(here.url, word));
  other = await page(here.url, 'tablet', await joinCookie(here.url, word));
  board = await page(here.url, 'board', '', word);
  seqOf(await desk.command({ kind: 'choose-challenge', key: KEY }));
  seqOf(await desk.command({ kind: 'start-building', seconds: null }));
});

describe('a room in which one team has a storm', () => {
  it('judges its entries in the storm and the others’ in the weather of the class', async () => {
    await handIn(inStorm);
    seqOf(await desk.command({ kind: 'set-weather', team: desk.state!.teams[0]!.id, weather: 'stormy' }));
    await handIn(inStorm);
    await handIn(other);
    seqOf(await desk.command({ kind: 'set-weather', team: null, weather: 'breezy' }));
    await handIn(other);
    await judged(4);
    const verdicts = await Promise.all([0, 1, 2, 3].map(verdictOf));
    expect(verdicts.map(({ steadiness }) => steadiness?.weather)).toEqual([
      'calm',
      'stormy',
      'calm',
      'breezy',
    ]);
    const [before, storm] = verdicts.map(({ steadiness }) => steadiness!.same);
    expect(storm).toBeLessThan(before!);
    expect(desk.state!.entries.map(({ weather }) => weather)).toEqual([null, 'stormy', null, 'breezy']);
    expect(desk.state!.entries[1]!.verdict!.points).toBeLessThan(desk.state!.entries[3]!.verdict!.points);
  });

  it('tells nobody else of it, not on the stage either', async () => {
    seqOf(await desk.command({ kind: 'end-building' }));
    seqOf(await desk.command({ kind: 'go-to', phase: 'show' }));
    seqOf(await desk.command({ kind: 'show-standings', on: true }));
    seqOf(await desk.command({ kind: 'stage', entries: [desk.state!.entries[1]!.id] }));
    await everybodyKnows();
    for (const one of [inStorm, other, board]) await one.hello(null, 0);
    const said = [inStorm, other, board].map(({ received }) => received.includes('stormy'));
    expect(said).toEqual([true, false, false]);
    const told = [inStorm, other, board].map(({ state }) => state!.entries[1]!.weather);
    expect(told).toEqual(['stormy', null, null]);
    const own = [inStorm, other, board].map(({ state }) => state!.conditions.own.length);
    expect(own).toEqual([1, 0, 0]);
    const secret = desk.state!.entries[1]!.verdict!.document;
    const verdictOnStorm = await verdictOf(1);
    expect(codeOf(await other.document(secret))).toBe('unknown-document');
    // The board sets the run beside the one that was judged, which says nothing of the storm.
    const onWall = await board.document(secret);
    const read = parseDocument(Verdict, onWall.ok ? onWall.body : null);
    if (!read.ok) throw new Error('the board may read the verdict on what is staged');
    expect(read.value).toMatchObject({ goals: verdictOnStorm.goals, runs: verdictOnStorm.runs });
    expect(/stormy|steadiness/.test(board.received)).toBe(false);
  });

  it('names the weather beside those entries in the results, and takes no weather from a tablet', async () => {
    const results = await fetch(`${here.url}${ROUTES.resultsCsv}?room=${desk.state!.word}`, {
      headers: { cookie: here.owner },
    });
    const lines = (await results.text()).trim().split('\r\n').slice(1);
    expect(lines.map((line) => line.split(',').at(-1))).toEqual(['', 'stormy', '', 'breezy']);
    const asked = await other.command({ kind: 'set-weather', team: null, weather: 'calm' });
    expect(codeOf(asked)).toBe('not-for-this-seat');
  });
});

describe('a room in which one team has a mirrored sheet', () => {
  const handInOn = (tablet: Page, variant: 'mirrored' | null, design: unknown) =>
    tablet.command({ kind: 'hand-in', round: 1, variant, design });
  const drawingOf = async (team: string): Promise<string> => {
    const path = printPath({ kind: 'drawing', format: 'svg', room: desk.state!.word, team });
    return (await fetch(here.url + path, { headers: { cookie: here.owner } })).text();
  };

  it('has its drawing come along, and judges it there like the others’', async () => {
    seqOf(await desk.command({ kind: 'choose-challenge', key: 'one-fast-stretch' }));
    seqOf(await desk.command({ kind: 'start-building', seconds: null }));
    const team = desk.state!.teams[0]!.id;
    const draft = (variant: 'mirrored' | null, design: unknown) =>
      inStorm.ask('latest', { kind: 'draft', round: 1, variant, design });
    seqOf(await desk.command({ kind: 'set-sheet', team, sheet: 'mirrored' }));
    // What the tablet drew before it knew is printed as it will be.
    await draft(null, PLAIN);
    const before = await drawingOf(team);
    await draft('mirrored', MIRRORED);
    expect(await drawingOf(team)).toBe(before);
    await draft('mirrored', PLAIN);
    expect(await drawingOf(team)).not.toBe(before);

    expect(codeOf(await handInOn(other, 'mirrored', MIRRORED))).toBe('other-sheet');
    // The tablet was away while the desk gave it the sheet.
    seqOf(await handInOn(inStorm, null, PLAIN));
    seqOf(await handInOn(inStorm, 'mirrored', MIRRORED));
    seqOf(await handInOn(other, null, PLAIN));
    await judged(7);
    const three = desk.state!.entries.slice(-3);
    expect(three.map(({ variant }) => variant)).toEqual([null, 'mirrored', null]);
    expect(three.map(({ verdict }) => verdict!.met)).toEqual([true, true, true]);
    expect(new Set(three.map(({ verdict }) => verdict!.points)).size).toBe(1);
  });

  it('tells nobody else of it before the drawing is shown', async () => {
    const says = () => [inStorm, other, board].map(({ received }) => received.includes('"mirrored"'));
    const [own] = desk.state!.entries.slice(-2);
    await everybodyKnows();
    for (const one of [other, board]) await one.hello(null, 0);
    expect(says()).toEqual([true, false, false]);
    seqOf(await desk.command({ kind: 'end-building' }));
    seqOf(await desk.command({ kind: 'hang', entries: [own!.id] }));
    await everybodyKnows();
    expect(says()).toEqual([true, false, true]);
    seqOf(await desk.command({ kind: 'go-to', phase: 'show' }));
    seqOf(await desk.command({ kind: 'stage', entries: [own!.id] }));
    await everybodyKnows();
    expect(other.state!.entries.at(-2)!.variant).toBe('mirrored');
    expect(other.received).not.toContain('"sheet-set"');
  });
});
