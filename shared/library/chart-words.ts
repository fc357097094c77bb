import type { Band, Mark } from '../documents/design.ts';
import { type Action, type Kit, reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';

/** Actions that a ready challenge may ask for, by the names that recipes use. */
const ACTIONS = {
  faster: { kind: 'pace-by', steps: 1 },
  slower: { kind: 'pace-by', steps: -1 },
  steady: { kind: 'pace-to', pace: 'steady' },
  tiptoe: { kind: 'pace-to', pace: 'creep' },
  'take-left': { kind: 'choose', way: 'left' },
  'take-right': { kind: 'choose', way: 'right' },
  'straight-on': { kind: 'choose', way: 'straight' },
  'turn-back': { kind: 'turn-back' },
  park: { kind: 'park' },
} as const satisfies Record<string, Action>;
export type ActionName = keyof typeof ACTIONS;

export const actionNamed = (name: ActionName): Action => ACTIONS[name];

export interface MarkWish {
  readonly id: string;
  readonly line: string;
  /** Way along the line to the first band. */
  readonly at: Mm;
  readonly action: ActionName;
  /** Whether the action is for a robot that drives along the line, or against it. */
  readonly met?: 'along' | 'against';
}

/** The chart's word for an action, the shortest first; undefined where the chart has none. */
export function wordFor(kit: Kit, name: ActionName): string | undefined {
  const wanted = actionNamed(name);
  const words = kit.chart.filter((row) => sameAction(row.action, wanted)).map((row) => row.word);
  return words.reduce<string | undefined>(
    (best, word) => (best === undefined || word.length < best.length ? word : best),
    undefined,
  );
}

/** The same kind with the same parameters. */
function sameAction(a: Action, b: Action): boolean {
  const entries = Object.entries(a);
  const other = new Map<string, unknown>(Object.entries(b));
  return entries.length === other.size && entries.every(([key, value]) => other.get(key) === value);
}

/** A mark as the tray makes it: equal bands edge to edge, each of the length that the robot expects. */
export function markFor(kit: Kit, { id, line, at, action, met = 'along' }: MarkWish): Mark | undefined {
  const word = wordFor(kit, action);
  if (word === undefined) return undefined;
  const inks = [...(met === 'along' ? word : reversed(word))];
  const bands = inks.map((ink): Band => ({ ink, length: kit.robot.bandUnit, gap: 0 }));
  return { id, line, at, bands };
}
