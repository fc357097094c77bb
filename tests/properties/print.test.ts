import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drivingPages } from '../../server/print/driving.ts';
import { pdfOf } from '../../server/print/pdf.ts';
import { printTools } from '../../server/print/tools.ts';
import { readyNamed } from '../../server/rooms/ready.ts';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { directionAt, pathFoot, pointAt } from '../../shared/geometry/path.ts';
import { distanceToSegment } from '../../shared/geometry/polygon.ts';
import { type LaidLine, layOut } from '../../shared/track/layout.ts';
import { type Plausible, plausible } from '../designs.ts';
import { lookAt, pathsOf, type SeenPath, type Spot } from '../printed.ts';
import '../seed.ts';

/** What a drawing may be off by when it has been printed and is read again, mm. */
const WITHIN = 0.1;
const RUNS = 20;

const challengeOn = ({ kit, sheet }: Plausible): Challenge => ({
  ...readyNamed('first-line')!.challenge,
  kit,
  sheet,
});

async function printedPaths(one: Plausible): Promise<SeenPath[]> {
  const sheet = { challenge: challengeOn(one), title: 'Drawn', id: 'a'.repeat(64), drawing: one.drawing };
  // The sheets of these designs are as large as A3, which takes them whole, without an offset.
  const pages = drivingPages(sheet, { paper: 'A3', lines: 'ink', marks: 'colour' }, await printTools());
  return lookAt(await pdfOf('Drawn', [() => pages]), ([first]) => pathsOf(first!));
}

const nearPolyline = (points: readonly Spot[], p: Spot): number =>
  Math.min(...points.slice(1).map((b, i) => distanceToSegment(p, points[i]!, b)));

describe('print and read back', () => {
  it('gives every line its width and its way within 0.1 mm, and every band its place and length', async () => {
    await fc.assert(
      fc.asyncProperty(plausible, async (one) => {
        const paths = await printedPaths(one);
        const layout = layOut(one.sheet, one.drawing);
        const ink = one.kit.line.color.toUpperCase();
        const strokes = paths.filter(
          (path) => path.painted === 'stroke' && path.color === ink && path.width > 2,
        );
        expect(strokes.map(({ width }) => width.toFixed(2))).toEqual(
          layout.lines.map(({ width }) => width.toFixed(2)),
        );
        layout.lines.forEach((line, i) => {
          const { points } = strokes[i]!;
          for (const p of points) expect(pathFoot(line.path, p).distance).toBeLessThanOrEqual(WITHIN);
          for (let s = 0; s <= line.path.length; s += 4)
            expect(nearPolyline(points, pointAt(line.path, s))).toBeLessThanOrEqual(WITHIN);
        });
        expectBands(one, paths, layout.lines);
      }),
      { numRuns: RUNS },
    );
  });
});

/** Each band is a plain filled block: from its beginning to its end, a little wider than its line. */
function expectBands(
  { sheet, drawing, kit }: Plausible,
  paths: readonly SeenPath[],
  lines: readonly LaidLine[],
): void {
  const colors = new Map(kit.inks.map(({ id, color }) => [id, color.toUpperCase()]));
  const inks = new Set(colors.values());
  const blocks = paths.filter((path) => path.painted === 'fill' && inks.has(path.color));
  const bands = layOut(sheet, drawing).marks.flatMap((mark) =>
    mark.bands.map((band) => ({ ...band, line: mark.line })),
  );
  // Then come the words at the sheet's edge, in the same inks.
  expect(blocks.length).toBeGreaterThanOrEqual(bands.length);
  bands.forEach((band, i) => {
    const block = blocks[i]!;
    expect(block.color).toBe(colors.get(band.ink));
    const line = lines.find(({ id }) => id === band.line)!;
    for (const way of [band.from, band.to]) {
      if (way < 0 || way > line.path.length) continue;
      const [at, along] = [pointAt(line.path, way), directionAt(line.path, way)];
      for (const right of [1, -1]) {
        // Bands are 0.4 mm wider than their line.
        const off = (right * (line.width + 0.4)) / 2;
        const corner = { x: at.x - along.y * off, y: at.y + along.x * off };
        const nearest = Math.min(...block.points.map((p) => Math.hypot(p.x - corner.x, p.y - corner.y)));
        expect(nearest).toBeLessThanOrEqual(WITHIN);
      }
    }
  });
}
