import type { Millis } from '../geometry/units.ts';
import { BOARD_FOLDS, boardWithout, clearedBoard, lessonScene } from './apply-board.ts';
import { CALIBRATION_FOLDS } from './apply-calibration.ts';
import { CHECK_FOLDS } from './apply-check.ts';
import { COACHING_FOLDS } from './apply-coaching.ts';
import { CONDITIONS_FOLDS } from './apply-conditions.ts';
import { DRIVING_FOLDS, withDriving } from './apply-trials.ts';
import { FIRST_BOARD } from './board.ts';
import { inNextRound, NO_COACHING, USUAL_HELP } from './coaching.ts';
import { USUAL_CONDITIONS } from './conditions.ts';
import { NO_DRIVING } from './driving.ts';
import type { RoomEvent, RoomFact, ToldVerdict } from './events.ts';
import { newEntry, newTeam } from './newcomers.ts';
import { NO_PLAN, queueWith } from './plan.ts';
import { type Building, type Entry, type EntryVerdict, type RoomState, type Team, timeIn } from './state.ts';

type Opened = Extract<RoomFact, { kind: 'opened' }>;
type FactOf<K extends RoomFact['kind']> = Extract<RoomFact, { kind: K }>;

/** The state after a room's first event. */
export function openedState(fact: Opened, event: Pick<RoomEvent, 'seq' | 'at'>): RoomState {
  return {
    id: fact.room,
    word: fact.word,
    seq: event.seq,
    openedAt: event.at,
    phase: 'gather',
    phaseSince: event.at,
    spent: [],
    chargerWatched: fact.chargerWatched,
    calibrations: [],
    teams: [],
    removed: [],
    kit: null,
    rounds: [],
    variedSheets: false,
    building: null,
    lookHere: false,
    paused: null,
    standingsShown: false,
    help: USUAL_HELP,
    tries: [],
    entries: [],
    checks: [],
    stage: [],
    board: FIRST_BOARD,
    coaching: NO_COACHING,
    conditions: USUAL_CONDITIONS,
    plan: NO_PLAN,
    driving: NO_DRIVING,
  };
}

const FOLDS: { readonly [K in RoomFact['kind']]: (s: RoomState, f: FactOf<K>, e: RoomEvent) => RoomState } = {
  ...BOARD_FOLDS,
  ...DRIVING_FOLDS,
  /** A room opens once; a second opening changes nothing. */
  opened: (state) => state,
  lost: (state) => state,
  'charger-watched': (state) => ({ ...state, chargerWatched: true }),
  ...CALIBRATION_FOLDS,
  'team-joined': (state, fact) => ({ ...state, teams: byBerth([...state.teams, newTeam(state, fact)]) }),
  'emblem-changed': (state, fact) => withTeam(state, fact.team, { emblem: fact.emblem }),
  'team-removed': (state, fact) => ({
    ...boardWithout(state, fact.team),
    teams: state.teams.filter((team) => team.id !== fact.team),
    removed: [...state.removed, ...state.teams.filter((team) => team.id === fact.team)],
  }),
  'team-put-back': (state, fact) => {
    const { emblem, berth } = fact;
    const back = state.removed.filter((t) => t.id === fact.team).map((t) => ({ ...t, emblem, berth }));
    return {
      ...state,
      removed: state.removed.filter((team) => team.id !== fact.team),
      teams: byBerth([...state.teams, ...back]),
    };
  },
  'seat-freed': (state, fact) => withTeam(state, fact.team, { seatFree: true }),
  'seat-kept': (state, fact) => withTeam(state, fact.team, { seatFree: false }),
  'seat-moved': (state, fact) => {
    const moves = 1 + (state.teams.find((team) => team.id === fact.team)?.moves ?? 0);
    return withTeam(state, fact.team, { seatFree: false, moves });
  },
  'help-set': (state, { team, step }) =>
    team === null ? { ...state, help: step ?? state.help } : withTeam(state, team, { help: step }),
  'wall-wished': (state, { team, wish }) =>
    withTeam(wish === 'not-at-all' ? boardWithout(state, team) : state, team, { wall: wish }),
  tried: (state, { kind, ...tried }) => ({ ...state, tries: [...state.tries, { ...tried, because: null }] }),
  explained: (state, { kind, team, round, ...because }) => {
    const last = state.tries.findLastIndex((one) => one.team === team && one.round === round);
    const tries = state.tries.map((one, i) => (i === last ? { ...one, because } : one));
    return { ...state, tries };
  },
  mended: (state, { team, round }) => {
    const before = state.teams.find(({ id }) => id === team)?.mended ?? [];
    return withTeam(state, team, { mended: [...before, round] });
  },
  'kit-chosen': (state, { kit }) => ({ ...state, kit }),
  'challenge-chosen': (state, { kind, ...chosen }, { at }) => ({
    ...withDriving(clearedBoard(state), { turn: 0, over: [] }),
    ...timesAt(state, at),
    rounds: [...state.rounds, { ...chosen, varied: state.variedSheets }],
    plan: { ...state.plan, queue: queueWith(state.plan.queue, chosen.key, null) },
    coaching: inNextRound(state.coaching),
    conditions: USUAL_CONDITIONS,
    building: null,
    stage: [],
  }),
  'sheets-varied': (state, { on }) => {
    const last = state.rounds.length - 1;
    const rounds = state.rounds.map((round, i) => (i === last ? { ...round, varied: on } : round));
    return { ...state, variedSheets: on, rounds: state.building ? state.rounds : rounds };
  },
  /** The stage belongs to the phase in which it was set. */
  'phase-changed': (state, { phase }, { at }) => ({
    ...lessonScene(state),
    ...timesAt(state, at),
    phase,
    stage: [],
  }),
  'building-started': (state, fact, event) => ({
    ...lessonScene(state),
    building: { since: timeIn(state, event.at), until: fact.until, ended: false },
  }),
  'building-extended': (state, fact) =>
    state.building
      ? { ...lessonScene(state), building: { ...state.building, until: fact.until, ended: false } }
      : state,
  'building-ended': (state) =>
    state.building ? { ...state, building: { ...state.building, ended: true } } : state,
  'look-here': (state, fact) => ({ ...state, lookHere: fact.on }),
  paused: (state, _, event) => ({ ...state, paused: event.at }),
  resumed: (state, { after }) => ({
    ...state,
    paused: null,
    phaseSince: state.phaseSince + after,
    building: later(state.building, after),
  }),
  'standings-shown': (state, fact) => ({
    ...state,
    standingsShown: fact.on,
    entries: withVerdicts(state.entries, fact.verdicts),
  }),
  'handed-in': (state, fact, event) => ({
    ...state,
    entries: [...state.entries, newEntry(state, fact, event)],
  }),
  judged: (state, fact) => ({
    ...state,
    entries: withEntry(state.entries, fact.entry, (entry) => ({
      ...entry,
      verdict: verdictOf(fact),
      counted: fact.counted,
      unjudged: false,
    })),
  }),
  ...COACHING_FOLDS,
  ...CONDITIONS_FOLDS,
  'queue-changed': (state, { queue }) => ({ ...state, plan: { ...state.plan, queue } }),
  continued: (state, { kind, ...from }) => ({ ...state, plan: { ...state.plan, from } }),
  'late-taken': (state, fact) => ({
    ...state,
    entries: fact.entries.reduce(
      (entries, id) => withEntry(entries, id, (entry) => ({ ...entry, taken: fact.on })),
      state.entries,
    ),
  }),
  'not-judged': (state, fact) => withUnjudged(state, fact.entry, true),
  'judging-again': (state, fact) => withUnjudged(state, fact.entry, false),
  'verdicts-told': (state, { verdicts }) => ({ ...state, entries: withVerdicts(state.entries, verdicts) }),
  ...CHECK_FOLDS,
  staged: (state, fact) => ({
    ...state,
    stage: fact.entries,
    entries: withVerdicts(
      fact.entries.reduce(
        (entries, id, i) =>
          withEntry(entries, id, (entry) => ({
            ...entry,
            design: fact.designs[i] ?? entry.design,
            variant: fact.variants ? (fact.variants[i] ?? null) : entry.variant,
            shown: true,
          })),
        state.entries,
      ),
      fact.verdicts,
    ),
  }),
};

