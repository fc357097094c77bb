import type { Kit } from '../../shared/documents/kit.ts';
import { textIn } from '../../shared/documents/values.ts';
import { HEEDED_CAUTIONS, suppliesFor } from '../../shared/prep/supplies.ts';
import type { PaperName } from '../../shared/wire/print.ts';
import { type Block, flowed } from './flow.ts';
import type { Page } from './page.ts';
import type { PrintTools } from './tools.ts';

/** A list to tick off, counted for so many teams, with the cautions that go with these things. */
export function suppliesPages(kit: Kit, teams: number, paper: PaperName, tools: PrintTools): Page[] {
  const { supplies, safety, numbers } = tools.words;
  const of = {
    line: numbers.length(kit.rules.lineWidth.nominal),
    inks: kit.inks.map(({ name }) => textIn(name, tools.locale)),
  };
  const rows = suppliesFor(teams).map(({ supply, count, spare }): Block => {
    const extra = spare > 0 ? ` (${supplies.spare(spare)})` : '';
    return {
      kind: 'row',
      shares: [1, 7],
      cells: [
        [{ text: numbers.short(count, 0), size: 6, bold: true }],
        [
          { text: `${supplies.what(supply, of)}${extra}`, bold: true },
          { text: supplies.note(supply), size: 3.6, quiet: true },
        ],
      ],
    };
  });
  const cautions = safety.groups
    .filter(({ key }) => HEEDED_CAUTIONS.includes(key))
    .flatMap((group) =>
      group.cautions.map(({ text, by }): Block => ({ kind: 'bullet', text: `${text} (${by})` })),
    );
  return flowed(
    [
      { kind: 'title', text: supplies.title },
      { kind: 'text', text: supplies.forTeams(teams) },
      { kind: 'quiet', text: supplies.how },
      { kind: 'space' },
      ...rows,
      { kind: 'head', text: supplies.careful },
      ...cautions,
      { kind: 'space' },
      { kind: 'quiet', text: safety.first },
    ],
    paper,
  );
}
