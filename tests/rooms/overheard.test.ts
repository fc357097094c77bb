import { beforeAll, describe, expect, it } from 'vitest';
import { ROUTES } from '../../shared/wire/protocol.ts';
import { joinCookie, lineDesign, openRoom, type Page, quickJudging, seqOf } from './harness.ts';
import { stage } from './stage.ts';

/**
 * A whole lesson of two rounds in which every drawing carries a number that stands nowhere else, and
 * every byte that each team's socket gets. At each moment only those numbers may have come that were
 * the team's own, or had been shown.
 */

const TEAMS = 3;
const ROUNDS = 2;

const here = stage('file', { judging: quickJudging });
const { page } = here;
let desk: Page;
const tablets: Page[] = [];
const cookies: string[] = [];

/** A draft and two entries a round: each with its own width of line in it. */
const numberOf = (team: number, round: number, draw: number) => 500_000 + 10_000 * team + 100 * round + draw;
function drawing(number: number) {
  const design = lineDesign(150);
  design.drawing.lines[0]!.pieces[0]!.to.x = number;
  return design;
}
const ALL = Array.from({ length: TEAMS }, (_, team) =>
  Array.from({ length: ROUNDS }, (__, round) => [0, 1, 2].map((draw) => numberOf(team, round, draw))).flat(),
);

beforeAll(async () => {
  const { word } = await openRoom(here.url, here.owner);
  desk = await page(here.url, 'desk', here.owner);
  for (let i = 0; i < TEAMS; i++) {
    cookies.push(await joinCookie(here.url, word));
    tablets.push(await page(here.url, 'tablet', cookies[i]));
  }
});

/** Everybody asks for everything that they know of, and for what they only heard of from the desk. */
async function curious(): Promise<void> {
  const ids = desk.state?.entries.flatMap((e) => [e.design, e.verdict?.document]) ?? [];
  for (const tablet of tablets) {
    await tablet.reaches(desk.state?.seq ?? 0);
    for (const id of ids) if (id) await tablet.document(id);
    await tablet.hello(null, 0);
  }
}

async function build(round: number, key: string): Promise<void> {
  seqOf(await desk.command({ kind: 'choose-challenge', key }));
  seqOf(await desk.command({ kind: 'start-building', seconds: null }));
  for (const [team, tablet] of tablets.entries()) {
    await tablet.ask('latest', { kind: 'draft', round, design: drawing(numberOf(team, round, 0)) });
    for (const draw of [1, 2]) {
      const design = drawing(numberOf(team, round, draw));
      seqOf(await tablet.command({ kind: 'hand-in', round, design }));
    }
  }
  await desk.until('verdicts', () => desk.state?.entries.every((entry) => entry.verdict) === true);
}

const heard = (team: number, number: number) => new RegExp(`\\b${number}\\b`).test(tablets[team]!.received);

/** The numbers of others that a team has come to know. */
const overheard = (team: number): number[] =>
  ALL.filter((_, other) => other !== team)
    .flat()
    .filter((number) => heard(team, number));

describe('what a team’s socket gets over a lesson', () => {
  it('is nobody else’s drawing before it has been shown, and then that one alone', async () => {
    await build(0, 'first-line');
    await curious();
    expect(tablets.map((_, team) => overheard(team))).toEqual([[], [], []]);

    seqOf(await desk.command({ kind: 'show-standings', on: true }));
    seqOf(await desk.command({ kind: 'go-to', phase: 'show' }));
    await curious();
    expect(tablets.map((_, team) => overheard(team))).toEqual([[], [], []]);

    const first = desk.state!.entries.find((entry) => entry.number === 1)!;
    seqOf(await desk.command({ kind: 'stage', entries: [first.id] }));
    await curious();
    const shown = numberOf(0, 0, 1);
    expect(tablets.map((_, team) => overheard(team))).toEqual([[], [shown], [shown]]);

    await build(1, 'sharp-corner');
    seqOf(await desk.command({ kind: 'end-building' }));
    seqOf(await desk.command({ kind: 'go-to', phase: 'close' }));
    await curious();
    expect(tablets.map((_, team) => overheard(team))).toEqual([[], [shown], [shown]]);
    const own = ALL.map((numbers, team) => numbers.filter((n) => heard(team, n)));
    expect(own.every((numbers) => numbers.length >= 2 * ROUNDS)).toBe(true);
  });

  it('is not in what any address gives to a team or a stranger either', async () => {
    const secrets = [...ALL.flat().map(String), here.ownerKey];
    for (const cookie of ['', ...cookies]) {
      for (const path of [...Object.values(ROUTES), '/', '/desk', '/board']) {
        const response = await fetch(here.url + path, { headers: { cookie }, redirect: 'manual' });
        const text = await response.text();
        expect([path, secrets.filter((secret) => new RegExp(`\\b${secret}\\b`).test(text))]).toEqual([
          path,
          [],
        ]);
      }
    }
  });
});

/** What anybody may ask for; every other address is the owner's or a desk's. A new one is held to that too. */
const OPEN: readonly string[] = [
  ROUTES.join,
  ROUTES.joinByLink,
  ROUTES.access,
  ROUTES.addresses,
  ROUTES.qr,
  ROUTES.checkPage,
  ROUTES.check,
  ROUTES.checkLoad,
  ROUTES.health,
  ROUTES.ready,
  // Open on the machine that runs the server, as this test does.
  ROUTES.metrics,
];

describe('addresses that are not for everybody', () => {
  it.each(Object.values(ROUTES).filter((path) => !OPEN.includes(path)))(
    '%s gives nothing to a team',
    async (path) => {
      for (const cookie of ['', cookies[0]!]) {
        for (const method of ['GET', 'POST', 'DELETE']) {
          const response = await fetch(here.url + path, { method, headers: { cookie } });
          expect([method, response.status]).toEqual([
            method,
            expect.toSatisfy((s: number) => [401, 403, 404].includes(s)),
          ]);
        }
      }
    },
  );
});
