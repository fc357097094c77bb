import { beforeAll, describe, expect, it } from 'vitest';
import type { JudgeTask } from '../../server/judging/judging.ts';
import judgeEntry from '../../server/judging/worker.ts';
import { readyChallenge } from '../../server/rooms/ready.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { codeOf, joinCookie, openRoom, type Page, seqOf } from './harness.ts';
import { stage } from './stage.ts';

/** One team drives in a storm that the class knows nothing of. */

const KEY = 'long-pier';
const MODEL = writeDocument(Design, readyChallenge(KEY)!.model!);

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
    expect(codeOf(await other.document(secret))).toBe('unknown-document');
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
