import type { Item, Segment } from '../../../../server/print/page.ts';
import { outlines, widthOf } from '../../../../server/print/type.ts';

/** One thing on a page, in the page's own frame. */
export interface Placed {
  readonly item: Exclude<Item, { kind: 'group' }>;
  readonly points: readonly { readonly x: number; readonly y: number }[];
}

/** All things of a page or sheet, groups opened; clips are left out. */
export function placed(items: readonly Item[], x = 0, y = 0, scale = 1): Placed[] {
  return items.flatMap((item): Placed[] => {
    if (item.kind === 'group')
      return placed(item.items, x + item.x * scale, y + item.y * scale, scale * item.scale);
    return [{ item, points: pointsOf(item).map((p) => ({ x: x + p.x * scale, y: y + p.y * scale })) }];
  });
}

function pointsOf(item: Placed['item']): { x: number; y: number }[] {
  if (item.kind === 'path') return endsOf(item.segments);
  const wide =
    item.align === 'left' ? 0 : widthOf(item.text, item.size, item.bold) / (item.align === 'middle' ? 2 : 1);
  return endsOf(outlines(item.text, item.size, item.bold)).map((p) => ({
    x: p.x + item.at.x - wide,
    y: p.y + item.at.y,
  }));
}

const endsOf = (segments: readonly Segment[]) =>
  segments.flatMap((segment) => {
    if (segment[0] === 'Z') return [];
    const [x, y] = segment.slice(-2) as [number, number];
    return [{ x, y }];
  });

export const textsOf = (items: readonly Item[]): string[] =>
  placed(items).flatMap(({ item }) => (item.kind === 'text' ? [item.text] : []));
