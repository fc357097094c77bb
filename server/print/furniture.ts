import { create as qrCode } from 'qrcode';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import type { Emblem } from '../../shared/room/state.ts';
import type { EmblemPaths } from './emblems.ts';
import { COLORS, type Item, type Segment, type Stroke } from './page.ts';
import { filled, group, line, path, rectangle, text } from './shapes.ts';

export const RULER: Mm = 100;
const FINE: Stroke = { color: COLORS.ink, width: 0.2, square: true };

/** A ruler of exactly 100 mm from `at` to the right: the middles of its end strokes are 100 mm apart. */
export function ruler(at: PaperPoint, note: string): Item[] {
  const tick = (mm: Mm): Item => {
    const high = mm % 50 === 0 ? 3 : mm % 10 === 0 ? 2.2 : 1.2;
    return line({ x: at.x + mm, y: at.y }, { x: at.x + mm, y: at.y - high }, FINE);
  };
  const ticks = Array.from({ length: 21 }, (_, i) => tick(i * 5));
  return [
    line(at, { x: at.x + RULER, y: at.y }, FINE),
    ...ticks,
    text(note, { x: at.x + RULER + 2.5, y: at.y - 0.4 }, { size: 2.7, color: COLORS.quiet }),
  ];
}

/** The code of a document's id, `size` mm wide without the white around it that readers need. */
export function codeOf(id: string, at: PaperPoint, size: Mm): Item {
  const { modules } = qrCode(id, { errorCorrectionLevel: 'M' });
  const step = size / modules.size;
  const segments: Segment[] = [];
  for (let row = 0; row < modules.size; row++) {
    for (let from = 0; from < modules.size; from++) {
      if (!modules.get(row, from)) continue;
      let to = from;
      while (to < modules.size && modules.get(row, to)) to++;
      segments.push(...rectangle(at.x + from * step, at.y + row * step, (to - from) * step, step));
      from = to;
    }
  }
  return filled(segments, COLORS.ink);
}

const ICON = { units: 24, stroke: 1.8 } as const;

/** A team's emblem, `size` mm square; nothing where there is no such emblem. */
export function emblemItem(paths: EmblemPaths, emblem: string, at: PaperPoint, size: Mm): Item[] {
  const segments = paths[emblem as Emblem] as EmblemPaths[Emblem] | undefined;
  if (!segments) return [];
  return [group(at.x, at.y, [path(segments, { color: COLORS.ink, width: ICON.stroke })], size / ICON.units)];
}
