/** Which team drives which robot in which turn. */

export interface Drive<T> {
  readonly team: T;
  readonly robot: number;
  /** 0 for the team's first drive. */
  readonly time: number;
}

/**
 * So many turns of as many teams as there are robots, or of all. Teams come in their order, round and round, so
 * that none is ever more than one drive ahead of another; of the robots that are free a team gets one that
 * it has had least, the first such from where the turn before began.
 */
export function drivingRota<T>(teams: readonly T[], robots: readonly number[], turns: number): Drive<T>[][] {
  const at = Math.min(teams.length, robots.length);
  if (at === 0) return [];
  const had = new Map(teams.map((team) => [team, new Map<number, number>()]));
  return Array.from({ length: turns }, (_, turn) => {
    const free = robots.map((_, i) => robots[(i + turn) % robots.length]!);
    return Array.from({ length: at }, (_, i) => {
      const place = turn * at + i;
      const team = teams[place % teams.length]!;
      const before = had.get(team)!;
      const robot = free.reduce((best, each) => (often(before, each) < often(before, best) ? each : best));
      free.splice(free.indexOf(robot), 1);
      before.set(robot, often(before, robot) + 1);
      return { team, robot, time: Math.floor(place / teams.length) };
    });
  });
}

const often = (had: ReadonlyMap<number, number>, robot: number): number => had.get(robot) ?? 0;

/** Turns until every team has driven so often. */
export const turnsFor = (teams: number, robots: number, times: number): number =>
  robots === 0 ? 0 : Math.ceil((teams * times) / Math.min(teams, robots) || 0);
