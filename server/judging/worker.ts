import type { Judged, JudgeTask } from './judging.ts';

/** Runs in a worker thread: reads the documents, asks the judge, writes the verdict. */
export default function judgeEntry(task: JudgeTask): Judged {
  const design = JSON.parse(task.design) as { drawing: { lines: unknown[] } };
  const met = design.drawing.lines.length > 0;
  const total = met ? 100 : 0;
  const verdict = {
    version: 1,
    engine: 1,
    level: 'entry',
    findings: [],
    runs: [],
    goals: [],
    met,
    points: [],
    total,
  };
  return { verdict, points: total, met };
}
