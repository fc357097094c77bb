import fc from 'fast-check';
import type { ClosingKey } from '../../../shared/documents/closing-check.ts';
import { GUESSES } from '../../../shared/documents/reason.ts';
import { apply, openedState } from '../../../shared/room/apply.ts';
import { BOARD_SCENES, BOARD_SETTINGS } from '../../../shared/room/board.ts';
import { LIGHTS } from '../../../shared/room/calibration.ts';
import { HINTS, RETURN_REASONS } from '../../../shared/room/coaching.ts';
import type { RoomCommand } from '../../../shared/room/commands.ts';
import { decide } from '../../../shared/room/decide.ts';
import type { Decision } from '../../../shared/room/decision.ts';
import type { Outcome } from '../../../shared/room/driving.ts';
import { EVENT_VERSION, type RoomEvent, type Seat } from '../../../shared/room/events.ts';
import { PHASES, type RoomState, WALL_WISHES } from '../../../shared/room/state.ts';
import { helpingCommand } from './arbitrary-helping.ts';

/** Random lessons: commands of all seats, sensible often enough that rooms get far. */

export const DESK: Seat = { role: 'desk' };
export const BOARD: Seat = { role: 'board' };
export const SERVER: Seat = { role: 'server' };
export const team = (id: string): Seat => ({ role: 'team', team: id });

export const OPENED: RoomEvent = {
  seq: 1,
  at: 1000,
  version: 1,
  fact: { kind: 'opened', room: 'room-1', word: 'plum-42', chargerWatched: false },
};

export function opened(): RoomState {
  if (OPENED.fact?.kind !== 'opened') throw new Error('the first fact opens the room');
  return openedState(OPENED.fact, OPENED);
}

export type Move = readonly [Seat, RoomCommand, number?];

/** The room after these moves; each must be accepted. */
export function roomAfter(...moves: Move[]): RoomState {
  let state = opened();
  for (const [seat, command, at = 2000] of moves) {
    const decision = decide(state, command, seat, at);
    if (!decision.ok) throw new Error(`${command.kind} was refused: ${decision.refusal.code}`);
    for (const fact of decision.facts) state = apply(state, { seq: state.seq + 1, at, version: 1, fact });
  }
  return state;
}

export const factsOf = (decision: Decision) => (decision.ok ? decision.facts : decision.refusal);
export const codeOf = (decision: Decision) => (decision.ok ? 'accepted' : decision.refusal.code);

/** One step: after `wait` ms, `seat` sends `command`. */
export interface Step {
  readonly wait: number;
  readonly seat: Seat;
  readonly command: RoomCommand;
}

