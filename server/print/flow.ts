import type { Mm } from '../../shared/geometry/units.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { COLORS, type Item, type Page, paperSize } from './page.ts';
import { circle, line, path, text } from './shapes.ts';
import { wrapped } from './type.ts';

/** A run of text in one look; it is wrapped to the width that it has. */
export interface Said {
  readonly text: string;
  readonly size?: Mm;
  readonly bold?: boolean;
  readonly quiet?: boolean;
}

/** What stands on a page that is read, one below the other. None is torn over two pages. */
export type Block =
  | { readonly kind: 'title' | 'head' | 'text' | 'quiet' | 'bullet' | 'tick'; readonly text: string }
  /** Columns with their widths as shares of the whole; a hair line below. */
  | {
      readonly kind: 'row';
      readonly shares: readonly number[];
      readonly cells: readonly (readonly Said[])[];
    }
  /** A line to write on, after its words. */
  | { readonly kind: 'write'; readonly text: string }
  | { readonly kind: 'space' }
  | Laid;

/** Things of any kind that lie from y = 0 down, and how high they are together. */
export interface Laid {
  readonly kind: 'laid';
  readonly items: readonly Item[];
  readonly high: Mm;
}

/** White at the sides of a page. */
export const SIDE: Mm = 18;
const TOP: Mm = 17;
const BOTTOM: Mm = 13;
const LEADING = 1.36;
const GAP: Mm = 3;
const SIZES = { title: 9, head: 5.4, text: 3.8, quiet: 3.5, bullet: 3.8, tick: 3.9, write: 3.8 } as const;

/** A block as it will lie. */
type Set = Omit<Laid, 'kind'>;

function setText(said: Said, x: Mm, y: Mm, width: Mm): Set {
  const size = said.size ?? SIZES.text;
  const bold = said.bold ?? false;
  const color = said.quiet ? COLORS.quiet : COLORS.ink;
  const rows = said.text === '' ? [] : wrapped(said.text, width, size, bold);
  const items = rows.map((row, i) =>
    text(row, { x, y: y + size + i * size * LEADING }, { size, bold, color }),
  );
  return { items, high: rows.length * size * LEADING };
}

function setRow({ shares, cells }: Extract<Block, { kind: 'row' }>, width: Mm): Set {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  let x = SIDE;
  const columns = cells.map((cell, i) => {
    const wide = (shares[i]! / whole) * width;
    let y = 1.5;
    const items = cell.flatMap((said) => {
      const set = setText(said, x, y, wide - GAP);
      y += set.high;
      return set.items;
    });
    x += wide;
    return { items, high: y };
  });
  const high = Math.max(...columns.map((column) => column.high)) + 2;
  const rule = line(
    { x: SIDE, y: high - 1 },
    { x: SIDE + width, y: high - 1 },
    { color: COLORS.rule, width: 0.3 },
  );
  return { items: [...columns.flatMap(({ items }) => items), rule], high };
}

function setWritten(said: string, width: Mm): Set {
  const set = setText({ text: said }, SIDE, 0, width);
  const y = set.high + 9;
  const rule = line({ x: SIDE, y }, { x: SIDE + width, y }, { color: COLORS.ink, width: 0.3 });
  return { items: [...set.items, rule], high: y + GAP };
}

function setBlock(block: Block, width: Mm): Set {
  switch (block.kind) {
    case 'laid':
      return block;
    case 'space':
      return { items: [], high: GAP };
    case 'row':
      return setRow(block, width);
    case 'write':
      return setWritten(block.text, width);
    case 'title': {
      const set = setText({ text: block.text, size: SIZES.title, bold: true }, SIDE, 0, width);
      const y = set.high + 1.5;
      const rule = line({ x: SIDE, y }, { x: SIDE + width, y }, { color: COLORS.ink, width: 1.2 });
      return { items: [...set.items, rule], high: y + 5 };
    }
    case 'head': {
      const set = setText({ text: block.text, size: SIZES.head, bold: true }, SIDE, GAP, width);
      return { items: set.items, high: set.high + GAP + 0.8 };
    }
    case 'tick': {
      const set = setText({ text: block.text, size: SIZES.tick }, SIDE + 9, 0, width - 9);
      const ring = path(circle({ x: SIDE + 3, y: 2.7 }, 2.2), { color: COLORS.ink, width: 0.4 });
      return { items: [ring, ...set.items], high: set.high + 2 };
    }
    case 'bullet': {
      const set = setText({ text: block.text }, SIDE + 5, 0, width - 5);
      return {
        items: [text('•', { x: SIDE + 1, y: SIZES.bullet }, { size: SIZES.bullet }), ...set.items],
        high: set.high + 0.6,
      };
    }
    default:
      return {
        ...setText(
          { text: block.text, size: SIZES[block.kind], quiet: block.kind === 'quiet' },
          SIDE,
          0,
          width,
        ),
      };
  }
}

const moved = (items: readonly Item[], y: Mm): Item => ({ kind: 'group', x: 0, y, scale: 1, items });

/** Blocks one below the other, on as many upright pages as they take. A head stays with what follows it. */
export function flowed(blocks: readonly Block[], paper: PaperName): Page[] {
  const size = paperSize(paper, false);
  const sets = blocks.map((block) => setBlock(block, size.w - 2 * SIDE));
  const pages: Item[][] = [[]];
  let y = TOP;
  for (const [i, set] of sets.entries()) {
    const together = blocks[i]!.kind === 'head' ? set.high + (sets[i + 1]?.high ?? 0) : set.high;
    if (y + together > size.h - BOTTOM && y > TOP) {
      pages.push([]);
      y = TOP;
    }
    pages.at(-1)!.push(moved(set.items, y));
    y += set.high;
  }
  return pages.map((items) => ({ ...size, items }));
}
