import { expect, test } from 'vitest';
import type { Finding, Severity } from '../../../shared/documents/verdict.ts';
import { settleSeverities } from '../../../shared/judge/severity.ts';
import { at, run } from '../goals/hand-made.ts';

const corner = (severity: Severity): Finding => ({
  id: 'R-corner',
  rule: 'R-corner',
  severity,
  place: { kind: 'point', at: { x: 100, y: 100 } },
});
const settled = (severity: Severity, ...runs: Parameters<typeof settleSeverities>[1]) =>
  settleSeverities([corner(severity)], runs)[0]?.severity;

const lostNearby = run([at.end('lost', { x: 110, y: 110 })]);
const lostFarAway = run([at.end('lost', { x: 200, y: 100 })]);
const arrives = run([at.end('finished', { x: 105, y: 100 })]);

test('a run that is lost nearby makes a finding stop the robot', () => {
  expect(settled('may-stop', lostNearby)).toBe('stops');
  expect(settled('untidy', arrives, lostNearby)).toBe('stops');
});
test('a rule that proposed to stop, where every run passes, may stop', () => {
  expect(settled('stops', arrives)).toBe('may-stop');
  expect(settled('stops', lostFarAway)).toBe('may-stop');
});
test('other proposals stand where no run fails', () => {
  expect(settled('may-stop', arrives)).toBe('may-stop');
  expect(settled('untidy', lostFarAway)).toBe('untidy');
});
test('driving off the paper and never starting are failures, stopping at a loose end is not', () => {
  expect(settled('untidy', run([at.end('off-paper', { x: 100, y: 100 })]))).toBe('stops');
  expect(settled('untidy', run([at.end('never-started', { x: 100, y: 100 })]))).toBe('stops');
  expect(settled('untidy', run([at.end('stopped', { x: 100, y: 100 })]))).toBe('untidy');
});
