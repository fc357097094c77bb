import { useEffect, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Finding, Verdict } from '../../shared/documents/verdict.ts';
import type { TeamId } from '../../shared/room/state.ts';
import type { Asked, JudgedHere, JudgeHere, Outcome, Staging, WaysOfGoals } from './judge-here.ts';
import type { Loaded } from './use-document.ts';

export interface JudgeOrder extends Asked {
  readonly id: number;
  readonly series: string;
  /** Null where it is that of the last order of its series. */
  readonly challenge: Challenge | null;
}
export type JudgeAnswer =
  | { readonly id: number; readonly outcome: Outcome }
  | { readonly id: number; readonly trouble: string };

/**
 * `now` before everything that waits; `idle` one at a time, when nothing else does, and their answers several
 * together.
 */
export type Urgency = 'now' | 'idle';

interface Waiting extends Asked {
  readonly challenge: Challenge;
  readonly done: (outcome: Outcome) => void;
  readonly failed: (error: Error) => void;
  /** Nobody wants it any more. */
  readonly dropped: () => boolean;
}

let worker: Worker | null = null;
/** What the worker has for each series: a challenge crosses to it once. */
const challengesThere = new Map<string, Challenge>();
/** This browser can't start the worker, or it did not load: the engine runs in the page then. */
let inPage = false;
let judgeInPage: JudgeHere | null = null;
let running: Waiting | null = null;
let nextId = 1;
const queues: Record<Urgency, Waiting[]> = { now: [], idle: [] };

function theWorker(): Worker {
  if (worker) return worker;
  worker = new Worker(new URL('./judge-worker.ts', import.meta.url), { type: 'module' });
  challengesThere.clear();
  worker.onmessage = ({ data }: MessageEvent<JudgeAnswer>) => {
    const finished = running;
    running = null;
    if (finished && 'outcome' in data) finished.done(data.outcome);
    else if (finished && 'trouble' in data) finished.failed(new Error(data.trouble));
    startNext();
  };
  worker.onerror = (event) => {
    event.preventDefault();
    worker = null;
    inPage = true;
    if (running) void workInPage(running);
  };
  return worker;
}

/** Loads the engine before it is needed, while the server can be reached. */
export const warmUpJudging = (): void => void theWorker();

async function workInPage(waiting: Waiting): Promise<void> {
  try {
    judgeInPage ??= (await import('./judge-here.ts')).startJudgeHere();
    waiting.done(judgeInPage(waiting.challenge, waiting));
  } catch {
    // Neither could be loaded: the server is away. The next order tries the worker again.
    inPage = false;
    waiting.failed(new Error('the judge could not be loaded'));
  }
  running = null;
  startNext();
}

function workAside({ challenge, ...asked }: Waiting): void {
  const { design, mend, staging = null, findingsOnly = false, series = '' } = asked;
  const there = theWorker();
  const order: JudgeOrder = {
    id: nextId++,
    series,
    challenge: challenge === challengesThere.get(series) ? null : challenge,
    design,
    mend,
    staging,
    findingsOnly,
  };
  challengesThere.set(series, challenge);
  there.postMessage(order);
}

function startNext(): void {
  if (running) return;
  for (const queue of [queues.now, queues.idle]) {
    for (let waiting = queue.shift(); waiting; waiting = queue.shift()) {
      if (waiting.dropped()) continue;
      running = waiting;
      if (inPage) void workInPage(waiting);
      else workAside(waiting);
      return;
    }
  }
  handOut();
}

/** Idle answers wait for each other until all have come, at most so long, ms: then a page changes once for all of them. */
const GATHERED_MS = 400;
const gathered: (() => void)[] = [];

function gather(give: () => void): void {
  if (gathered.push(give) === 1) setTimeout(handOut, GATHERED_MS);
}

function handOut(): void {
  for (const give of gathered.splice(0)) give();
}

