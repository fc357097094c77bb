import type { Odds, Steadiness, Stray } from '../../shared/documents/outlook.ts';
import type { Wording } from '../../shared/wording/wording.ts';

/** Chances of a drawing as lines of text: endings, junctions that are left open, arrival in time. */
export function oddsLines(odds: readonly Odds[], words: Wording): string[] {
  const { outlook, report } = words;
  return odds.flatMap((one) => {
    const more = [outlook.inTime(one), outlook.basis(one.basis)].filter((line) => line !== undefined);
    return [
      report.odds(one.start, one.endings.length + Number(one.endless > 0) <= 1, outlook.endings(one)),
      ...one.open.map(
        (junction) =>
          `  ${report.decides(at(junction.at), outlook.percent(junction.met), outlook.arms(junction))}`,
      ),
      ...more.map((line) => `  ${line}`),
    ];
  });
}

/** How many of the disturbed robots make it, and where and why the others don't. */
export function steadinessLines(steadiness: Steadiness, words: Wording): string[] {
  const groups = new Map<string, Stray[]>();
  for (const stray of steadiness.strays) {
    const key = `${stray.cause} ${stray.mark ?? ''} ${stray.start}`;
    groups.set(key, [...(groups.get(key) ?? []), stray]);
  }
  return [
    words.report.steadiness(words.outlook.steady(steadiness)),
    ...[...groups.values()].map((group) => `  ${strayLine(group, words)}`),
  ];
}

function strayLine(group: readonly Stray[], words: Wording): string {
  const { cause, mark, at: place } = group[0]!;
  const { outlook, report } = words;
  const which = mark === undefined ? '' : report.mark(mark);
  return report.strays(group.length, outlook.cause(cause), which, at(place));
}

const at = (p: { readonly x: number; readonly y: number }): string =>
  `${Math.round(p.x)}, ${Math.round(p.y)}`;