/** What is written down of the phase that ends now, and the beginning of the next. */
function timesAt(state: RoomState, at: Millis): Pick<RoomState, 'phaseSince' | 'spent'> {
  const now = timeIn(state, at);
  const round = state.rounds.length - 1;
  const before = state.spent[round] ?? {};
  const { phase, phaseSince } = state;
  const lasted = { ...before, [phase]: (before[phase] ?? 0) + now - phaseSince };
  return { phaseSince: now, spent: round < 0 ? [] : [...state.spent.slice(0, round), lasted] };
}

const byBerth = (teams: Team[]): Team[] => teams.sort((a, b) => a.berth - b.berth);

const withTeam = (state: RoomState, id: string, change: Partial<Team>): RoomState => ({
  ...state,
  teams: state.teams.map((team) => (team.id === id ? { ...team, ...change } : team)),
});

const later = (building: Building | null, by: Millis): Building | null =>
  building && {
    ...building,
    since: building.since + by,
    until: building.until === null ? null : building.until + by,
  };

const withEntry = (entries: readonly Entry[], id: string, change: (entry: Entry) => Entry) =>
  entries.map((entry) => (entry.id === id ? change(entry) : entry));

const verdictOf = ({ document, points, met }: ToldVerdict): EntryVerdict => ({ document, points, met });

const withVerdicts = (entries: readonly Entry[], told: readonly ToldVerdict[]) =>
  told.reduce(
    (all, one) =>
      withEntry(all, one.entry, (entry) => ({ ...entry, verdict: verdictOf(one), counted: true })),
    entries,
  );

const withUnjudged = (state: RoomState, id: string, unjudged: boolean): RoomState => ({
  ...state,
  entries: withEntry(state.entries, id, (entry) => ({ ...entry, unjudged })),
});

/**
 * The state after one more event. Pure and total: an event whose fact is hidden from this seat, or of
 * a kind that this version does not know, only moves the count.
 */
export function apply(state: RoomState, event: RoomEvent): RoomState {
  const { fact } = event;
  if (fact === null || !Object.hasOwn(FOLDS, fact.kind)) return { ...state, seq: event.seq };
  const fold = FOLDS[fact.kind] as (s: RoomState, f: RoomFact, e: RoomEvent) => RoomState;
  return { ...fold(state, fact, event), seq: event.seq };
}

/** The fold of a room's events from its first one; undefined where that one opens no room. */
export function stateOf(events: readonly RoomEvent[]): RoomState | undefined {
  const [first, ...rest] = events;
  if (first?.fact?.kind !== 'opened') return undefined;
  return rest.reduce(apply, openedState(first.fact, first));
}
