import type { Weather } from '../../documents/outlook.ts';
import type { Ending } from '../../documents/trace.ts';
import type { Replayed } from '../../documents/verdict.ts';
import type { OtherLight, WhatIf } from '../../documents/what-if.ts';
import { actions } from './actions.ts';
import { numbers } from './numbers.ts';

/** What is said of the stage at the desk and on the board. */

const LIGHT: Readonly<Record<OtherLight, string>> = {
  brighter: 'it gets much brighter',
  darker: 'it gets much darker',
  warmer: 'a yellow lamp shines on it',
};

const WEATHER: Readonly<Record<Weather, string>> = {
  calm: 'in calm weather',
  breezy: 'in a breeze',
  stormy: 'in a storm',
};

/** What a supposition speaks of. */
export interface SupposedOf {
  /** The berth that the robot then comes from. */
  readonly from: string;
  /** The mark as it then is, band by band. */
  readonly word: string;
}

function supposed(whatIf: WhatIf, { from, word }: SupposedOf): string {
  switch (whatIf.kind) {
    case 'light':
      return `What if ${LIGHT[whatIf.light]}?`;
    case 'start':
      return `What if the robot starts at the other end, ${from}?`;
    case 'weather':
      return `What if robot ${whatIf.robot} drives ${WEATHER[whatIf.weather]}?`;
    case 'band':
      return `What if one mark is ${[...word].join(' ')}?`;
  }
}

const ORDINALS = ['first', 'second', 'third', 'fourth'] as const;
const REPLAYED: Readonly<Record<Exclude<Replayed, 'same'>, string>> = {
  'other-engine':
    'Judged by another version of the engine, which drove it otherwise: the same run can’t be shown. The points stand.',
  otherwise:
    'This device drives it otherwise than the judge did: the same run can’t be shown. The points stand.',
};

/** Quarters and halves as they are written on a button. */
const speed = (n: number): string => (n === 0.25 ? '¼×' : n === 0.5 ? '½×' : `${n}×`);

export const stage = {
  supposed,
  untouched: 'The drawing stays as it was handed in.',
  replayed: (how: Exclude<Replayed, 'same'>): string => REPLAYED[how],
  speed,
  slow: (n: number): string => `slow motion, ${speed(n)}`,
  /** In a heat, at its end: "first, after 7.2 s". */
  finished: (place: number, t: number): string => `${ORDINALS[place - 1] ?? place}, after ${numbers.time(t)}`,
  /** Of one that does not arrive. */
  notThere: (ending: Ending | null): string => actions.ending(ending ?? 'never-started'),
  order: 'Who arrived',
  goalsMet: (met: number, of: number): string => `${met} of ${numbers.counted(of, 'goal', 'goals')}`,
  onTop: 'On top of each other',
  controls: {
    before: 'Reading before',
    after: 'Next reading',
    loop: 'Repeat',
    loopFrom: 'The stretch begins',
    loopTo: 'The stretch ends',
    sensors: 'Sensors',
    whole: 'Whole run',
    onTop: 'On top',
    notOnTop: 'Only drawings on the same sheet can lie on top of each other.',
    whatIf: 'What if',
    ways: 'Ways it can go',
    way: (n: number, chance: number): string => `Way ${n}: ${numbers.short(chance * 20, 1)} of 20 robots`,
  },
  whatIf: {
    asIs: 'As it was handed in',
    light: 'Another light',
    lights: { brighter: 'Much brighter', darker: 'Much darker', warmer: 'Yellow lamp' } satisfies Record<
      OtherLight,
      string
    >,
    start: 'Another start',
    otherEnd: 'From the other end',
    weather: 'Another weather',
    weathers: { calm: 'Calm', breezy: 'Breezy', stormy: 'Stormy' } satisfies Record<Weather, string>,
    robot: (n: number): string => `robot ${n} of 20`,
    nextRobot: 'Another robot',
    band: 'One band changed',
    changeBand: (word: string, band: number, ink: string): string =>
      `Mark ${[...word].join(' ')}, band ${band}: now ${ink}; press for the next ink`,
    note: 'Shown on the board as “What if”. The entry, its verdict and its points stay as they are.',
  },
};
