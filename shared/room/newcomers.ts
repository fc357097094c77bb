import { AS_IT_IS } from '../documents/challenge.ts';
import { conditionsFor } from './drawn-in.ts';
import type { RoomEvent, RoomFact } from './events.ts';
import { type Entry, freePlace, isGentler, type RoomState, type Team, timeIn } from './state.ts';

type FactOf<K extends RoomFact['kind']> = Extract<RoomFact, { kind: K }>;

/** A team as it comes in: in the berth that it is given, or else the next that is free. */
export const newTeam = (state: RoomState, { team, emblem, berth }: FactOf<'team-joined'>): Team => ({
  id: team,
  emblem,
  berth: berth ?? freePlace(state)?.berth ?? 0,
  seatFree: false,
  moves: 0,
  help: null,
  wall: null,
  mended: [],
});

/** What a team hands in, not judged yet. */
export function newEntry(state: RoomState, fact: FactOf<'handed-in'>, event: RoomEvent): Entry {
  const round = state.rounds.length - 1;
  const team = state.teams.find(({ id }) => id === fact.team);
  // Where the drawing is kept from a seat, its sheet and its weather are too.
  const drawnIn = team && fact.design !== null ? conditionsFor(state, team) : AS_IT_IS;
  const earlier = state.entries.filter((e) => e.team === fact.team && e.round === round);
  return {
    id: fact.entry,
    team: fact.team,
    round,
    number: earlier.length + 1,
    design: fact.design,
    at: event.at,
    late: fact.late,
    variant: fact.variant === undefined ? drawnIn.variant : fact.variant,
    weather: drawnIn.weather,
    mended: team?.mended.includes(round) ?? false,
    gentler: isGentler(state, fact.team, round),
    spent: state.building ? timeIn(state, event.at) - state.building.since : 0,
    taken: fact.taken ?? true,
    returned: false,
    verdict: null,
    shown: false,
    counted: false,
    unjudged: false,
  };
}
