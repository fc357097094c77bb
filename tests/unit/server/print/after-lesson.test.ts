import { describe, expect, it } from 'vitest';
import { closingPages } from '../../../../server/print/closing-sheet.ts';
import { picturePages } from '../../../../server/print/picture-pages.ts';
import { printed } from '../../../../server/print/print.ts';
import { printTools } from '../../../../server/print/tools.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { CLOSING, EVIDENCE, PICTURE } from './after-lesson.ts';
import { placed, textsOf } from './items.ts';

const tools = await printTools();

describe('the closing check on paper', () => {
  const pages = closingPages(CLOSING, { paper: 'A4', key: true }, tools);
  const texts = pages.map((page) => textsOf(page.items).join(' '));

  it('asks about one drawing under one picture, with a box and a letter before each answer', () => {
    const all = texts.join(' ');
    expect(all).toContain('1. Mark 1: what does this mark say to the robot from the Boathouse?');
    expect(all).toContain('2. Mark 1: what does this mark say to the robot from the Lighthouse?');
    const choices = CLOSING.check.questions.flatMap(({ ask }): readonly unknown[] => ask.choices);
    const boxes = pages
      .flatMap((page) => placed(page.items))
      .filter(({ item, points }) => {
        const [left, right] = [points[0], points[2]];
        return (
          item.kind === 'path' && item.stroke && left && right && Math.abs(right.x - left.x - 4.6) < 1e-9
        );
      });
    expect(boxes).toHaveLength(choices.length);
  });

  it('has a key on a page of its own: faster from here, slower from there, and why', () => {
    const key = texts.at(-1)!;
    expect(key).toContain('Key: Three last questions');
    expect(key).toMatch(/[A-D] {2}faster It meets coral and aqua, in this order\./);
    expect(key).toMatch(/[A-D] {2}slower It meets aqua and coral, in this order\./);
    expect(texts.slice(0, -1).join(' ')).not.toContain('It meets');
    const bare = closingPages(CLOSING, { paper: 'A4', key: false }, tools);
    expect(bare.length).toBe(pages.length - 1);
  });
});

describe('evidence on paper', () => {
  it('begins with one plain sentence about the class, then has a page a team', () => {
    const print = printed(
      { kind: 'evidence', paper: 'A4', lines: 'ink', marks: 'colour', key: 'no' },
      { word: 'plum-42', kit: DEMO_KIT, teams: [], teamCount: 1, address: '', evidence: EVIDENCE },
      tools,
    );
    if (!print.ok) throw new Error(print.why);
    const pages = print.parts.map((part) => part().map((page) => textsOf(page.items).join(' ')));
    expect(pages).toHaveLength(2);
    expect(pages[0]![0]).toMatch(/^Three of four teams read a mark rightly from both sides\. Room plum-42/);
    expect(pages[1]![0]).toMatch(/^Kite Room plum-42, opened 2026-03-04 Met 3 of 4 challenges/);
    for (const standard of ['CSTA 1B-AP-15', 'England KS1', 'ISTE 1.5', 'NGSS 3-5-ETS1-1'])
      expect(pages[1]![0]).toContain(standard);
  });
});

describe('the class picture on paper', () => {
  const round = PICTURE.rounds[0]!;
  const of = (change: Partial<typeof round> = {}) =>
    picturePages({ ...round, ...change }, PICTURE, 'A4', tools);
  const said = (pages: ReturnType<typeof of>) => pages.flatMap((page) => textsOf(page.items)).join(' ');

  it('has rules, places, minutes of challenge and lesson, and what each team did', () => {
    const text = said(of());
    for (const part of [
      /^Class picture: One fast stretch Room plum-42, opened 2026-03-04 /,
      / Sharp corner At worst 40°\. .* Open the corner to 95° or more\. 3 teams, 4 entries /,
      / Challenge 10:00 at the screen 2:00 on paper /,
      / The whole lesson 15:00 at the screen 5:00 on paper /,
      / Kite 75 2 4 5:30 /,
    ])
      expect(text).toMatch(part);
  });

  it('counts in one ring the two teams whose runs failed close to one another', () => {
    const texts = of().flatMap((page) => placed(page.items));
    const numbers = texts.filter(({ item }) => item.kind === 'text' && /^\d+$/.test(item.text) && item.bold);
    expect(numbers.map(({ item }) => item.kind === 'text' && item.text)).toEqual(['2']);
  });

  it('has neither sheet nor rules where answers are handed in, and says so where nothing was', () => {
    const { challenge, picture } = round;
    const predicted = said(of({ challenge: { ...challenge, play: 'predict' } }));
    expect(predicted).toContain('Here answers are handed in');
    expect(predicted).not.toContain('Sharp corner');
    const teams = picture.teams.map((team) => ({ ...team, entries: 0 }));
    const empty = said(of({ picture: { ...picture, teams } }));
    expect(empty).toContain('Nothing has been handed in for this challenge yet.');
    expect(empty).not.toContain('Kite');
  });

  it('is a part for each challenge, and cannot be printed before there is one', () => {
    const asked = { kind: 'picture', paper: 'A4', lines: 'ink', marks: 'colour', key: 'no' } as const;
    const room = { word: 'plum-42', kit: DEMO_KIT, teams: [], teamCount: 1, address: '' };
    const twice = printed(asked, { ...room, picture: { ...PICTURE, rounds: [round, round] } }, tools);
    expect(twice.ok && twice.parts.length).toBe(2);
    const none = printed(asked, { ...room, picture: { ...PICTURE, rounds: [] } }, tools);
    expect(none).toEqual({ ok: false, why: 'no-challenge' });
  });
});
