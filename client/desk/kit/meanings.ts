import { type Action, PACES } from '../../../shared/documents/kit.ts';

/** What a mark may mean, as a list to choose from; a time is typed beside it. */
export const MEANINGS: readonly Action[] = [
  ...[1, 2, 3, -1, -2, -3].map((steps): Action => ({ kind: 'pace-by', steps })),
  ...PACES.map((pace): Action => ({ kind: 'pace-to', pace })),
  ...PACES.map((pace): Action => ({ kind: 'pace-for', pace, time: 2 })),
  ...(['left', 'straight', 'right'] as const).map((way): Action => ({ kind: 'choose', way })),
  { kind: 'turn-back' },
  { kind: 'wait', time: 2 },
  { kind: 'signal', time: 1 },
  { kind: 'park' },
  { kind: 'nothing' },
];

/** Tells meanings apart but for their times: the words of the document, `pace-by 1`, `choose left`, `wait`. */
export function meaningKey(action: Action): string {
  const { kind } = action;
  if (kind === 'pace-by') return `${kind} ${action.steps}`;
  if (kind === 'pace-to' || kind === 'pace-for') return `${kind} ${action.pace}`;
  return kind === 'choose' ? `${kind} ${action.way}` : kind;
}

export const timeOf = (action: Action): number | null => ('time' in action ? action.time : null);

/** The same meaning as long as wanted; one without a time stays as it is. */
export const lasting = (action: Action, time: number): Action =>
  'time' in action ? { ...action, time } : action;

/** A meaning of the list by its key; undefined for any other text. */
export const meaningOf = (key: string): Action | undefined =>
  MEANINGS.find((action) => meaningKey(action) === key);

/** The places in a list of names of which a word begins with what was typed. */
export function matching(names: readonly string[], typed: string): number[] {
  const wanted = typed.toLowerCase();
  return names.flatMap((name, i) =>
    name
      .toLowerCase()
      .split(' ')
      .some((_, k, words) => words.slice(k).join(' ').startsWith(wanted))
      ? [i]
      : [],
  );
}
