import { describe, expect, it } from 'vitest';
import type { Variant } from '../../../shared/documents/challenge.ts';
import type { Finding, Severity, Verdict } from '../../../shared/documents/verdict.ts';
import {
  classPicture,
  type FailedRun,
  failedPlaces,
  minutesOf,
  rulesThatTrip,
} from '../../../shared/evidence/class-picture.ts';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { DESK, type Move, roomAfter, SERVER, team } from '../room/arbitraries.ts';

const SHEET = { w: 297, h: 210 };
const MINUTE = 60_000;
const SECOND = 1000;

const finding = (rule: Finding['rule'], severity: Severity): Finding => ({
  id: `${rule} ${severity}`,
  rule,
  severity,
  place: { kind: 'point', at: { x: 1, y: 1 } },
});

const verdict = (findings: readonly Finding[], odds: Verdict['odds'] = []): Verdict => ({
  version: 1,
  engine: 4,
  level: 'entry',
  findings: [...findings],
  runs: [],
  odds,
  goals: [],
  met: false,
  points: [],
  total: 0,
});

const at = (seconds: number, seat: Move[0], command: RoomCommand): Move => [seat, command, seconds * SECOND];
const handIn = (seconds: number, id: string, entry: string): Move =>
  at(seconds, team(id), { kind: 'hand-in', round: 0, entry, design: `d-${entry}` });
const judged = (entry: string, points: number, met: boolean): Move =>
  at(900, SERVER, { kind: 'judge', entry, document: `v-${entry}`, points, met });

/** Building begins 100 s after the epoch. */
const BUILDING: readonly Move[] = [
  at(10, SERVER, { kind: 'join', team: 't1' }),
  at(10, SERVER, { kind: 'join', team: 't2' }),
  at(20, DESK, { kind: 'choose-challenge', challenge: 'c1', key: 'k1' }),
  at(100, DESK, { kind: 'start-building', seconds: null }),
];

const entryOf = (id: string, by: string, variant: Variant | null = null) => ({
  ...roomAfter(...BUILDING, handIn(130, by, id)).entries[0]!,
  variant,
});

describe('rulesThatTrip', () => {
  it('counts teams and entries by rule, what trips most teams first; untidy is left out', () => {
    const corner = finding('R-corner', 'stops');
    const trips = rulesThatTrip([
      { entry: entryOf('e1', 't1'), verdict: verdict([finding('R-before-mark', 'may-stop'), corner]) },
      { entry: entryOf('e2', 't1'), verdict: verdict([corner, corner]) },
      { entry: entryOf('e3', 't2'), verdict: verdict([corner, finding('R-margin', 'untidy')]) },
      { entry: entryOf('e4', 't2'), verdict: null },
    ]);
    expect(trips.map(({ rule, teams, entries }) => [rule, teams, entries])).toEqual([
      ['R-corner', 2, 3],
      ['R-before-mark', 1, 1],
    ]);
  });
});

describe('the worst finding of a rule', () => {
  it('is the one that is furthest from what is allowed', () => {
    const measured = (mm: number): Finding => ({
      ...finding('R-before-mark', 'may-stop'),
      unit: 'mm',
      measured: mm,
      allowed: 20,
    });
    const of = (entry: string, mm: number) => ({
      entry: entryOf(entry, 't1'),
      verdict: verdict([measured(mm)]),
    });
    const trips = rulesThatTrip([of('e1', 14), of('e2', 3), of('e3', 9)]);
    expect(trips.map(({ worst }) => worst.measured)).toEqual([3]);
  });
});

describe('where runs fail', () => {
  const odds = (ending: 'lost' | 'finished', probability: number): Verdict['odds'] => [
    {
      start: 'start',
      basis: 'track',
      endings: [{ ending, at: { x: 100, y: 50 }, probability }],
      finish: 0,
      endless: 0,
      inTime: { limit: 60, finish: 0 },
      open: [],
    },
  ];
  const failures = (variant: Variant | null, ending: 'lost' | 'finished' = 'lost') => {
    const one = { entry: entryOf('e1', 't1', variant), verdict: verdict([], odds(ending, 0.5)) };
    return classPicture(roomAfter(...BUILDING), 0, [one], SHEET, 0).failures;
  };

  it('is where a run ended that came to nothing, with its chance', () => {
    expect(failures(null)).toEqual([
      { entry: 'e1', team: 't1', ending: 'lost', at: { x: 100, y: 50 }, chance: 0.5 },
    ]);
    expect(failures(null, 'finished')).toEqual([]);
  });

  it('is on the sheet as it is, also for who had a mirrored or turned one', () => {
    expect(failures('mirrored')[0]?.at).toEqual({ x: 197, y: 50 });
    expect(failures('turned')[0]?.at).toEqual({ x: 197, y: 160 });
  });
});

