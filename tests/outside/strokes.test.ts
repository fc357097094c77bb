import { mkdirSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type CleanStroke, cleanStroke } from '../../shared/geometry/fitting/clean.ts';
import { fitStroke } from '../../shared/geometry/fitting/fit-stroke.ts';
import { evenly, lengthOf, smoothed } from '../../shared/geometry/fitting/sampling.ts';
import { simplified } from '../../shared/geometry/fitting/simplify.ts';
import { type Path, pathFoot, pathOf, pointAt } from '../../shared/geometry/path.ts';
import { pieceDirection } from '../../shared/geometry/piece.ts';
import { distanceToSegment } from '../../shared/geometry/polygon.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { referenceIsHere, skippedWithoutReference } from '../reference.ts';
import { type RecordedStroke, recordedStrokes } from '../strokes.ts';

// Source: strokes of many people from The Quick, Draw! Dataset, Google, CC BY 4.0.

interface Fitted extends RecordedStroke {
  readonly clean: CleanStroke;
  readonly path: Path;
  readonly chords: number;
}

const CURVED = [
  'circle',
  'squiggle',
  'river',
  'snake',
  'hurricane',
  'rainbow',
  'moon',
  'banana',
  'string bean',
];

const strokes: Fitted[] = referenceIsHere ? recordedStrokes().map(fitted) : [];

function fitted(stroke: RecordedStroke): Fitted {
  const clean = cleanStroke(stroke.points)!;
  const source = fitStroke(stroke.points)!;
  return { ...stroke, clean, path: pathOf(source), chords: simplified(clean.points, 2).length - 1 };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1]!;
}

function distanceToPolyline(p: PaperPoint, points: readonly PaperPoint[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < points.length; i++) {
    least = Math.min(least, distanceToSegment(p, points[i - 1]!, points[i]!));
  }
  return least;
}

/** Turns between neighbouring pieces, degrees. */
function turns({ pieces }: Path): number[] {
  return pieces.slice(1).map((piece, k) => {
    const before = pieceDirection(pieces[k]!, pieces[k]!.length);
    const after = pieceDirection(piece, 0);
    const cosine = before.x * after.x + before.y * after.y;
    return (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI;
  });
}

describe.skipIf(!referenceIsHere)(`recorded strokes are fitted${skippedWithoutReference}`, () => {
  it('every cleaned sample lies within 2 mm of the fit', () => {
    expect(strokes.length).toBeGreaterThan(150);
    for (const { clean, path, id } of strokes) {
      const worst = Math.max(...clean.points.map((p) => pathFoot(path, p).distance));
      expect(worst, id).toBeLessThanOrEqual(2);
    }
  });

  it('every point of the fit lies within 2.5 mm of the cleaned stroke', () => {
    for (const { clean, path, id } of strokes) {
      for (let s = 0; s <= path.length; s += 1) {
        expect(distanceToPolyline(pointAt(path, s), clean.points), id).toBeLessThanOrEqual(2.5);
      }
    }
  });

  it('pieces join without a turn, or at a corner of at least 25 degrees', () => {
    for (const { path, id } of strokes) {
      for (const turn of turns(path)) expect(turn < 1 || turn > 25, `${id} turns by ${turn}`).toBe(true);
    }
  });

  it('at most 200 pieces, in steps of 0.01 mm', () => {
    for (const { path } of strokes) {
      expect(path.pieces.length).toBeLessThanOrEqual(200);
      for (const { to } of path.pieces) {
        expect(Math.abs(to.x * 100 - Math.round(to.x * 100))).toBeLessThan(1e-6);
        expect(Math.abs(to.y * 100 - Math.round(to.y * 100))).toBeLessThan(1e-6);
      }
    }
  });

  it('curved strokes: median pieces no more than chords by Ramer, Douglas and Peucker, circles half', () => {
    const curved = strokes.filter(({ word }) => CURVED.includes(word));
    expect(median(curved.map((s) => s.path.pieces.length))).toBeLessThanOrEqual(
      median(curved.map((s) => s.chords)),
    );
    const circles = strokes.filter(({ word }) => word === 'circle');
    expect(circles.length).toBeGreaterThan(20);
    expect(median(circles.map((s) => s.chords / s.path.pieces.length))).toBeGreaterThanOrEqual(2);
  });

  it('nine of ten straight strokes shake by no more than the 0.2 mm that the corner property draws with', () => {
    const shakes = strokes.filter(({ word }) => word === 'line').map(({ points }) => shakeOf(points));
    expect(shakes.sort((a, b) => a - b)[Math.floor(shakes.length * 0.9)]).toBeLessThan(0.2);
  });

  it('a contact sheet of all is written', () => {
    const folder = new URL('../../.artefacts/', import.meta.url);
    mkdirSync(folder, { recursive: true });
    const sheet = contactSheet(strokes);
    writeFileSync(new URL('strokes.svg', folder), sheet);
    expect(sheet.match(/<path /g)).toHaveLength(strokes.length);
  });
});

/** Root mean square of what stands off sideways from a moving average of 20 mm. */
function shakeOf(points: readonly PaperPoint[]): number {
  const length = lengthOf(points);
  const steps = Math.round(length);
  const even = evenly(points, length / steps, steps);
  const calm = smoothed(even, length / steps, [], 20);
  let squares = 0;
  for (let i = 20; i < steps - 20; i++) {
    const [a, b, p, q] = [calm[i - 3]!, calm[i + 3]!, even[i]!, calm[i]!];
    const across = (p.x - q.x) * (b.y - a.y) - (p.y - q.y) * (b.x - a.x);
    squares += (across / Math.hypot(b.x - a.x, b.y - a.y)) ** 2;
  }
  return Math.sqrt(squares / (steps - 40));
}

function contactSheet(all: readonly Fitted[]): string {
  const across = 10;
  const rows = Math.ceil(all.length / across);
  const cells = all.map((stroke, i) => {
    const place = `translate(${(i % across) * 200} ${Math.floor(i / across) * 200})`;
    return `<g transform="${place}">${cell(stroke)}</g>`;
  });
  const size = `width="${across * 200}" height="${rows * 200}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${cells.join('\n')}</svg>\n`;
}

function cell({ points, path, word, chords }: Fitted): string {
  const start = path.pieces[0]!.from;
  const drawn = path.pieces.map((p) =>
    p.kind === 'straight'
      ? `L${p.to.x} ${p.to.y}`
      : `A${p.radius} ${p.radius} 0 ${Math.abs(p.sweep) > Math.PI ? 1 : 0} ${p.sweep > 0 ? 1 : 0} ${p.to.x} ${p.to.y}`,
  );
  const joints = path.pieces.map(({ to, kind }) => {
    return `<circle cx="${to.x}" cy="${to.y}" r="1.5" fill="${kind === 'straight' ? '#06c' : '#c60'}"/>`;
  });
  const raw = points.map((p) => `${p.x.toFixed(1)},${p.y.toFixed(1)}`).join(' ');
  return [
    '<rect width="200" height="200" fill="#fff" stroke="#ddd"/>',
    `<polyline points="${raw}" fill="none" stroke="#bbb" stroke-width="3"/>`,
    `<path d="M${start.x} ${start.y}${drawn.join('')}" fill="none" stroke="#111"/>`,
    ...joints,
    `<text x="4" y="196" font-size="9" font-family="sans-serif">${word}: ${path.pieces.length} pieces, ${chords} chords</text>`,
  ].join('');
}
