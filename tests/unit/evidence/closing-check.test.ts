import { describe, expect, it } from 'vitest';
import { ClosingCheck } from '../../../shared/documents/closing-check.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { closingCheckOf, type MadeCheck } from '../../../shared/evidence/closing-check.ts';
import type { ClassDrawing } from '../../../shared/evidence/closing-questions.ts';
import { choicesOfMark } from '../../../shared/evidence/mark-choices.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';

function challengeNamed(key: string) {
  const found = readyChallenges(DEMO_KIT).find((one) => one.key === key);
  if (!found?.playable) throw new Error(`no playable challenge is called ${key}`);
  return found.challenge;
}

function made(
  drawings: readonly ClassDrawing[],
  count = 3,
  before: MadeCheck['check']['questions'] = [],
): MadeCheck | undefined {
  const making = closingCheckOf(drawings, count, before);
  for (let step = making.next(); ; step = making.next()) if (step.done) return step.value;
}

/** The maker's own drawing of a challenge, and the same without its marks. */
const drawn = (key: string): ClassDrawing => {
  const challenge = challengeNamed(key);
  return { challenge, design: challenge.model! };
};
const withoutMarks = ({ challenge, design }: ClassDrawing): ClassDrawing => ({
  challenge,
  design: { ...design, drawing: { ...design.drawing, marks: [] } } as Design,
});

describe('choicesOfMark', () => {
  // By the chart of the demo kit: C A faster, A C slower, V A take right, C V pass, C A C tiptoe, C V C call.
  it('offers what a mark says from the other side, with one ink mistaken, and by its first colour', () => {
    const found = choicesOfMark(DEMO_KIT, 'CA', 0)!;
    expect(found.answer).toEqual({
      right: 'pace-by:1',
      word: 'CA',
      mistakes: [
        { choice: 'pace-by:-1', mistake: 'same-from-both-sides' },
        { choice: 'choose:right', mistake: 'one-ink-mistaken' },
        { choice: 'nothing', mistake: 'first-colour-counts' },
      ],
    });
    expect(found.choices.map(({ key }) => key)).toEqual([
      'pace-by:1',
      'pace-by:-1',
      'choose:right',
      'nothing',
    ]);
  });

  it('puts the right one where the turn says', () => {
    expect(choicesOfMark(DEMO_KIT, 'CA', 2)!.choices[2]!.key).toBe('pace-by:1');
    expect(choicesOfMark(DEMO_KIT, 'CA', 7)!.choices[3]!.key).toBe('pace-by:1');
  });

  it('has none for a word that the chart lacks', () => {
    expect(choicesOfMark(DEMO_KIT, 'CAV', 0)).toBeUndefined();
  });
});

describe('closingCheckOf', () => {
  const check = made([drawn('one-fast-stretch'), withoutMarks(drawn('one-fast-stretch'))])!;

  it('asks about one mark from both sides first, and knows both answers: faster here, slower there', () => {
    const asks = check.check.questions.map(({ ask }) => ask);
    expect(asks.map(({ kind, start }) => [kind, start])).toEqual([
      ['mark', 'start'],
      ['mark', 'finish'],
      ['why', 'start'],
    ]);
    expect(asks[0]).toMatchObject({ mark: (asks[1] as { mark: string }).mark });
    expect(check.key.map(({ right }) => right).slice(0, 2)).toEqual(['pace-by:1', 'pace-by:-1']);
  });

  it('asks why of a drawing that does not do what it should: without marks nothing is fast', () => {
    expect(check.key[2]!.right).toBe('falls-short');
    expect(check.key[2]!.mistakes).toHaveLength(2);
  });

  it('says of every answer whether it is right or what mistake it comes from', () => {
    for (const [i, { ask }] of check.check.questions.entries()) {
      const { right, mistakes } = check.key[i]!;
      expect(ask.choices.map(({ key }) => key).toSorted()).toEqual(
        [right, ...mistakes.map(({ choice }) => choice)].toSorted(),
      );
    }
  });

  it('comes back from its file as it is', () => {
    const read = parseDocument(ClosingCheck, writeDocument(ClosingCheck, check.check));
    expect(read).toEqual({ ok: true, value: check.check });
  });

  it('makes the same of the same drawings, and has as many questions as are wanted and found', () => {
    const again = made([drawn('one-fast-stretch'), withoutMarks(drawn('one-fast-stretch'))]);
    expect(again).toEqual(check);
    const counts = [1, 2, 5].map((n) => made([drawn('one-fast-stretch')], n)?.key.length);
    expect(counts).toEqual([1, 2, 4]);
  });

  it('asks nothing twice, and has nothing more to ask in the end', () => {
    const drawings = [drawn('one-fast-stretch')];
    const asked: MadeCheck['check']['questions'] = [];
    for (let next = made(drawings, 5); next; next = made(drawings, 5, asked))
      asked.push(...next.check.questions);
    expect(new Set(asked.map((one) => JSON.stringify(one))).size).toBe(asked.length);
    // Three marks, each from two sides, and the end; no straight without a mark has room for one more.
    expect(asked.length).toBe(7);
  });

  it('asks about an end that is left to luck, of which nobody knows more', () => {
    const { key, check: asked } = made([withoutMarks(drawn('ferry-junction'))], 5)!;
    const at = asked.questions.findIndex(({ ask }) => ask.kind === 'end');
    expect(key[at]!.right).toBe('chance');
    expect(key[at]!.mistakes.map(({ mistake }) => mistake)).toContain('knows-the-wish');
  });

  it('puts a mark into a drawing without any, on its longest straight, and asks about that from both sides', () => {
    const { check: asked, key } = made([withoutMarks(drawn('one-fast-stretch'))])!;
    const [first, second] = asked.questions;
    const [mark] = first!.sheet.given.marks;
    // The longest straight of the maker's line runs from x = 42 to 222 at y = 160: its middle is 90 mm along it.
    expect(mark!.at + mark!.bands.length * (5.5 / 2)).toBeCloseTo(90, 1);
    expect(first!.ask).toMatchObject({ kind: 'mark', start: 'start', mark: mark!.id });
    expect(second!.ask).toMatchObject({ kind: 'mark', start: 'finish', mark: mark!.id });
    expect(key.slice(0, 2).map(({ word }) => word)).toEqual(['CA', 'AC']);
  });

  it('asks why a real robot did something else, where robots of the model do so too', () => {
    const stray = { seed: 3, start: 'start', cause: 'lost', at: { x: 250, y: 120 } } as const;
    const real = { trouble: 'lost', at: null, strays: [stray] } as const;
    const { check: asked, key } = made([{ ...drawn('one-fast-stretch'), real }])!;
    expect(asked.questions[2]!.ask).toMatchObject({ kind: 'why', real: 'lost', at: { x: 250, y: 120 } });
    expect(key[2]!.right).toBe('some-robots-stray');
    const misread = { ...stray, cause: 'mark-misread' } as const;
    const other = { trouble: 'other-branch', at: null, strays: [misread] } as const;
    expect(made([{ ...drawn('one-fast-stretch'), real: other }])!.key[2]!.right).toBe('mark-overlooked');
  });

  it('does not ask why a real robot did what the model has never seen', () => {
    const real = { trouble: 'lost', at: { x: 9, y: 9 }, strays: [] } as const;
    const { check: asked } = made([{ ...drawn('one-fast-stretch'), real }], 5)!;
    expect(asked.questions.filter(({ ask }) => ask.kind === 'why')).toEqual([]);
  });

  it('has nothing to ask where nothing is drawn', () => {
    expect(made([])).toBeUndefined();
  });
});
