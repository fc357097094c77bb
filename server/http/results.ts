import type { Weather } from '../../shared/documents/outlook.ts';
import { type ClassPicture, classPicture, rulesThatTrip } from '../../shared/evidence/class-picture.ts';
import type { LessonRecord } from '../../shared/evidence/record.ts';
import type { Millis } from '../../shared/geometry/units.ts';
import { weatherOf } from '../../shared/library/conditions.ts';
import { bestOfRounds, scoredOf, standings } from '../../shared/points/standings.ts';
import { counts, type Entry } from '../../shared/room/state.ts';
import { type Cell, csv } from './csv.ts';

const COLUMNS = [
  'round',
  'challenge',
  'berth',
  'team',
  'entry',
  'handed in (UTC)',
  'late',
  'counts',
  'goals met',
  'points',
  'best of round',
  'points of lesson',
  'rank',
  'drawing rules',
  'runs failed at (mm)',
  'tries in round',
  'minutes on task',
  'minutes at screen',
  'minutes on paper',
  'weather',
] as const;

const nothing = (cells: number): Cell[] => new Array<Cell>(cells).fill(null);

/** To a tenth. */
const minutes = (ms: Millis): number => Math.round(ms / 6000) / 10;

const judgedOf = ({ verdicts }: LessonRecord, entry: Entry) => ({
  entry,
  verdict: (entry.verdict && verdicts.get(entry.verdict.document)) ?? null,
});

/** What the desk shows of each round as the picture of the class; none where its challenge is missing. */
export function picturesOf(record: LessonRecord, now: Millis): (ClassPicture | undefined)[] {
  const { room, challenges } = record;
  return room.rounds.map(({ challenge }, round) => {
    const sheet = challenges.get(challenge)?.sheet;
    const judged = room.entries.filter((e) => e.round === round).map((entry) => judgedOf(record, entry));
    return sheet && classPicture(room, round, judged, sheet, now);
  });
}

/** The same picture beside an entry: its own rules and runs, what its team did, how long the round took. */
function pictured(entry: Entry, record: LessonRecord, picture: ClassPicture | undefined): Cell[] {
  const rules = rulesThatTrip([judgedOf(record, entry)]).map(({ rule }) => rule);
  const failed = picture?.failures.filter((run) => run.entry === entry.id) ?? [];
  const work = picture?.teams.find(({ team }) => team === entry.team);
  return [
    rules.join('; '),
    failed.map(({ ending, at }) => `${ending} ${Math.round(at.x)} ${Math.round(at.y)}`).join('; '),
    work?.tries ?? null,
    work && work.onTask !== null ? minutes(work.onTask) : null,
    picture ? minutes(picture.minutes.screen) : null,
    picture ? minutes(picture.minutes.paper) : null,
    otherWeather(entry, record),
  ];
}

/** The weather that an entry was judged in, where that is not what its challenge says. */
function otherWeather({ round, weather }: Entry, { room, challenges }: LessonRecord): Weather | null {
  const challenge = challenges.get(room.rounds[round]?.challenge ?? '');
  return challenge && weatherOf(challenge) === weather ? null : weather;
}

/** One row an entry, team by team in the order of the berths; teams without one get a row too. */
export function resultsCsv(record: LessonRecord, now: Millis): string {
  const { room: state } = record;
  const pictures = picturesOf(record, now);
  const scored = scoredOf(state.entries);
  const table = standings(
    state.teams.map((team) => team.id),
    scored,
  );
  const rows = state.teams.flatMap((team): Cell[][] => {
    const standing = table.find((s) => s.team === team.id);
    const lesson: Cell[] = [standing?.points ?? 0, standing?.rank ?? null];
    const best = bestOfRounds(team.id, scored);
    const entries = state.entries.filter((e) => e.team === team.id);
    if (entries.length === 0) {
      return [[...nothing(2), team.berth, team.emblem, ...nothing(7), ...lesson, ...nothing(7)]];
    }
    return entries.map((e) => [
      e.round + 1,
      state.rounds[e.round]?.key ?? null,
      team.berth,
      team.emblem,
      e.number,
      new Date(e.at).toISOString(),
      e.late,
      counts(e),
      e.verdict?.met ?? null,
      e.verdict?.points ?? null,
      e.verdict ? counts(e) && e.verdict.points === best.get(e.round) : null,
      ...lesson,
      ...pictured(e, record, pictures[e.round]),
    ]);
  });
  return csv([COLUMNS, ...rows]);
}
