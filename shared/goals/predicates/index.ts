import type { Predicate } from '../../documents/formula.ts';
import type { Measure } from '../predicate.ts';
import { actIn } from './act-in.ts';
import { decided } from './decided.ts';
import { everyGate } from './every-gate.ts';
import { finish } from './finish.ts';
import { gates } from './gates.ts';
import { inkLimit } from './ink-limit.ts';
import { keepOut } from './keep-out.ts';
import { markLimit } from './mark-limit.ts';
import { paceAtEnd } from './pace-at-end.ts';
import { park } from './park.ts';
import { readMarks } from './read-marks.ts';
import { stayOnPaper } from './stay-on-paper.ts';
import { steadiness } from './steadiness.ts';
import { stretches } from './stretches.ts';
import { time } from './time.ts';
import { turnBack } from './turn-back.ts';
import { way } from './way.ts';

type Measures = { readonly [K in Predicate['kind']]: Measure<K> };

/** Every predicate, one file each. A new one is a file and a line here. */
export const PREDICATES = {
  finish,
  park,
  stretches,
  'pace-at-end': paceAtEnd,
  gates,
  'every-gate': everyGate,
  'keep-out': keepOut,
  'stay-on-paper': stayOnPaper,
  time,
  'turn-back': turnBack,
  'read-marks': readMarks,
  'act-in': actIn,
  way,
  'mark-limit': markLimit,
  'ink-limit': inkLimit,
  decided,
  steadiness,
} satisfies Measures as Measures;
