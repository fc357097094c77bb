import type { Band, Mark } from '../documents/design.ts';
import { type Action, actionOf, type Kit, reversed } from '../documents/kit.ts';
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
  wait: { kind: 'wait', time: 2 },
  call: { kind: 'signal', time: 1 },
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
  /** What the mark must say to those who meet it from the other side. */
  readonly back?: ActionName;
}

/**
 * The chart's word for an action, and for another one from the other side, the shortest first; undefined
 * where the chart has none.
 */
export function wordFor(kit: Kit, name: ActionName, back?: ActionName): string | undefined {
  const says = (action: Action | undefined, wanted: ActionName): boolean =>
    action !== undefined && sameAction(action, actionNamed(wanted));
  const words = kit.chart
    .filter((row) => says(row.action, name))
    .map((row) => row.word)
    .filter((word) => back === undefined || says(actionOf(kit, reversed(word)), back));
  return words.reduce<string | undefined>(
    (best, word) => (best === undefined || word.length < best.length ? word : best),
    undefined,
  );
}

/** The same kind with the same parameters; how long a robot waits or calls is each kit's own. */
function sameAction(a: Action, b: Action): boolean {
  if (a.kind === b.kind && (a.kind === 'wait' || a.kind === 'signal')) return true;
  const entries = Object.entries(a);
  const other = new Map<string, unknown>(Object.entries(b));
  return entries.length === other.size && entries.every(([key, value]) => other.get(key) === value);
}

/** A mark as the tray makes it: equal bands edge to edge, each of the length that the robot expects. */
export function markFor(kit: Kit, wish: MarkWish): Mark | undefined {
  const { id, line, at, action, met = 'along', back } = wish;
  const word = wordFor(kit, action, back);
  if (word === undefined) return undefined;
  const inks = [...(met === 'along' ? word : reversed(word))];
  const bands = inks.map((ink): Band => ({ ink, length: kit.robot.bandUnit, gap: 0 }));
  return { id, line, at, bands };
}
