import type { Millis } from '../geometry/units.ts';
import type { RoomCommand } from './commands.ts';
import { BOARD_RULES, toldVerdicts } from './decide-board.ts';
import { CALIBRATION_RULES } from './decide-calibration.ts';
import { CHECK_RULES } from './decide-check.ts';
import { COACHING_RULES } from './decide-coaching.ts';
import { CONDITIONS_RULES } from './decide-conditions.ts';
import { KIT_RULES } from './decide-kit.ts';
import { LEARNING_RULES } from './decide-learning.ts';
import { PLAN_RULES } from './decide-plan.ts';
import { strangerTo, TEAM_RULES, whileDrawing } from './decide-teams.ts';
import { TRIAL_RULES } from './decide-trials.ts';
import {
  ALREADY,
  type CommandOf,
  type Decision,
  done,
  NOT_BUILDING,
  notNow,
  ROOM_LIMITS,
  type Rule,
  refuse,
} from './decision.ts';
import { hasHad } from './drawn-in.ts';
import type { RoomFact, Seat, ToldVerdict } from './events.ts';
import { isBuilding, type Phase, type RoomState, timeIn } from './state.ts';

const SECOND = 1000;
const endByDesk = (state: RoomState): RoomFact[] =>
  isBuilding(state) ? [{ kind: 'building-ended', by: 'desk' }] : [];

/** Phases in which the room has a challenge to speak of. */
const NEEDS_CHALLENGE: readonly Phase[] = ['brief', 'build', 'show', 'drive'];

/** A new round. A room that was building or showing goes back to the brief with it. */
function chooseChallenge(state: RoomState, { kind: _, ...command }: CommandOf<'choose-challenge'>): Decision {
  if (isBuilding(state)) return notNow(state);
  const { challenge, kit } = command;
  const last = state.rounds.at(-1);
  const isSame = last?.challenge === challenge && last.kit === kit;
  if (state.building === null && isSame) return ALREADY;
  const chosen: RoomFact = { kind: 'challenge-chosen', ...command };
  const stays = state.phase === 'gather' || state.phase === 'brief';
  return stays ? done(chosen) : done(chosen, { kind: 'phase-changed', phase: 'brief' });
}

/** A sheet that somebody draws on, or has drawn on, stays as it is. */
function varySheets(state: RoomState, { on }: CommandOf<'vary-sheets'>): Decision {
  if (state.variedSheets === on) return ALREADY;
  return state.building === null ? done({ kind: 'sheets-varied', on }) : notNow(state);
}

/** Any phase may follow any other; leaving the building phase ends the building. */
function goTo(state: RoomState, command: CommandOf<'go-to'>): Decision {
  if (command.phase === state.phase) return ALREADY;
  if (NEEDS_CHALLENGE.includes(command.phase) && state.rounds.length === 0) {
    return refuse({ code: 'no-challenge' });
  }
  if (command.phase === 'build' && state.building === null) return NOT_BUILDING;
  const told = command.phase === 'close' ? toldVerdicts(state) : [];
  return done(...endByDesk(state), ...told, { kind: 'phase-changed', phase: command.phase });
}

function startBuilding(
  state: RoomState,
  command: CommandOf<'start-building'>,
  _: Seat,
  now: Millis,
): Decision {
  if (state.rounds.length === 0) return refuse({ code: 'no-challenge' });
  if (isBuilding(state)) return ALREADY;
  const until = command.seconds === null ? null : timeIn(state, now) + command.seconds * SECOND;
  const started: RoomFact = { kind: 'building-started', until };
  return state.phase === 'build' ? done(started) : done({ kind: 'phase-changed', phase: 'build' }, started);
}

/** Adds to the deadline; after the end it opens the building again, counted from now. */
function extendBuilding(
  state: RoomState,
  command: CommandOf<'extend-building'>,
  _: Seat,
  now: Millis,
): Decision {
  const { building } = state;
  if (building === null || state.phase !== 'build') return NOT_BUILDING;
  if (building.until === null && !building.ended) return ALREADY;
  const clock = timeIn(state, now);
  const from = building.ended ? clock : Math.max(clock, building.until ?? clock);
  return done({ kind: 'building-extended', until: from + command.seconds * SECOND });
}

function stage(state: RoomState, command: CommandOf<'stage'>): Decision {
  if (state.phase !== 'show') return notNow(state);
  if (command.entries.length > ROOM_LIMITS.onStage) {
    return refuse({ code: 'too-many-on-stage', most: ROOM_LIMITS.onStage });
  }
  if (command.entries.join() === state.stage.join()) return ALREADY;
  const designs: string[] = [];
  const verdicts: ToldVerdict[] = [];
  for (const id of command.entries) {
    const entry = state.entries.find((e) => e.id === id);
    if (!entry || entry.design === null) return refuse({ code: 'unknown-entry', entry: id });
    const team = state.teams.find(({ id: known }) => known === entry.team);
    if (!team) return strangerTo(state, entry.team);
    if (team.wall === 'not-at-all') return refuse({ code: 'not-on-the-wall' });
    if (entry.verdict === null) return refuse({ code: 'not-judged' });
    designs.push(entry.design);
    verdicts.push({ entry: id, ...entry.verdict });
  }
  return done({ kind: 'staged', entries: command.entries, designs, verdicts });
}

