import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fontkit from '@pdf-lib/fontkit';
import type { Mm } from '../../shared/geometry/units.ts';
import type { Segment } from './page.ts';
import { quadratic } from './shapes.ts';
import { unwrapped } from './woff.ts';

/** What is used of a font that has been read. */
interface ReadFont {
  readonly unitsPerEm: number;
  layout(text: string): { readonly glyphs: readonly Glyph[] };
}
interface Glyph {
  readonly advanceWidth: number;
  readonly path: { readonly commands: readonly { readonly command: string; readonly args: number[] }[] };
}

interface Face {
  readonly bytes: Uint8Array;
  readonly font: ReadFont;
}

const faces = new Map<boolean, Face>();

/** The static faces as .woff: the library that embeds them can't read .woff2 or variable fonts. */
function face(bold: boolean): Face {
  const known = faces.get(bold);
  if (known) return known;
  const name = `atkinson-hyperlegible-next-latin-${bold ? 700 : 400}-normal.woff`;
  const file = createRequire(import.meta.url).resolve(`@fontsource/atkinson-hyperlegible-next/files/${name}`);
  const bytes = unwrapped(readFileSync(file));
  const read = { bytes, font: fontkit.create(bytes) as unknown as ReadFont };
  faces.set(bold, read);
  return read;
}

export const fontBytes = (bold: boolean): Uint8Array => face(bold).bytes;

export function widthOf(text: string, size: Mm, bold = false): Mm {
  const { font } = face(bold);
  const units = font.layout(text).glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0);
  return (units / font.unitsPerEm) * size;
}

/** The text in lines no wider than `width`, broken between words; a word that is wider stands alone. */
export function wrapped(text: string, width: Mm, size: Mm, bold = false): string[] {
  const space = widthOf(' ', size, bold);
  const lines: string[] = [];
  let row = '';
  let wide = 0;
  for (const word of text.split(' ')) {
    // Each word is measured once, since setting a text takes a while.
    const long = widthOf(word, size, bold);
    if (row !== '' && wide + space + long > width) {
      lines.push(row);
      [row, wide] = [word, long];
    } else [row, wide] = row === '' ? [word, long] : [`${row} ${word}`, wide + space + long];
  }
  return row === '' ? lines : [...lines, row];
}

/** The outlines of a text from (0, 0) on its base line, y down: they print the same without the font. */
export function outlines(text: string, size: Mm, bold: boolean): Segment[] {
  const { font } = face(bold);
  const scale = size / font.unitsPerEm;
  const segments: Segment[] = [];
  let x = 0;
  for (const glyph of font.layout(text).glyphs) {
    segments.push(...outline(glyph, x, scale));
    x += glyph.advanceWidth * scale;
  }
  return segments;
}

function outline(glyph: Glyph, left: Mm, scale: number): Segment[] {
  let [px, py] = [0, 0];
  return glyph.path.commands.map(({ command, args }): Segment => {
    const at = args.map((value, i) => (i % 2 === 0 ? left + value * scale : -value * scale));
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = at;
    const [x0, y0] = [px, py];
    if (at.length >= 2) [px, py] = at.slice(-2) as [number, number];
    switch (command) {
      case 'moveTo':
        return ['M', a, b];
      case 'lineTo':
        return ['L', a, b];
      case 'quadraticCurveTo':
        return quadratic(x0, y0, a, b, c, d);
      case 'bezierCurveTo':
        return ['C', a, b, c, d, e, f];
      default:
        return ['Z'];
    }
  });
}
