import type { Action } from '../../documents/kit.ts';
import type { Impossibility, ImpossibilityCode, ParProof } from '../../documents/par.ts';
import type { Unit } from '../../documents/verdict.ts';
import { numbers } from './numbers.ts';

/** For teachers: how the lowest cost of a challenge is known, and why a challenge can’t be met. */

type Sentences = {
  readonly [C in ImpossibilityCode]: (why: Extract<Impossibility, { code: C }>) => string;
};

const ACTIONS: Readonly<Record<Action['kind'], string>> = {
  'pace-by': 'another pace',
  'pace-to': 'another pace',
  'pace-for': 'another pace',
  choose: 'a choice at a junction',
  'turn-back': 'turning back',
  wait: 'waiting',
  signal: 'calling',
  park: 'parking',
  nothing: 'passing',
};

const LACK: Readonly<Record<Unit, (size: number) => string>> = {
  mm: (size) => numbers.length(size),
  s: (size) => numbers.time(size),
  count: (size) => numbers.words(size),
  degrees: (size) => numbers.angle(size),
  ratio: (size) => numbers.short(size, 2),
};

const marks = (count: number): string => `${numbers.words(count)} ${count === 1 ? 'mark' : 'marks'}`;

/** "with up to two marks" */
const upTo = (most: number): string => (most === 0 ? 'without a mark' : `with up to ${marks(most)}`);

const SENTENCES: Sentences = {
  'no-start': ({ berth }) =>
    `No line leads out of the ${berth} berth. Lay one under the front of a robot that stands there.`,
  'out-of-reach': ({ goal, place }) =>
    `Goal “${goal}”: whatever the marks, no line leads to ${place.en}. Lay a line there, or move ${place.en}.`,
  'no-box': () =>
    'Marks go into boxes, and no box lies over a line that a robot comes to. Move one over a line, or take the boxes away.',
  'action-missing': ({ goal, action }) =>
    `Goal “${goal}” needs ${ACTIONS[action]}, and the chart has no mark for it. Choose another kit or goal.`,
  'marks-needed': ({ needed, allowed }) =>
    `The goals need ${marks(needed)} at least, and ${marks(allowed)} may be drawn. Allow more marks.`,
  'goal-never-met': ({ goal, marks: most, margin, unit }) =>
    `Goal “${goal}”: ${upTo(most)} nothing meets it; the best drawing lacks ${LACK[unit](-margin)}. Change the lines or the goal.`,
  'goals-clash': ({ goals, marks: most }) =>
    goals.length === 1
      ? `Goal “${goals[0]}”: ${upTo(most)} no drawing meets it whichever way the robot takes. Allow more marks, or change the lines.`
      : `${numbers.capital(upTo(most))} no drawing meets ${numbers.list(goals.map((goal) => `“${goal}”`))} at once. Give up one of them, or change the lines.`,
  'never-steady': ({ driven }) =>
    `${numbers.capital(numbers.words(driven))} drawings that could have done were driven, and none brought 19 of 20 robots through. Give the marks more room.`,
};

const PROOFS: Readonly<Record<ParProof, string>> = {
  exhaustive: 'Nothing cheaper does it: everything with fewer marks was tried on the model.',
  bound:
    'Something cheaper may exist: not everything was tried, or the robot may go where the search did not look.',
  model: 'What the maker’s own drawing costs. A cheaper one becomes the room’s best.',
};

export const par = {
  impossible: (why: Impossibility): string => (SENTENCES[why.code] as (why: Impossibility) => string)(why),
  /** Said after the reasons of an impossibility. */
  ofThisModel: 'This is about the simulated robot; a real one may differ.',
  proof: (proof: ParProof): string => PROOFS[proof],
};
