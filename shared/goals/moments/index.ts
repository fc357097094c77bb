import type { MomentPredicate } from '../../documents/formula.ts';
import type { MomentMeasure } from '../predicate.ts';
import { actIn } from '../predicates/act-in.ts';
import { everyGate } from '../predicates/every-gate.ts';
import { gates } from '../predicates/gates.ts';
import { readMarks } from '../predicates/read-marks.ts';
import { stretches } from '../predicates/stretches.ts';
import { turnBack } from '../predicates/turn-back.ts';
import { clearOfAreas, clearOfEdge } from './clear.ts';
import { inArea } from './in-area.ts';
import { inBerth } from './in-berth.ts';
import { paceNow } from './pace.ts';
import { soFar } from './so-far.ts';
import { waySoFar } from './way.ts';

type Measures = { readonly [K in MomentPredicate['kind']]: MomentMeasure<K> };

/** Every predicate that may stand under a time operator. */
export const MOMENTS = {
  finish: inBerth,
  'in-area': inArea,
  pace: paceNow,
  'keep-out': clearOfAreas,
  'stay-on-paper': clearOfEdge,
  way: waySoFar,
  stretches: soFar(stretches),
  gates: soFar(gates),
  'every-gate': soFar(everyGate),
  'turn-back': soFar(turnBack),
  'read-marks': soFar(readMarks),
  'act-in': soFar(actIn),
} satisfies Measures as Measures;
