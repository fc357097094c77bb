import { describe, expect, it } from 'vitest';
import { closingPages } from '../../../../server/print/closing-sheet.ts';
import { printed } from '../../../../server/print/print.ts';
import { printTools } from '../../../../server/print/tools.ts';
import { DEMO_KIT } from '../../../../shared/kit/demo-kit.ts';
import { CLOSING, EVIDENCE } from './after-lesson.ts';
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
    expect(pages[1]![0]).toMatch(/^Kite Room plum-42, opened 2026-03-04 \(UTC\) Met 3 of 4 challenges/);
    for (const standard of ['CSTA 1B-AP-15', 'England KS1', 'ISTE 1.5', 'NGSS 3-5-ETS1-1'])
      expect(pages[1]![0]).toContain(standard);
  });
});
