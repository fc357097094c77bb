import type { PaperName } from '../../shared/wire/print.ts';
import { ruler } from './furniture.ts';
import { COLORS, type Item, type Page, paperSize } from './page.ts';
import { circle, line, path, text } from './shapes.ts';
import type { PrintTools } from './tools.ts';
import { wrapped } from './type.ts';

const SIDE = 20;

/** The first page of a pack of the class: what is in it, and what to do and heed before it is handed out. */
export function coverPage(word: string, teams: number, paper: PaperName, { words }: PrintTools): Page {
  const size = paperSize(paper, false);
  const { packs, measure } = words.print;
  const { lines } = packs;
  const contents = [
    lines.chart,
    lines.patch,
    lines.strip,
    lines.gauge,
    teams === 0 ? lines.noTeams : lines.teams(teams),
  ];
  let y = 30;
  const items: Item[] = [];
  const write = (said: string, high: number, bold = false, indent = 0, color: string = COLORS.ink) => {
    for (const row of wrapped(said, size.w - 2 * SIDE - indent, high, bold)) {
      items.push(text(row, { x: SIDE + indent, y }, { size: high, bold, color }));
      y += high * 1.45;
    }
  };
  write(packs.title(word), 9, true);
  items.push(line({ x: SIDE, y: y - 6 }, { x: size.w - SIDE, y: y - 6 }, { color: COLORS.ink, width: 1.2 }));
  y += 6;
  write(packs.contents, 5.4, true);
  for (const each of contents) write(`• ${each}`, 4.4, false, 2);
  y += 6;
  write(packs.first, 5.4, true);
  for (const step of packs.steps) {
    items.push(path(circle({ x: SIDE + 3, y: y - 1.5 }, 2.2), { color: COLORS.ink, width: 0.4 }));
    write(step, 4.4, false, 10);
    y += 2;
  }
  y += 4;
  write(words.safety.first, 4, false, 0, COLORS.quiet);
  return { ...size, items: [...items, ...ruler({ x: SIDE, y: size.h - 12 }, measure)] };
}
