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
test('driving off the paper is a failure, stopping at a loose end is not', () => {
  expect(settled('untidy', run([at.end('off-paper', { x: 100, y: 100 })]))).toBe('stops');
  expect(settled('untidy', run([at.end('stopped', { x: 100, y: 100 })]))).toBe('untidy');
});

test('a fault of a mark never takes the line from under the robot', () => {
  const mark: Finding = { ...corner('may-stop'), rule: 'R-before-mark' };
  expect(settleSeverities([mark], [lostNearby])[0]?.severity).toBe('may-stop');
});
test('R-start-on-line stops a robot that never starts, R-margin one that drives off the paper', () => {
  const start: Finding = { ...corner('may-stop'), rule: 'R-start-on-line' };
  const margin: Finding = { ...corner('untidy'), rule: 'R-margin' };
  const never = run([at.end('never-started', { x: 100, y: 100 })]);
  const off = run([at.end('off-paper', { x: 100, y: 100 })]);
  expect(settleSeverities([start, margin], [never]).map((f) => f.severity)).toEqual(['stops', 'untidy']);
  expect(settleSeverities([margin], [off])[0]?.severity).toBe('stops');
});
test('R-finish-reachable stays as it is: what is still to be drawn is no fault on the way', () => {
  const finish: Finding = { ...corner('untidy'), rule: 'R-finish-reachable' };
  const far = run([at.end('stopped', { x: 100, y: 100 })], { finish: 120 });
  for (const trace of [far, lostNearby, arrives]) {
    expect(settleSeverities([finish], [trace])[0]?.severity).toBe('untidy');
  }
});
test('R-loose-end stops a robot that ends at a gap; at a dead end stopping is what a robot does', () => {
  const gap: Finding = { ...corner('may-stop'), rule: 'R-loose-end', variant: 'gap' };
  const deadEnd: Finding = { ...corner('untidy'), rule: 'R-loose-end', variant: 'loose-end' };
  const ends = run([at.end('stopped', { x: 100, y: 100 })]);
  expect(settleSeverities([gap, deadEnd], [ends]).map((f) => f.severity)).toEqual(['stops', 'untidy']);
  expect(settleSeverities([gap], [arrives])[0]?.severity).toBe('may-stop');
  const off = run([at.end('off-paper', { x: 100, y: 120 })]);
  expect(settleSeverities([deadEnd], [off])[0]?.severity).toBe('stops');
});
test('R-keep-out and R-given-lines stop whatever the run does: the challenge is broken', () => {
  const through: Finding = { ...corner('stops'), rule: 'R-keep-out', variant: 'through' };
  const over: Finding = { ...corner('stops'), rule: 'R-given-lines', variant: 'over' };
  expect(settleSeverities([through, over], [arrives]).map((f) => f.severity)).toEqual(['stops', 'stops']);
});
test('R-keep-out of a line that is only near stops where a run reaches in, else may stop', () => {
  const near: Finding = { ...corner('stops'), rule: 'R-keep-out', variant: 'near' };
  const past = run([at.end('finished', { x: 200, y: 100 })], { keepOut: { sandbank: 3 } });
  const into = run([at.end('finished', { x: 200, y: 100 })], { keepOut: { sandbank: -2 } });
  expect(settleSeverities([near], [past])[0]?.severity).toBe('may-stop');
  expect(settleSeverities([near], [past, into])[0]?.severity).toBe('stops');
});
