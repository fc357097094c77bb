import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design, Drawing, Line } from '../../shared/documents/design.ts';
import { judge, liveJudge } from '../../shared/judge/judge.ts';
import { sceneOf, scenesInTurn } from '../../shared/judge/scene.ts';
import { type Plausible, plausible, stepped } from '../designs.ts';
import '../seed.ts';

/** What a child does to a drawing, each with a number that says where. */
type Edit = (drawing: Drawing, where: number) => Drawing;

const at = <T>(list: readonly T[], where: number): T => list[where % list.length]!;
const withLine = (drawing: Drawing, old: Line, line: Line): Drawing => ({
  ...drawing,
  lines: drawing.lines.map((one) => (one === old ? line : one)),
});

const EDITS: Record<string, Edit> = {
  'move a vertex': (drawing, where) => {
    const line = at(drawing.lines, where);
    const moved = where % line.pieces.length;
    const pieces = line.pieces.map((piece, i) =>
      i === moved
        ? { ...piece, to: { x: stepped(piece.to.x + 0.5), y: stepped(piece.to.y - (where % 7)) } }
        : piece,
    );
    return withLine(drawing, line, { ...line, pieces });
  },
  'bend a piece': (drawing, where) => {
    const line = at(drawing.lines, where);
    const bent = where % line.pieces.length;
    const bulge = ((where % 9) - 4) / 10;
    const pieces = line.pieces.map((piece, i) => (i === bent ? { ...piece, bulge } : piece));
    return withLine(drawing, line, { ...line, pieces });
  },
  'change a width': (drawing, where) => {
    const line = at(drawing.lines, where);
    return withLine(drawing, line, { ...line, width: line.width === 5 ? 6 : 5 });
  },
  'slide a mark': ({ lines, marks }, where) => ({
    lines,
    marks: marks.map((mark, i) => (i === where % marks.length ? { ...mark, at: mark.at / 2 } : mark)),
  }),
  'paint a mark anew': ({ lines, marks }, where) => ({
    lines,
    marks: marks.map((mark, i) =>
      i === where % marks.length ? { ...mark, bands: [...mark.bands].reverse() } : mark,
    ),
  }),
  'remove a mark': ({ lines, marks }, where) => ({
    lines,
    marks: marks.filter((_, i) => i !== where % marks.length),
  }),
  'remove a line': ({ lines, marks }, where) => {
    const gone = at(lines, where);
    if (lines.length === 1) return { lines, marks };
    return {
      lines: lines.filter((line) => line !== gone),
      marks: marks.filter(({ line }) => line !== gone.id),
    };
  },
  'draw a line': ({ lines, marks }, where) => {
    const from = { x: 40 + (where % 300), y: 40 + (where % 200) };
    const to = { x: stepped(from.x + 60), y: stepped(from.y + (where % 50)) };
    const line = { id: `new-${lines.length}-${where}`, width: 5, from, pieces: [{ to, bulge: 0 }] };
    return { lines: [...lines, line], marks };
  },
  'draw a line twice': ({ lines, marks }, where) => {
    const line = at(lines, where);
    return { lines: [...lines, { ...line, id: `twice-${lines.length}-${where}` }], marks };
  },
  'order the lines anew': ({ lines, marks }) => ({ lines: [...lines].reverse(), marks }),
};

const edits = fc.array(
  fc.record({
    edit: fc.constantFrom(...Object.keys(EDITS), 'take back'),
    where: fc.integer({ min: 0, max: 5000 }),
  }),
  { minLength: 1, maxLength: 5 },
);

/** The drawings one after another; taking back goes to the one before the last. */
function drawingsOf({ drawing }: Plausible, done: readonly { edit: string; where: number }[]): Drawing[] {
  const drawings = [drawing];
  for (const { edit, where } of done) {
    drawings.push(EDITS[edit]?.(drawings.at(-1)!, where) ?? drawings.at(-2) ?? drawing);
  }
  return drawings;
}

/** Over the left half: some marks lie in it, and some don't. */
const BOX = { id: 'left', name: { en: 'Marks' }, at: { x: 0, y: 0 }, w: 210, h: 297 };

const challengeOf = ({ kit, sheet }: Plausible): Challenge => ({
  version: 1,
  id: 'anything',
  topic: 1,
  sentence: { en: 'Anything.' },
  play: 'draw',
  sheet,
  kit,
  starts: ['start'],
  goals: [{ id: 'arrive', formula: { kind: 'finish' }, must: true, weight: 1 }],
  limits: { time: 4 },
});

const bytesOf = ({ buffer }: Uint8Array | Uint16Array | Int32Array): Buffer =>
  Buffer.from(buffer as ArrayBuffer);

test('liveJudge over a sequence of edits says of each drawing what judge says of it alone', () => {
  fc.assert(
    fc.property(plausible, edits, fc.boolean(), (drawn, done, boxed) => {
      const design = boxed ? { ...drawn, sheet: { ...drawn.sheet, boxes: [BOX] } } : drawn;
      const challenge = challengeOf(design);
      const live = liveJudge();
      for (const drawing of drawingsOf(design, done)) {
        const one = { version: 1, drawing } as const;
        expect(live(challenge, one)).toStrictEqual(judge(challenge, one, 'live'));
      }
    }),
    { numRuns: 15 },
  );
});

test('scenesInTurn over a sequence of edits has ink, meetings and joins as from nothing', () => {
  fc.assert(
    fc.property(plausible, edits, (design, done) => {
      const challenge = challengeOf(design);
      const scenes = scenesInTurn();
      for (const drawing of drawingsOf(design, done)) {
        const one = { version: 1, drawing } as const;
        const [kept, alone] = [scenes(challenge, one), sceneOf(challenge, one)];
        expect(kept.world.joins).toStrictEqual(alone.world.joins);
        expect(kept.track.nodes).toStrictEqual(alone.track.nodes);
        expect(kept.track.edges).toStrictEqual(alone.track.edges);
        for (const part of ['grey', 'color', 'tiles', 'colorTiles'] as const) {
          expect(bytesOf(kept.world.field[part]).equals(bytesOf(alone.world.field[part]))).toBe(true);
        }
      }
    }),
    { numRuns: 30 },
  );
});

test('sceneOf takes over paths and meetings of lines that did not change, and from no other sheet', () => {
  const line = (id: string, y: number): Line => ({
    id,
    width: 5,
    from: { x: 30, y },
    pieces: [{ to: { x: 90, y: y + 1 }, bulge: 0 }],
  });
  const [design] = fc.sample(plausible, { numRuns: 1, seed: 1 });
  const challenge = challengeOf(design!);
  const drawn = (...lines: Line[]): Design => ({ version: 1, drawing: { lines, marks: [] } });
  const before = sceneOf(challenge, drawn(line('a', 40), line('b', 80)));
  const after = sceneOf(challenge, drawn(line('a', 40), line('b', 81)), before);
  const [a, b] = [before.world.layout.lines, after.world.layout.lines];
  expect(b[0]!.path).toBe(a[0]!.path);
  expect(after.track.pairs.get(b[0]!.path)!.get(b[0]!.path)).toBe(
    before.track.pairs.get(a[0]!.path)!.get(a[0]!.path),
  );
  expect(b[1]!.path).not.toBe(a[1]!.path);
  const elsewhere = { ...challenge, sheet: { ...challenge.sheet } };
  const anew = sceneOf(elsewhere, drawn(line('a', 40)), before);
  expect(anew.world.layout.lines[0]!.path).not.toBe(a[0]!.path);
});
