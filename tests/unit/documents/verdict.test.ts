import { describe, expect, it } from 'vitest';
import { type RunSummary, replayed, type Verdict } from '../../../shared/documents/verdict.ts';

const run = (traceHash: string): RunSummary => ({
  start: 'start',
  probability: 1,
  ending: 'finished',
  duration: 9,
  readings: [],
  traceHash,
});

const verdict = (engine: number, ...hashes: string[]): Verdict => ({
  version: 1,
  engine,
  level: 'entry',
  findings: [],
  runs: hashes.map(run),
  goals: [],
  met: false,
  points: [],
  total: 0,
});

describe('replayed', () => {
  it.each([
    ['the same engine', verdict(2, 'aa'), verdict(2, 'aa'), 'same'],
    ['another engine, the same run bit for bit', verdict(3, 'aa', 'bb'), verdict(2, 'aa', 'bb'), 'same'],
    ['another engine that drives otherwise', verdict(3, 'aa', 'cc'), verdict(2, 'aa', 'bb'), 'other-engine'],
    ['another engine that finds another fork', verdict(3, 'aa', 'bb'), verdict(2, 'aa'), 'other-engine'],
    ['the same engine that drives otherwise', verdict(2, 'ab'), verdict(2, 'aa'), 'otherwise'],
  ] as const)('%s is %s', (_, now, stored, is) => {
    expect(replayed(now, stored)).toBe(is);
  });
});
