import type { HelpStep } from '../../room/coaching.ts';
import type { WallWish } from '../../room/state.ts';
import { numbers } from './numbers.ts';

/** What the desk says of how teams learn: their help, what they foretold, what they wish. */

const STEPS: Readonly<Record<HelpStep, string>> = {
  'after-try': 'only after a try',
  place: 'the place',
  sentence: 'the place and the sentence',
  mend: 'with “Mend it” after two tries',
};

const WISHES: Readonly<Record<WallWish, string>> = {
  shown: '',
  'no-emblem': 'wishes: on the wall without its emblem, please',
  'not-at-all': 'wishes: not on the wall, please',
};

export const learning = {
  help: 'Help on the tablets',
  teamHelp: 'Help',
  step: (step: HelpStep): string => STEPS[step],
  asClass: (step: HelpStep): string => `as the class: ${STEPS[step]}`,
  wish: (wish: WallWish): string => WISHES[wish],
  tries: (n: number, right: number): string =>
    `${numbers.counted(n, 'try', 'tries')}, foretold rightly: ${right}`,
  tried: (guess: string, made: boolean): string =>
    `“${guess}”, and it ${made ? 'made it' : 'did not make it'}`,
  reasons: (n: number, right: number): string => `${right} of ${n} reasons found`,
  mended: 'mended with help',
};
