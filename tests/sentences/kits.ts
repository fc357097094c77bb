import type { Wording } from '../../shared/wording/wording.ts';
import { each } from './each.ts';

const NAME = 'Faro';
const WHEN = '4.3.2026';

/** The leaf of kits on the desk, and the editor. */
export function ofKits({ kit }: Wording): void {
  const { shelf, editor, inks, chart } = kit;
  each([1, 2, 7], (n) => [
    shelf.draft(n),
    shelf.earlier(n),
    shelf.challenges(n, 24),
    editor.problems(n),
    editor.draft(n),
    inks.letterOf(n),
    chart.markOf(n),
    chart.meaningOf(n),
    chart.backOf(n),
    chart.secondsOf(n),
    chart.secondsBackOf(n),
    chart.count(n, 2 * n),
    chart.opened(n),
  ]);
  each([shelf.saved, shelf.lookAt], (say) => say(WHEN));
  each(
    [shelf.nowPlays, shelf.chooseThis, shelf.editThis, shelf.copyThis, shelf.copyOf, shelf.fileThis],
    (say) => say(NAME),
  );
  each([shelf.removeThis, shelf.removed, shelf.unsaved, shelf.thrownAway], (say) => say(NAME));
  each([inks.colourOf, inks.codeOf], (say) => say(NAME));
  each([inks.removeThis, chart.removeThis, chart.lasting], (say) => say(NAME));
  shelf.standing({ playable: true, par: 'known' });
  each(['robot', 'paces', 'inks', 'chart', 'rules'] as const, editor.section);
  editor.between('0', '8000');
  each(['normal', 'protan', 'deutan', 'tritan'] as const, (sight) => [
    inks.sight(sight),
    inks.look(sight, 'gamma'),
    inks.least(NAME, 'Ancla', 21.94, sight, 'linear'),
    inks.least(NAME, 'Ancla', 21.94, sight, 'gamma'),
  ]);
  each(['linear', 'gamma'] as const, inks.convention);
  chart.trouble['no-chart']();
  chart.trouble['too-long']({ most: 200 });
  each(['no-word', 'no-meaning'] as const, (code) => chart.trouble[code]({ row: 3, cell: 'salta' }));
}
