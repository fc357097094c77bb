import type { PaperName } from '../../shared/wire/print.ts';
import { type Block, flowed } from './flow.ts';
import { ruler } from './furniture.ts';
import type { Page } from './page.ts';
import type { PrintTools } from './tools.ts';

/** The first page of a pack of the class: what is in it, and what to do and heed before it is handed out. */
export function coverPage(word: string, teams: number, paper: PaperName, { words }: PrintTools): Page {
  const { packs, measure } = words.print;
  const { lines } = packs;
  const contents = [
    lines.chart,
    lines.patch,
    lines.strip,
    lines.gauge,
    teams === 0 ? lines.noTeams : lines.teams(teams),
  ];
  const page = flowed(
    [
      { kind: 'title', text: packs.title(word) },
      { kind: 'head', text: packs.contents },
      ...contents.map((text): Block => ({ kind: 'bullet', text })),
      { kind: 'head', text: packs.first },
      ...packs.steps.map((text): Block => ({ kind: 'tick', text })),
      { kind: 'space' },
      { kind: 'quiet', text: words.safety.first },
    ],
    paper,
  )[0]!;
  return { ...page, items: [...page.items, ...ruler({ x: 18, y: page.h - 12 }, measure)] };
}
