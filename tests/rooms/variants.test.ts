import { beforeAll, describe, expect, it } from 'vitest';
import { readyChallenge } from '../../server/rooms/ready.ts';
import { Challenge } from '../../shared/documents/challenge.ts';
import { Design } from '../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../shared/documents/values.ts';
import { Verdict } from '../../shared/documents/verdict.ts';
import { judge } from '../../shared/judge/judge.ts';
import { challengeIn, designIn } from '../../shared/library/variants.ts';
import { printPath } from '../../shared/wire/print.ts';
import { joinCookie, openRoom, type Page, seqOf } from './harness.ts';
import { stage } from './stage.ts';

const FERRY = readyChallenge('ferry-junction')!;
const MODEL = FERRY.model!;
const MIRRORED = designIn('mirrored', FERRY, MODEL)!;

const here = stage('file');
const { page } = here;
let word: string;
let desk: Page;
/** At berth 1, whose sheet is as it is, and at berth 2, whose sheet is mirrored. */
let tablets: readonly [Page, Page];

const written = (design: Design) => writeDocument(Design, design);
const handIn = async (tablet: Page, design: Design) =>
  seqOf(await tablet.command({ kind: 'hand-in', round: 0, design: written(design) }));

beforeAll(async () => {
  word = (await openRoom(here.url, here.owner)).word;
  desk = await page(here.url, 'desk', here.owner);
  tablets = [
    await page(here.url, 'tablet', await joinCookie(here.url, word)),
    await page(here.url, 'tablet', await joinCookie(here.url, word)),
  ];
  seqOf(await desk.command({ kind: 'choose-challenge', key: 'ferry-junction' }));
  seqOf(await desk.command({ kind: 'vary-sheets', on: true }));
  seqOf(await desk.command({ kind: 'start-building', seconds: null }));
});

describe('a room with varied sheets', () => {
  it('judges each team on its own sheet: the same points for the same, nothing for a copy', async () => {
    const [plain, mirrored] = tablets;
    await handIn(plain, MODEL);
    await handIn(mirrored, MODEL);
    await handIn(mirrored, MIRRORED);
    await desk.until('three verdicts', () => desk.state?.entries.filter((e) => e.verdict).length === 3);
    const [own, copied, swapped] = desk.state!.entries;
    expect([own, copied, swapped].map((entry) => entry?.variant)).toEqual([null, 'mirrored', 'mirrored']);
    expect([own, copied, swapped].map((entry) => entry?.verdict?.met)).toEqual([true, false, true]);
    expect(swapped?.verdict?.points).toBe(own?.verdict?.points);
  });

  it('tells every page enough to drive an entry as the server did', async () => {
    const entry = desk.state!.entries[2]!;
    for (const page of [desk, tablets[1]]) {
      const fetched = await page.document(page.state!.rounds[0]!.challenge);
      const told = parseDocument(Challenge, fetched.ok ? fetched.body : null);
      const verdict = await page.document(entry.verdict!.document);
      const stored = parseDocument(Verdict, verdict.ok ? verdict.body : null);
      if (!told.ok || !stored.ok) throw new Error('documents of the room are sound');
      const here = judge(challengeIn(entry.variant, told.value), MIRRORED, 'live').verdict;
      expect(here.runs).toEqual(stored.value.runs);
    }
  });

  it('prints each team its own sheet', async () => {
    const teams = desk.state!.teams.map(({ id }) => id);
    const sheetOf = async (team: string, challenge?: string) => {
      const path = printPath({
        kind: 'sheet',
        format: 'svg',
        room: word,
        team,
        ...(challenge && { challenge }),
      });
      return (await fetch(here.url + path, { headers: { cookie: here.owner } })).text();
    };
    // The challenge by its name is the library's own sheet, with the same emblem on it.
    const asItIs = await Promise.all(
      teams.map(async (team) => (await sheetOf(team)) === (await sheetOf(team, 'ferry-junction'))),
    );
    expect(asItIs).toEqual([true, false]);
  });
});
