import type { Band } from '../shared/documents/design.ts';
import type { Action, Kit } from '../shared/documents/kit.ts';
import { DEMO_KIT } from '../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../shared/kit/second-kit.ts';

/** The kits that everything is tried with: nothing may be true of one of them only. */
export const KITS: readonly Kit[] = [DEMO_KIT, SECOND_KIT];

/** The first word of a kit's chart whose action is of this kind and has these parameters. */
export function wordFor<K extends Action['kind']>(
  kit: Kit,
  kind: K,
  wanted: Partial<Extract<Action, { kind: K }>> = {},
): string {
  const row = kit.chart.find(
    ({ action }) =>
      action.kind === kind &&
      Object.entries(wanted).every(([key, value]) => action[key as keyof typeof action] === value),
  );
  if (!row) throw new Error(`the kit ${kit.id} has no word for ${kind}`);
  return row.word;
}

/** A word as bands of the length that the kit's robot expects, edge to edge. */
export const bandsOf = (kit: Kit, word: string): Band[] =>
  [...word].map((ink) => ({ ink, length: kit.robot.bandUnit, gap: 0 }));

/** How much of the line a word's bands take up. */
export const lengthOf = (kit: Kit, word: string): number => word.length * kit.robot.bandUnit;
