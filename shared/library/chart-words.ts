import type { Band, Mark } from '../documents/design.ts';
import { type Action, type Kit, reversed } from '../documents/kit.ts';
import type { Mm } from '../geometry/units.ts';

/** Actions that a ready challenge may ask for, each with the ones of a chart that it accepts. */
const ACTIONS = {
  faster: (a: Action) => a.kind === 'pace-by' && a.steps === 1,
  slower: (a: Action) => a.kind === 'pace-by' && a.steps === -1,
  steady: (a: Action) => a.kind === 'pace-to' && a.pace === 'steady',
  tiptoe: (a: Action) => a.kind === 'pace-to' && a.pace === 'creep',
  'take-left': (a: Action) => a.kind === 'choose' && a.way === 'left',
  'take-right': (a: Action) => a.kind === 'choose' && a.way === 'right',
  'straight-on': (a: Action) => a.kind === 'choose' && a.way === 'straight',
  'turn-back': (a: Action) => a.kind === 'turn-back',
  park: (a: Action) => a.kind === 'park',
} as const;
export type ActionName = keyof typeof ACTIONS;

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
export function wordFor(kit: Kit, action: ActionName): string | undefined {
  const accepts = ACTIONS[action];
  const words = kit.chart.filter((row) => accepts(row.action)).map((row) => row.word);
  return words.reduce<string | undefined>(
    (best, word) => (best === undefined || word.length < best.length ? word : best),
    undefined,
  );
}

/** A mark as the tray makes it: equal bands edge to edge, each of the length that the robot expects. */
export function markFor(kit: Kit, { id, line, at, action, met = 'along' }: MarkWish): Mark | undefined {
  const word = wordFor(kit, action);
  if (word === undefined) return undefined;
  const inks = [...(met === 'along' ? word : reversed(word))];
  const bands = inks.map((ink): Band => ({ ink, length: kit.robot.bandUnit, gap: 0 }));
  return { id, line, at, bands };
}
