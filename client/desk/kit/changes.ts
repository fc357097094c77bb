import type { Ink, Kit } from '../../../shared/documents/kit.ts';
import type { KitPath } from '../../../shared/kit/kit-problem.ts';
import { chartOf, type MarkRow, marksOf } from '../../../shared/kit/marks.ts';

/** Changes of a kit, each giving another kit that its schema accepts too; whether it is sound is for its check. */

type Node = Readonly<Record<string | number, unknown>>;

/** What stands at a path; undefined where something optional is absent. */
export const valueAt = (kit: Kit, path: KitPath): unknown =>
  path.reduce<unknown>((value, step) => (value as Node | undefined)?.[step], kit);

/** The kit with another value at a path, which has to be of the kind that belongs there. */
export const withValue = (kit: Kit, path: KitPath, value: unknown): Kit => set(kit, path, value) as Kit;

function set(node: unknown, [step, ...rest]: KitPath, value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(node)) return node.with(Number(step), set(node[Number(step)], rest, value));
  return { ...(node as Node), [step]: set((node as Node)[step], rest, value) };
}

const withMarks = (kit: Kit, change: (marks: readonly MarkRow[]) => readonly MarkRow[]): Kit => ({
  ...kit,
  chart: chartOf(change(marksOf(kit.chart))),
});

/** The kit as the editor shows it: both words of a mark stand side by side in the chart. */
export const inOrder = (kit: Kit): Kit => withMarks(kit, (marks) => marks);

/** Another letter for an ink; the chart's words go with it, unless another ink has one of the two letters. */
export function withInkLetter(kit: Kit, place: number, letter: string): Kit {
  const before = kit.inks[place]!.id;
  const renamed = { ...kit, inks: kit.inks.map((ink, i) => (i === place ? { ...ink, id: letter } : ink)) };
  const shared = kit.inks.some(({ id }, i) => i !== place && (id === letter || id === before));
  if (shared) return renamed;
  const chart = kit.chart.map((row) => ({ ...row, word: row.word.replaceAll(before, letter) }));
  return { ...renamed, chart };
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
export const MOST_INKS = 8;

/** One ink more, with the first letter that no ink has. */
export function withAnotherInk(kit: Kit, name: Ink['name']): Kit {
  const id = [...LETTERS].find((letter) => !kit.inks.some((ink) => ink.id === letter))!;
  const ink: Ink = { id, name, color: '#808080', hatch: 'along' };
  return { ...kit, inks: [...kit.inks, ink] };
}