/** Asks the worker. Resolves to null when `dropped` says, before its turn, that nobody wants it. */
export function askAside(
  order: Asked & { readonly challenge: Challenge },
  urgency: Urgency,
  dropped: () => boolean,
): Promise<Outcome | null> {
  return new Promise((resolve, reject) => {
    const noLonger = () => {
      const gone = dropped();
      if (gone) resolve(null);
      return gone;
    };
    queues[urgency].push({
      ...order,
      done: urgency === 'idle' ? (outcome) => gather(() => resolve(outcome)) : resolve,
      failed: reject,
      dropped: noLonger,
    });
    startNext();
  });
}

/** When the engine could not be loaded it is tried again after so long. */
const AGAIN_MS = 3000;

/** A question about designs. Designs never change, so each is asked about once. */
interface Question<T> {
  readonly urgency: Urgency;
  readonly findingsOnly?: boolean;
  readonly answerIn: (outcome: Outcome) => T | undefined;
  readonly known: WeakMap<Design, { readonly challenge: Challenge; readonly answer: T }>;
}

const judgedIn = (outcome: Outcome) => ('judged' in outcome ? outcome.judged : undefined);
const JUDGED: Question<JudgedHere> = { urgency: 'now', answerIn: judgedIn, known: new WeakMap() };
const STAGED: Question<JudgedHere> = { urgency: 'now', answerIn: judgedIn, known: new WeakMap() };
const FOUND: Question<readonly Finding[]> = {
  urgency: 'idle',
  findingsOnly: true,
  answerIn: (outcome) => ('findings' in outcome ? outcome.findings : undefined),
  known: new WeakMap(),
};

/**
 * The verdict and traces of a design, worked out on this page; null until they are there. Bit for bit
 * the server's own: the engine is the same.
 */
export const useJudged = (challenge: Challenge | null, design: Design | null): JudgedHere | null =>
  useAnswer(JUDGED, challenge, design);

/** The same for a stage. Whatever is supposed of a design comes with a design of its own. */
export const useStagedRun = (
  challenge: Challenge | null,
  design: Design | null,
  staging: Staging,
): JudgedHere | null => useAnswer(STAGED, challenge, design, staging);

/** What the verdict finds wrong with a team's drawing, where nobody looks closely at one of many. */
export const useFindings = (
  challenge: Challenge,
  design: Design | null,
  team: TeamId,
): readonly Finding[] | null => useAnswer(FOUND, challenge, design, null, team);

function useAnswer<T>(
  question: Question<T>,
  challenge: Challenge | null,
  design: Design | null,
  staging: Staging | null = null,
  series = '',
): T | null {
  const [, setTurn] = useState(0);
  const { urgency, findingsOnly = false, answerIn, known } = question;
  const before = design ? known.get(design) : undefined;
  const here = before?.challenge === challenge ? before : undefined;
  useEffect(() => {
    if (!challenge || !design || here) return;
    let current = true;
    let again: ReturnType<typeof setTimeout> | undefined;
    const order = async () => {
      try {
        const asked = { challenge, design, mend: null, staging, findingsOnly, series };
        const outcome = await askAside(asked, urgency, () => !current);
        const answer = outcome && answerIn(outcome);
        if (!answer) return;
        // Two places may have asked at once: what the first got stays, so that its runs stay the same objects.
        if (known.get(design)?.challenge !== challenge) known.set(design, { challenge, answer });
        if (current) setTurn((turn) => turn + 1);
      } catch {
        if (current) again = setTimeout(order, AGAIN_MS);
      }
    };
    void order();
    return () => {
      current = false;
      clearTimeout(again);
    };
  }, [challenge, design, staging, series, urgency, findingsOnly, answerIn, known, here]);
  return here?.answer ?? null;
}

/** In how many ways an entry misses its goals; judged here only where its verdict leaves that open. */
export function useWays(
  challenge: Challenge | null,
  design: Loaded<Design>,
  verdict: Loaded<Verdict>,
): WaysOfGoals | undefined {
  const several = verdict.kind === 'here' && verdict.value.runs.length > 1;
  const open = several && verdict.value.goals.some(({ met }) => !met);
  return useJudged(challenge, open && design.kind === 'here' ? design.value : null)?.ways;
}