function handIn(state: RoomState, command: CommandOf<'hand-in'>, seat: Seat, now: Millis): Decision {
  const { round, entry, design, variant } = command;
  const own = state.teams.find(({ id }) => seat.role === 'team' && id === seat.team);
  const isStrange = own && variant !== undefined && !hasHad(state, own, variant);
  if (isStrange && round === state.rounds.length - 1) return refuse({ code: 'other-sheet' });
  return whileDrawing(state, round, seat, (team, building) => {
    const late = building.ended || (building.until !== null && timeIn(state, now) >= building.until);
    const onSheet = variant === undefined ? {} : { variant };
    return { kind: 'handed-in', entry, team, design, late, taken: !late, ...onSheet };
  });
}

/** What was in time counts anyway, and stays as it is. */
function takeLate(state: RoomState, { entries, on }: CommandOf<'take-late'>): Decision {
  const stranger = entries.find((id) => !state.entries.some((entry) => entry.id === id));
  if (stranger !== undefined) return refuse({ code: 'unknown-entry', entry: stranger });
  const others = state.entries.filter((e) => entries.includes(e.id) && e.late && e.taken !== on);
  if (others.length === 0) return ALREADY;
  return done({ kind: 'late-taken', entries: others.map((entry) => entry.id), on });
}

function judge(state: RoomState, command: CommandOf<'judge'>): Decision {
  const entry = state.entries.find((e) => e.id === command.entry);
  if (!entry) return refuse({ code: 'unknown-entry', entry: command.entry });
  if (entry.verdict !== null) return refuse({ code: 'already-judged' });
  const { document, points, met } = command;
  const closing = state.phase === 'close' || state.board.scene === 'closing';
  const counted = state.standingsShown || closing || entry.shown;
  return done({ kind: 'judged', entry: entry.id, document, points, met, counted });
}

/** The server gives up on an entry, or the desk wants it tried once more. */
const markUnjudged =
  (unjudged: boolean) =>
  (state: RoomState, command: { readonly entry: string }): Decision => {
    const entry = state.entries.find((e) => e.id === command.entry);
    if (!entry) return refuse({ code: 'unknown-entry', entry: command.entry });
    if (entry.verdict !== null) return refuse({ code: 'already-judged' });
    if (entry.unjudged === unjudged) return ALREADY;
    return done({ kind: unjudged ? 'not-judged' : 'judging-again', entry: entry.id });
  };

/** The board learns with the standings what it has not been told before. */
function showStandings(state: RoomState, { on }: CommandOf<'show-standings'>): Decision {
  if (state.standingsShown === on) return ALREADY;
  const news = on ? state.entries.filter((entry) => !entry.counted) : [];
  const verdicts = news.flatMap(({ id, verdict }) => (verdict ? [{ entry: id, ...verdict }] : []));
  return done({ kind: 'standings-shown', on, verdicts });
}

/** All tablets rest and time stands still: whatever was due is due later by as much. */
function pause(state: RoomState, { on }: CommandOf<'pause'>, _: Seat, now: Millis): Decision {
  if ((state.paused !== null) === on) return ALREADY;
  return done(state.paused === null ? { kind: 'paused' } : { kind: 'resumed', after: now - state.paused });
}

function timeIsUp(state: RoomState, _: CommandOf<'time-is-up'>, __: Seat, now: Millis): Decision {
  const until = state.building?.until ?? null;
  if (!isBuilding(state) || until === null || timeIn(state, now) < until) return NOT_BUILDING;
  return done({ kind: 'building-ended', by: 'time' });
}

const RULES: { readonly [K in RoomCommand['kind']]: Rule<K> } = {
  'watch-charger': {
    by: 'desk',
    decide: (state) => (state.chargerWatched ? ALREADY : done({ kind: 'charger-watched' })),
  },
  ...CALIBRATION_RULES,
  ...TEAM_RULES,
  ...LEARNING_RULES,
  ...TRIAL_RULES,
  ...BOARD_RULES,
  ...CHECK_RULES,
  ...KIT_RULES,
  ...COACHING_RULES,
  ...CONDITIONS_RULES,
  ...PLAN_RULES,
  'choose-challenge': { by: 'desk', decide: chooseChallenge },
  'vary-sheets': { by: 'desk', decide: varySheets },
  'go-to': { by: 'desk', decide: goTo },
  'start-building': { by: 'desk', decide: startBuilding },
  'extend-building': { by: 'desk', decide: extendBuilding },
  'end-building': {
    by: 'desk',
    decide: (state) => (isBuilding(state) ? done(...endByDesk(state)) : NOT_BUILDING),
  },
  'look-here': {
    by: 'desk',
    decide: (state, { on }) => (state.lookHere === on ? ALREADY : done({ kind: 'look-here', on })),
  },
  pause: { by: 'desk', decide: pause },
  'show-standings': { by: 'desk', decide: showStandings },
  stage: { by: 'desk', decide: stage },
  'hand-in': { by: 'team', decide: handIn },
  'take-late': { by: 'desk', decide: takeLate },
  'judge-again': { by: 'desk', decide: markUnjudged(false) },
  judge: { by: 'server', decide: judge },
  'give-up-judging': { by: 'server', decide: markUnjudged(true) },
  'time-is-up': { by: 'server', decide: timeIsUp },
};

/**
 * What follows from a command in this state, as facts in order, or why nothing does. Pure: `now` is
 * the server's time. The form of the command has been checked before.
 */
export function decide(state: RoomState, command: RoomCommand, seat: Seat, now: Millis): Decision {
  const rule = RULES[command.kind] as Rule<RoomCommand['kind']>;
  if (rule.by !== seat.role) return refuse({ code: 'not-for-this-seat' });
  return (rule.decide as (s: RoomState, c: RoomCommand, seat: Seat, now: Millis) => Decision)(
    state,
    command,
    seat,
    now,
  );
}
