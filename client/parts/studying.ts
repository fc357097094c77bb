import { useEffect, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Study } from '../../shared/judge/study.ts';

export interface StudyOrder {
  readonly kind: 'study';
  readonly id: number;
  readonly challenge: Challenge;
  readonly design: Design;
}
/** Nobody wants the last study any more. */
export interface StudyRest {
  readonly kind: 'rest';
}
export interface StudyPiece {
  readonly id: number;
  readonly piece: Partial<Study>;
}

/** Pieces of a study as they come; `stop` says that no more are wanted. */
interface Student {
  readonly start: (order: StudyOrder) => void;
  readonly stop: () => void;
}

/** The judge's worker once more, as a thread of its own: studying must not hold up the live check. */
function studentAside(onPiece: (piece: StudyPiece) => void, onTrouble: () => void): Student {
  const worker = new Worker(new URL('./judge-worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<StudyPiece>) => onPiece(data);
  worker.onerror = (event) => {
    event.preventDefault();
    onTrouble();
  };
  const say = (message: StudyOrder | StudyRest) => worker.postMessage(message);
  return { start: say, stop: () => say({ kind: 'rest' }) };
}

/** In the page, one robot after another between frames, where the worker can't be loaded. */
function studentHere(onPiece: (piece: StudyPiece) => void): Student {
  let wanted = 0;
  const work = async ({ id, challenge, design }: StudyOrder) => {
    const { studyOf } = await import('../../shared/judge/study.ts');
    for (const piece of studyOf(challenge, design)) {
      if (wanted !== id) return;
      onPiece({ id, piece });
      await new Promise((resolve) => setTimeout(resolve));
    }
  };
  return {
    start: (order) => {
      wanted = order.id;
      // Neither could be loaded: the run is shown without what a study adds.
      void work(order).catch(() => undefined);
    },
    stop: () => {
      wanted = 0;
    },
  };
}

let student: Student | null = null;
let lastId = 0;
let current: { readonly order: StudyOrder; readonly onPiece: (piece: Partial<Study>) => void } | null = null;

const hear = ({ id, piece }: StudyPiece): void => {
  if (current?.order.id === id) current.onPiece(piece);
};

function theStudent(): Student {
  student ??= studentAside(hear, () => {
    student = studentHere(hear);
    if (current) student.start(current.order);
  });
  return student;
}

/** Loads the engine before it is needed, while the server can be reached. */
export const warmUpStudying = (): void => void theStudent();

/** Studies one drawing at a time: a new one takes the place of the last. Returns how to stop. */
function study(challenge: Challenge, design: Design, onPiece: (piece: Partial<Study>) => void): () => void {
  const order: StudyOrder = { kind: 'study', id: ++lastId, challenge, design };
  current = { order, onPiece };
  theStudent().start(order);
  return () => {
    if (current?.order !== order) return;
    current = null;
    theStudent().stop();
  };
}

/** What is known of designs that were studied to their end. */
const known = new WeakMap<Design, { readonly challenge: Challenge; readonly study: Partial<Study> }>();

/** What has been found out so far of a drawing beyond its runs; null asks for nothing. */
export function useStudy(challenge: Challenge, design: Design | null): Partial<Study> {
  const [found, setFound] = useState<{ readonly design: Design | null; readonly study: Partial<Study> }>({
    design: null,
    study: {},
  });
  const before = design ? known.get(design) : undefined;
  const whole = before?.challenge === challenge ? before.study : undefined;
  useEffect(() => {
    if (!design || whole) return;
    let soFar: Partial<Study> = {};
    return study(challenge, design, (piece) => {
      // Most pieces only say that work goes on.
      if (Object.keys(piece).length === 0) return;
      soFar = { ...soFar, ...piece };
      if (soFar.frayed) known.set(design, { challenge, study: soFar });
      setFound({ design, study: soFar });
    });
  }, [challenge, design, whole]);
  return whole ?? (found.design === design ? found.study : {});
}