const TEAMS = ['t1', 't2', 't3'];
const teamId = fc.constantFrom(...TEAMS);
const entryId = fc.constantFrom('e1', 'e2', 'e3', 'e4', 'e5', 'e6');
const handedIn = fc.tuple(teamId, entryId).map(([by, entry]) => `${by}-${entry}`);
/** Of a closing check with two questions. */
export const KEY: ClosingKey = [
  { right: 'r', word: 'CA', mistakes: [{ choice: 'w', mistake: 'same-from-both-sides' }] },
  { right: 'right', word: 'AC', mistakes: [{ choice: 'wrong', mistake: 'one-ink-mistaken' }] },
];
const answer = {
  check: fc.nat(2),
  question: fc.nat(2),
  picked: fc.constantFrom('r', 'w', 'right', 'wrong', 'none'),
};
const deskCommand: fc.Arbitrary<RoomCommand> = fc.oneof(
  fc.constant<RoomCommand>({ kind: 'watch-charger' }),
  fc.record({
    kind: fc.constant('calibrate' as const),
    robot: fc.integer({ min: 1, max: 3 }),
    light: fc.constantFrom(...LIGHTS),
  }),
  fc.record({ kind: fc.constant('take-calibration-back' as const), robot: fc.integer({ min: 1, max: 3 }) }),
  fc.record({ kind: fc.constant('change-light' as const), on: fc.boolean() }),
  fc.record({
    kind: fc.constant('choose-challenge' as const),
    challenge: fc.constantFrom('c1', 'c2'),
    key: fc.constantFrom('k1', 'k2'),
    gentler: fc.constantFrom(undefined, 'g1'),
  }),
  fc.record({ kind: fc.constant('choose-kit' as const), kit: fc.constantFrom('kit-1', 'kit-2', null) }),
  fc.record({ kind: fc.constant('go-to' as const), phase: fc.constantFrom(...PHASES) }),
  fc.record({
    kind: fc.constant('start-building' as const),
    seconds: fc.option(fc.integer({ min: 1, max: 60 })),
  }),
  fc.record({ kind: fc.constant('extend-building' as const), seconds: fc.integer({ min: 1, max: 60 }) }),
  fc.constant<RoomCommand>({ kind: 'end-building' }),
  fc.record({ kind: fc.constant('look-here' as const), on: fc.boolean() }),
  fc.record({ kind: fc.constant('vary-sheets' as const), on: fc.boolean() }),
  fc.record({ kind: fc.constant('show-standings' as const), on: fc.boolean() }),
  fc.record({ kind: fc.constant('pause' as const), on: fc.boolean() }),
  fc.record({
    kind: fc.constantFrom('remove-team' as const, 'put-back-team', 'free-seat', 'keep-seat'),
    team: teamId,
  }),
  fc.record({ kind: fc.constantFrom('judge-again' as const, 'accept-entry' as const), entry: handedIn }),
  fc.record({
    kind: fc.constant('return-entry' as const),
    entry: handedIn,
    reason: fc.constantFrom(...RETURN_REASONS),
  }),
  fc.record({
    kind: fc.constant('send-note' as const),
    team: teamId,
    words: fc.constantFrom(...HINTS).map((hint) => ({ kind: 'hint' as const, hint })),
  }),
  fc.record({ kind: fc.constant('take-note-back' as const), note: fc.integer({ min: 1, max: 40 }) }),
  helpingCommand(teamId),
  fc.record({
    kind: fc.constant('queue-challenge' as const),
    key: fc.constantFrom('k1', 'k2', 'k3'),
    place: fc.option(fc.nat(3)),
  }),
  fc.record({
    kind: fc.constant('set-robots' as const),
    robots: fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 4 }),
  }),
  fc.record({ kind: fc.constant('call-turn' as const), turn: fc.nat(3) }),
  fc.record({
    kind: fc.constant('note-trial' as const),
    entry: handedIn,
    robot: fc.integer({ min: 1, max: 5 }),
    outcome: fc.constantFrom<Outcome>(
      { kind: 'as-predicted', seconds: 12.5 },
      { kind: 'lost', at: { x: 3, y: 4 } },
      { kind: 'other-branch' },
      { kind: 'time-up' },
    ),
    foretold: fc.constantFrom({ same: 18, of: 20, finish: 1, seconds: 12 }, null),
  }),
  fc.record({ kind: fc.constant('withdraw-trial' as const), trial: fc.nat(3) }),
  fc.record({ kind: fc.constant('judge-again' as const), entry: handedIn }),
  fc.record({
    kind: fc.constant('take-late' as const),
    entries: fc.uniqueArray(handedIn, { minLength: 1, maxLength: 3 }),
    on: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('stage' as const), entries: fc.uniqueArray(handedIn, { maxLength: 3 }) }),
  fc.record({ kind: fc.constant('show-scene' as const), scene: fc.option(fc.constantFrom(...BOARD_SCENES)) }),
  fc.record({
    kind: fc.constant('set-board' as const),
    setting: fc.constantFrom(...BOARD_SETTINGS),
    on: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('hang' as const),
    entries: fc.uniqueArray(handedIn, { minLength: 1, maxLength: 3 }),
  }),
  fc.record({
    kind: fc.constant('show-fleet' as const),
    entry: handedIn,
    weather: fc.constantFrom('calm' as const, 'stormy'),
  }),
  fc.record({ kind: fc.constant('foretell' as const), entry: fc.option(handedIn) }),
  fc.record({ kind: fc.constant('drive-on' as const), passed: fc.nat(3) }),
  fc.record({
    kind: fc.constant('count-hands' as const),
    stop: fc.nat(3),
    hands: fc.array(fc.nat(9), { maxLength: 3 }),
  }),
  fc.record({
    kind: fc.constant('count-back' as const),
    what: fc.constantFrom('robots' as const, 'caps'),
    counted: fc.option(fc.record({ there: fc.nat(5), of: fc.nat(5) })),
  }),
  fc.record({
    kind: fc.constant('start-check' as const),
    check: fc.constantFrom('q1', 'q2'),
    key: fc.constant(KEY),
  }),
  fc.constant<RoomCommand>({ kind: 'end-check' }),
  fc.constant<RoomCommand>({ kind: 'resume-check' }),
  fc.record({ kind: fc.constant('show-check' as const), on: fc.boolean() }),
  fc.record({ kind: fc.constant('note-answer' as const), team: teamId, ...answer }),
);

const deskStep = fc.record({ seat: fc.constant(DESK), command: deskCommand });
const handIn = fc
  .record({ by: teamId, entry: entryId, round: fc.integer({ min: 0, max: 2 }) })
  .map(({ by, entry, round }) => ({
    seat: team(by),
    command: { kind: 'hand-in', round, entry: `${by}-${entry}`, design: `d-${by}-${entry}` } as const,
  }));
const swap = fc
  .record({ by: teamId, emblem: fc.constantFrom('sailboat', 'bell', 'chair') })
  .map(({ by, emblem }) => ({ seat: team(by), command: { kind: 'swap-emblem', emblem } as const }));
