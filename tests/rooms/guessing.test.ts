import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { newWord } from '../../server/rooms/words.ts';
import { ROUTES } from '../../shared/wire/protocol.ts';
import {
  codeOf,
  openRoom,
  ownerCookie,
  Page,
  post,
  quickJudging,
  type TestServer,
  testServer,
} from './harness.ts';

/** Somebody who looks for the words of rooms, and a class that only types badly; both behind one address. */

const TABLETS = 30;
const TYPOS = 5;

let server: TestServer;
let word: string;
let room: string;
beforeEach(async () => {
  server = await testServer({ judging: quickJudging });
  ({ room, word } = await openRoom(server.url, await ownerCookie(server)));
});
afterEach(() => server.end());

const join = async (typed: string) => (await post(`${server.url}${ROUTES.join}`, { word: typed })).status;
const wrong = (i: number) => join(`nowhere-${i}`);

describe('joining by word', () => {
  it('lets thirty tablets in at once that mistype it four times each', async () => {
    const tablet = async (i: number) => {
      const typed: number[] = [];
      for (let typo = 1; typo < TYPOS; typo++) typed.push(await wrong(10 * i + typo));
      return [...typed, await join(word)];
    };
    const all = await Promise.all(Array.from({ length: TABLETS }, (_, i) => tablet(i)));
    expect(all).toEqual(Array.from({ length: TABLETS }, () => [404, 404, 404, 404, 204]));
  });

  it('refuses everything after 150 wrong words, also a right one', async () => {
    const guesses: number[] = [];
    for (let i = 0; i < TABLETS * TYPOS; i++) guesses.push(await wrong(i));
    expect(new Set(guesses)).toEqual(new Set([404]));
    expect([await wrong(999), await join(word)]).toEqual([429, 429]);
    const scanned = await fetch(`${server.url}${ROUTES.joinByLink}?word=${word}`, { redirect: 'manual' });
    expect(scanned.headers.get('location')).toBe('/?refused=too-fast');
  });

  it('counts words that are asked all at once', async () => {
    const guesses = await Promise.all(Array.from({ length: 400 }, (_, i) => wrong(i)));
    expect(guesses.filter((status) => status === 404).length).toBeLessThanOrEqual(TABLETS * TYPOS);
  });

  it('keeps those who are in: a seat needs no word', async () => {
    const cookie = (await post(`${server.url}${ROUTES.join}`, { word })).headers.getSetCookie()[0]!;
    for (let i = 0; i < TABLETS * TYPOS; i++) await wrong(i);
    const page = new Page(server.url, 'tablet', cookie.split(';')[0]);
    expect(codeOf(await page.hello())).toBe('accepted');
    page.close();
  });
});

describe('other ways to try words', () => {
  const picture = async (room: string) => (await fetch(`${server.url}${ROUTES.qr}?room=${room}`)).status;

  it('the QR code of wrong words counts too, and the one by the room’s id goes on', async () => {
    expect(await picture('an-erased-id')).toBe(404);
    for (let i = 0; i < TABLETS * TYPOS; i++) expect(await picture(`nowhere-${i}`)).toBe(404);
    expect([await picture('nowhere-999'), await picture(word), await join(word)]).toEqual([429, 429, 429]);
    expect(await picture(room)).toBe(200);
  });

  it('boards of wrong words count too, and the one by the room’s id goes on', async () => {
    for (let i = 1; i < TABLETS * TYPOS; i++) await wrong(i);
    const codes: string[] = [];
    for (const name of ['nowhere-0', 'nowhere-999', word, room]) {
      const page = new Page(server.url, 'board', '', name);
      codes.push(codeOf(await page.hello()));
      page.close();
    }
    expect(codes).toEqual(['unknown-room', 'too-fast', 'too-fast', 'accepted']);
  });
});

describe('newWord', () => {
  const digits = (rooms: number) => newWord(rooms).split('-')[1]!.length;

  // 161 words and 9 · 10^(d-1) numbers of d digits: one room in 14,490, and so on,
  // up to 1,449,000 in 161 · 90,000,000 = 14,490,000,000 of 8 digits.
  it.each([
    [0, 2],
    [1, 3],
    [13, 3],
    [14, 4],
    [143, 4],
    [144, 5],
    [1000, 5],
    [14_490, 7],
    [144_900, 8],
    [1_448_999, 8],
  ])('beside %d rooms has %d digits, so that a guess hits one at most once in 10,000', (rooms, expected) => {
    expect(digits(rooms)).toBe(expected);
  });
});