describe('failedPlaces', () => {
  const run = (team: string, x: number): FailedRun => ({
    entry: `e-${team}-${x}`,
    team,
    ending: 'lost',
    at: { x, y: 50 },
    chance: 1,
  });

  it('counts each team once where runs failed less than so far apart', () => {
    const runs = [run('t1', 100), run('t2', 105), run('t1', 109), run('t1', 110), run('t3', 200)];
    expect(failedPlaces(runs, 10)).toEqual([
      { at: { x: 100, y: 50 }, teams: 2 },
      { at: { x: 110, y: 50 }, teams: 1 },
      { at: { x: 200, y: 50 }, teams: 1 },
    ]);
    expect(failedPlaces([], 10)).toEqual([]);
  });
});

describe('what teams did', () => {
  const workOf = (...moves: Move[]) => {
    const state = roomAfter(...BUILDING, ...moves);
    const all = state.entries.map((entry) => ({ entry, verdict: null }));
    return classPicture(state, 0, all, SHEET, 0).teams;
  };

  it('takes building time until the first entry that meets the challenge, else the last one', () => {
    const work = workOf(
      handIn(130, 't1', 'e1'),
      handIn(190, 't1', 'e2'),
      handIn(250, 't1', 'e3'),
      handIn(160, 't2', 'e4'),
      handIn(400, 't2', 'e5'),
      judged('e1', 40, false),
      judged('e2', 90, true),
      judged('e3', 100, true),
    );
    expect(work.map(({ entries, points, met, onTask }) => [entries, points, met, onTask])).toEqual([
      [3, 100, true, 90 * SECOND],
      [2, null, false, 300 * SECOND],
    ]);
  });

  it('a pause is no time on task, and what was given back counts for nothing', () => {
    const work = workOf(
      at(110, DESK, { kind: 'pause', on: true }),
      at(170, DESK, { kind: 'pause', on: false }),
      handIn(190, 't1', 'e1'),
      judged('e1', 90, true),
      at(901, DESK, { kind: 'return-entry', entry: 'e1', reason: 'by-mistake' }),
    );
    expect(work[0]).toMatchObject({ points: null, met: false, onTask: 30 * SECOND });
  });
});

describe('minutesOf', () => {
  const state = roomAfter(
    ...BUILDING,
    at(400, DESK, { kind: 'go-to', phase: 'show' }),
    at(500, DESK, { kind: 'choose-challenge', challenge: 'c2', key: 'k2' }),
    at(600, DESK, { kind: 'start-building', seconds: null }),
    at(660, DESK, { kind: 'pause', on: true }),
    at(780, DESK, { kind: 'pause', on: false }),
  );

  it('adds up the building phases, the running one until now, without pauses', () => {
    const now = 840 * SECOND;
    expect(minutesOf(state, 0, now)).toEqual({ screen: 5 * MINUTE, paper: 0 });
    expect(minutesOf(state, 1, now)).toEqual({ screen: 2 * MINUTE, paper: 0 });
    expect(minutesOf(state, null, now)).toEqual({ screen: 7 * MINUTE, paper: 0 });
  });

  it('counts the driving phases as minutes on paper', () => {
    const driven = roomAfter(
      ...BUILDING,
      at(400, DESK, { kind: 'go-to', phase: 'drive' }),
      at(520, DESK, { kind: 'go-to', phase: 'show' }),
      at(700, DESK, { kind: 'go-to', phase: 'drive' }),
    );
    expect(minutesOf(driven, 0, 760 * SECOND)).toEqual({ screen: 5 * MINUTE, paper: 3 * MINUTE });
  });
});
