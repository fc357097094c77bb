import { Piscina } from 'piscina';
import type { DrawnIn } from '../../shared/documents/challenge.ts';

/** Documents in their file form, as JSON text: what crosses to a worker is one string each. */
export interface JudgeTask {
  readonly challenge: string;
  /** As the challenge is where nothing is said. */
  readonly drawnIn?: DrawnIn;
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
  const threads = parts.threads ?? THREADS;
  const waiting: (() => void)[] = [];
  let atWork = 0;
  let closed = false;
  const pool = new Piscina<JudgeTask, Judged>({
    filename: parts.worker,
    execArgv: [...parts.execArgv],
    minThreads: 1,
    maxThreads: threads,
    idleTimeout: 30_000,
  });
  // A worker that dies tells its own task; the pool's general report adds nothing to that.
  pool.on('error', () => undefined);
  return {
    /** The deadline is for the work: a task that waits behind a stuck one must not run out of time. */
    judge: async (task) => {
      if (atWork < threads) atWork++;
      else await new Promise<void>((goOn) => waiting.push(goOn));
      try {
        if (closed) throw new Error('the judge has been closed');
        return await pool.run(task, { signal: AbortSignal.timeout(deadlineMs) });
      } finally {
        const next = waiting.shift();
        if (next) next();
        else atWork--;
      }
    },
    close: () => {
      closed = true;
      return pool.destroy();
    },
  };
}
