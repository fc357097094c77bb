import { Piscina } from 'piscina';

/** Documents in their file form, as JSON text: what crosses to a worker is one string each. */
export interface JudgeTask {
  readonly challenge: string;
  /** Answers where the challenge is predicted. */
  readonly design: string;
}

export interface Judged {
  /** The verdict in its file form. */
  readonly verdict: unknown;
  readonly points: number;
  readonly met: boolean;
}

export interface Judging {
  /** Rejects where the judge failed or took too long; the worker that did is replaced. */
  judge(task: JudgeTask): Promise<Judged>;
  close(): Promise<void>;
}

export interface JudgingParts {
  /** The worker's file; TypeScript needs a loader in `execArgv`. */
  readonly worker: string;
  readonly execArgv: readonly string[];
  readonly threads?: number;
  readonly deadlineMs?: number;
}

/** Many times what the slowest sound drawing takes on an old laptop, and short enough to notice. */
const DEADLINE_MS = 20_000;
/** Beside the event loop's own thread: a teacher's laptop shows the board at the same time. */
const THREADS = 2;

/** The judge off the event loop: a pool of workers that share nothing with the server. */
export function startJudging(parts: JudgingParts): Judging {
  const deadlineMs = parts.deadlineMs ?? DEADLINE_MS;
  const pool = new Piscina<JudgeTask, Judged>({
    filename: parts.worker,
    execArgv: [...parts.execArgv],
    minThreads: 1,
    maxThreads: parts.threads ?? THREADS,
    idleTimeout: 30_000,
  });
  // A worker that dies tells its own task; the pool's general report adds nothing to that.
  pool.on('error', () => undefined);
  return {
    judge: (task) => pool.run(task, { signal: AbortSignal.timeout(deadlineMs) }),
    close: () => pool.destroy(),
  };
}
