import type { Mm } from '../../shared/geometry/units.ts';
import type { Item, Page, Segment, Stroke } from './page.ts';
import { outlines, widthOf } from './type.ts';

const short = (value: number): string => String(Math.round(value * 1000) / 1000);

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign]!);

/** A page as SVG at true size. Letters are outlines, so that no program needs the font. */
export function svgOf(title: string, { w, h, items }: Page): string {
  const writer = new Writer();
  const drawn = items.map((item) => writer.item(item)).join('\n');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(w)}mm" height="${short(h)}mm" viewBox="0 0 ${short(w)} ${short(h)}">`,
    `<title>${escaped(title)}</title>`,
    `<rect width="100%" height="100%" fill="#FFFFFF"/>`,
    `<g fill="none" stroke-linejoin="round">`,
    drawn,
    '</g>',
    '</svg>\n',
  ].join('\n');
}

class Writer {
  #clips = 0;

  item(item: Item): string {
    switch (item.kind) {
      case 'path':
        return `<path d="${data(item.segments)}"${fillOf(item.fill)}${strokeOf(item.stroke)}/>`;
      case 'text':
        return textPath(item);
      case 'group':
        return this.#group(item);
    }
  }

  #group({ x, y, scale, clip, items }: Extract<Item, { kind: 'group' }>): string {
    const inside = items.map((item) => this.item(item)).join('\n');
    const place = `translate(${short(x)} ${short(y)})${scale === 1 ? '' : ` scale(${scale})`}`;
    if (!clip) return `<g transform="${place}">\n${inside}\n</g>`;
    const id = `clip-${this.#clips++}`;
    return `<clipPath id="${id}"><path d="${data(clip)}"/></clipPath>\n<g transform="${place}"><g clip-path="url(#${id})">\n${inside}\n</g></g>`;
  }
}

const data = (segments: readonly Segment[]): string =>
  segments.map(([letter, ...values]) => letter + values.map(short).join(' ')).join('');

const fillOf = (fill: string | undefined): string => (fill === undefined ? '' : ` fill="${fill}"`);

function strokeOf(stroke: Stroke | undefined): string {
  if (!stroke) return '';
  const dash = stroke.dash ? ` stroke-dasharray="${stroke.dash.map(short).join(' ')}"` : '';
  const cap = stroke.square ? '' : ' stroke-linecap="round"';
  return ` stroke="${stroke.color}" stroke-width="${short(stroke.width)}"${cap}${dash}`;
}

function textPath({ text, at, size, bold, align, color }: Extract<Item, { kind: 'text' }>): string {
  const width: Mm = align === 'left' ? 0 : widthOf(text, size, bold);
  const x = at.x - (align === 'middle' ? width / 2 : width);
  const place = `translate(${short(x)} ${short(at.y)})`;
  return `<path aria-label="${escaped(text)}" transform="${place}" d="${data(outlines(text, size, bold))}" fill="${color}"/>`;
}
