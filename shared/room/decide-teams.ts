import { broughtBack } from './decide-plan.ts';
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
import type { RoomFact, Seat, ToldVerdict } from './events.ts';
import { type Building, freePlace, type RoomState, type Team, type TeamId } from './state.ts';

/** Who is in the room, under which emblem, and whose tablet. */

const ROOM_FULL = refuse({ code: 'room-full', most: ROOM_LIMITS.teams });

/** Why nothing can be done for a team that does not play. */
export const strangerTo = (state: RoomState, id: string): Decision =>
  refuse({ code: state.removed.some((team) => team.id === id) ? 'team-removed' : 'unknown-team' });

/** A decision about the team that asks. */
export function ownTeam(state: RoomState, seat: Seat, decide: (team: Team) => Decision): Decision {
  if (seat.role !== 'team') return refuse({ code: 'not-for-this-seat' });
  const own = state.teams.find(({ id }) => id === seat.team);
  return own ? decide(own) : strangerTo(state, seat.team);
}

/** What a team does with its drawing of this round, from the first building time on. */
export function whileDrawing(
  state: RoomState,
  round: number,
  seat: Seat,
  fact: (team: TeamId, building: Building) => RoomFact,
): Decision {
  return ownTeam(state, seat, ({ id }) => {
    if (round !== state.rounds.length - 1) return refuse({ code: 'other-round' });
    return state.building === null ? NOT_BUILDING : done(fact(id, state.building));
  });
}

/** Where the lesson goes on from another, a team that comes back has its emblem, its berth and what was its own again. */
function join(state: RoomState, { team, before }: CommandOf<'join'>): Decision {
  const { from } = state.plan;
  const all = [...state.teams, ...state.removed];
  if (all.some((known) => known.id === team)) return ALREADY;
  const own = from?.places.find((place) => place.team === before);
  const isTaken = own && all.some(({ emblem, berth }) => emblem === own.emblem || berth === own.berth);
  const back = isTaken ? undefined : own;
  const place = back ?? freePlace(state);
  if (!place) return ROOM_FULL;
  const joined: RoomFact = {
    kind: 'team-joined',
    team,
    emblem: place.emblem,
    ...(from && { berth: place.berth }),
  };
  return done(joined, ...(back ? broughtBack(team, back) : []));
}

/** Until the first challenge is being told: later, emblems are what points are known by. */
function swapEmblem(state: RoomState, { emblem }: CommandOf<'swap-emblem'>, seat: Seat): Decision {
  if (state.phase !== 'gather') return notNow(state);
  return ownTeam(state, seat, (own) => {
    if (own.emblem === emblem) return ALREADY;
    if (state.teams.some((team) => team.emblem === emblem)) return refuse({ code: 'emblem-taken' });
    return done({ kind: 'emblem-changed', team: own.id, emblem });
  });
}

/** What stays on the stage without a team's entries; nothing to tell where it had none there. */
export function stageWithout(state: RoomState, team: string): RoomFact[] {
  const onStage = state.entries.filter((entry) => state.stage.includes(entry.id));
  if (!onStage.some((entry) => entry.team === team)) return [];
  const rest = onStage.filter((entry) => entry.team !== team);
  const verdicts = rest.flatMap(({ id, verdict }): ToldVerdict[] =>
    verdict ? [{ entry: id, ...verdict }] : [],
  );
  const designs = rest.flatMap((entry) => entry.design ?? []);
  return [{ kind: 'staged', entries: rest.map((entry) => entry.id), designs, verdicts }];
}

function removeTeam(state: RoomState, { team }: CommandOf<'remove-team'>): Decision {
  if (state.removed.some((known) => known.id === team)) return ALREADY;
  if (!state.teams.some((known) => known.id === team)) return strangerTo(state, team);
  return done({ kind: 'team-removed', team }, ...stageWithout(state, team));
}

/** Under its own emblem and in its own berth, unless another team has them now. */
function putBack(state: RoomState, { team }: CommandOf<'put-back-team'>): Decision {
  if (state.teams.some((known) => known.id === team)) return ALREADY;
  const own = state.removed.find((known) => known.id === team);
  if (!own) return strangerTo(state, team);
  const place = freePlace(state);
  if (!place) return ROOM_FULL;
  const isFree = <K extends 'emblem' | 'berth'>(key: K) => state.teams.every((t) => t[key] !== own[key]);
  return done({
    kind: 'team-put-back',
    team,
    emblem: isFree('emblem') ? own.emblem : place.emblem,
    berth: isFree('berth') ? own.berth : place.berth,
  });
}

/** A decision about the seat of a team that plays. */
const aboutSeat =
  (decide: (team: Team) => Decision) =>
  (state: RoomState, command: { readonly team: string }): Decision => {
    const team = state.teams.find((known) => known.id === command.team);
    return team ? decide(team) : strangerTo(state, command.team);
  };

type TeamKind =
  | 'join'
  | 'swap-emblem'
  | 'remove-team'
  | 'put-back-team'
  | 'free-seat'
  | 'keep-seat'
  | 'move-seat';

export const TEAM_RULES: { readonly [K in TeamKind]: Rule<K> } = {
  join: { by: 'server', decide: join },
  'swap-emblem': { by: 'team', decide: swapEmblem },
  'remove-team': { by: 'desk', decide: removeTeam },
  'put-back-team': { by: 'desk', decide: putBack },
  'free-seat': {
    by: 'desk',
    decide: aboutSeat(({ id, seatFree }) => (seatFree ? ALREADY : done({ kind: 'seat-freed', team: id }))),
  },
  'keep-seat': {
    by: 'desk',
    decide: aboutSeat(({ id, seatFree }) => (seatFree ? done({ kind: 'seat-kept', team: id }) : ALREADY)),
  },
  'move-seat': { by: 'server', decide: aboutSeat(({ id }) => done({ kind: 'seat-moved', team: id })) },
};