const round = fc.integer({ min: 0, max: 2 });
const learning = fc
  .tuple(
    teamId,
    fc.oneof(
      fc.record({ kind: fc.constant('wish-wall' as const), wish: fc.constantFrom(...WALL_WISHES) }),
      fc.record({
        kind: fc.constant('try' as const),
        round,
        guess: fc.constantFrom(...GUESSES),
        at: fc.option(fc.record({ x: fc.nat(4000), y: fc.nat(4000) })),
        made: fc.boolean(),
      }),
      fc.record({
        kind: fc.constant('explain' as const),
        round,
        offered: fc.constant(['time-up', 'got-tired', 'acts-at-once'] as const),
        picked: fc.constantFrom('time-up' as const, 'got-tired'),
        right: fc.constant('time-up' as const),
      }),
      fc.record({ kind: fc.constant('mend' as const), round }),
      fc.record({ kind: fc.constant('answer-check' as const), ...answer }),
      fc.record({ kind: fc.constant('put-note-away' as const), note: fc.integer({ min: 1, max: 40 }) }),
    ),
  )
  .map(([by, command]) => ({ seat: team(by), command }));
const teamStep = fc.oneof(
  { arbitrary: handIn, weight: 4 },
  { arbitrary: learning, weight: 3 },
  { arbitrary: swap, weight: 1 },
);
const serverStep: fc.Arbitrary<{ seat: Seat; command: RoomCommand }> = fc
  .oneof(
    fc.record({ kind: fc.constantFrom('join' as const, 'move-seat'), team: teamId }),
    fc.constant({ kind: 'time-is-up' as const }),
    fc.record({ kind: fc.constant('give-up-judging' as const), entry: handedIn }),
    fc.record({ by: teamId, entry: entryId, points: fc.integer({ min: 0, max: 100 }) }).map((j) => ({
      kind: 'judge' as const,
      entry: `${j.by}-${j.entry}`,
      document: `v-${j.by}-${j.entry}`,
      points: j.points,
      met: j.points === 100,
    })),
  )
  .map((command) => ({ seat: SERVER, command }));

const step = fc
  .tuple(fc.integer({ min: 0, max: 20_000 }), fc.oneof(deskStep, teamStep, serverStep))
  .map(([wait, rest]): Step => ({ wait, ...rest }));

/** Begins as lessons do, so that most of what follows finds a room in the middle of one. */
const BEGINNING: Step[] = [
  { wait: 0, seat: SERVER, command: { kind: 'join', team: 't1' } },
  { wait: 0, seat: SERVER, command: { kind: 'join', team: 't2' } },
  { wait: 0, seat: DESK, command: { kind: 'choose-challenge', challenge: 'c1', key: 'k1' } },
  { wait: 0, seat: DESK, command: { kind: 'start-building', seconds: null } },
  { wait: 0, seat: team('t1'), command: { kind: 'hand-in', round: 0, entry: 't1-e1', design: 'd-t1-e1' } },
  { wait: 0, seat: team('t2'), command: { kind: 'hand-in', round: 0, entry: 't2-e1', design: 'd-t2-e1' } },
  {
    wait: 0,
    seat: SERVER,
    command: { kind: 'judge', entry: 't1-e1', document: 'v-t1-e1', points: 80, met: false },
  },
  { wait: 0, seat: DESK, command: { kind: 'go-to', phase: 'show' } },
  { wait: 0, seat: DESK, command: { kind: 'stage', entries: ['t1-e1'] } },
  { wait: 0, seat: DESK, command: { kind: 'go-to', phase: 'close' } },
  { wait: 0, seat: DESK, command: { kind: 'start-check', check: 'q1', key: KEY } },
  { wait: 0, seat: team('t1'), command: { kind: 'answer-check', check: 0, question: 0, picked: 'r' } },
];

export const lesson: fc.Arbitrary<Step[]> = fc
  .tuple(fc.integer({ min: 0, max: BEGINNING.length }), fc.array(step, { maxLength: 60 }))
  .map(([n, steps]) => [...BEGINNING.slice(0, n), ...steps]);

export interface Played {
  readonly state: RoomState;
  readonly events: readonly RoomEvent[];
}

/** Plays steps as the server does: decide on the newest state, number, apply. */
export function play(steps: readonly Step[]): Played {
  let state = opened();
  const events: RoomEvent[] = [OPENED];
  let now = 1000;
  for (const { wait, seat, command } of steps) {
    now += wait;
    // The server makes the ids of entries, so none comes twice.
    if (command.kind === 'hand-in' && state.entries.some((e) => e.id === command.entry)) continue;
    const decision = decide(state, command, seat, now);
    if (!decision.ok) continue;
    for (const fact of decision.facts) {
      const event: RoomEvent = { seq: state.seq + 1, at: now, version: EVENT_VERSION, fact };
      events.push(event);
      state = apply(state, event);
    }
  }
  return { state, events };
}
