import type { Odds, Steadiness, Stray } from '../../shared/documents/outlook.ts';
import type { Wording } from '../../shared/wording/wording.ts';

/** Chances of a drawing as lines of text: endings, junctions that are left open, arrival in time. */
export function oddsLines(odds: readonly Odds[], words: Wording): string[] {
  const { outlook } = words;
  return odds.flatMap((one) => {
    const more = [outlook.inTime(one), outlook.basis(one.basis)].filter((line) => line !== undefined);
    return [
      `Odds from the ${one.start}: ${one.endings.length + Number(one.endless > 0) > 1 ? '' : 'for sure '}${outlook.endings(one)}`,
      ...one.open.map(
        (junction) =>
          `  At ${at(junction.at)} it decides by itself (${outlook.percent(junction.met)} come there): ${outlook.arms(junction)}`,
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
    `Steadiness: ${words.outlook.steady(steadiness)}`,
    ...[...groups.values()].map((group) => `  ${strayLine(group, words)}`),
  ];
}

function strayLine(group: readonly Stray[], words: Wording): string {
  const { cause, mark, at: place } = group[0]!;
  const which = mark === undefined ? '' : ` (mark ${mark})`;
  const who = words.numbers.counted(group.length, 'robot', 'robots');
  return `${who} ${words.outlook.cause(cause)}${which} near ${at(place)}`;
}

const at = (p: { readonly x: number; readonly y: number }): string =>
  `${Math.round(p.x)}, ${Math.round(p.y)}`;
