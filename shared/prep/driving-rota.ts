/** Which team drives which robot in which turn. */

export interface Drive<T> {
  readonly team: T;
  readonly robot: number;
  /** 0 for the team's first drive. */
  readonly time: number;
}

/**
 * For each turn the robots that drive in it, as many teams at once as there are of them, or all. Teams come in
 * their order, round and round, so that none is ever more than one drive ahead of another, also where a robot
 * rests for a turn; of the robots that are free a team gets one that it has had least, the first such from where
 * the turn before began.
 */
export function drivingRota<T>(
  teams: readonly T[],
  turns: readonly (readonly number[])[],
): readonly Drive<T>[][] {
  const had = new Map(teams.map((team) => [team, new Map<number, number>()]));
  let place = 0;
  return turns.map((robots, turn) => {
    const free = robots.map((_, i) => robots[(i + turn) % robots.length]!);
    return Array.from({ length: Math.min(teams.length, robots.length) }, () => {
      const team = teams[place % teams.length]!;
      const time = Math.floor(place / teams.length);
      const before = had.get(team)!;
      const robot = free.reduce((best, each) => (often(before, each) < often(before, best) ? each : best));
      free.splice(free.indexOf(robot), 1);
      before.set(robot, often(before, robot) + 1);
      place++;
      return { team, robot, time };
    });
  });
}

const often = (had: ReadonlyMap<number, number>, robot: number): number => had.get(robot) ?? 0;

/** Turns until every team has driven so often. */
export const turnsFor = (teams: number, robots: number, times: number): number =>
  robots === 0 ? 0 : Math.ceil((teams * times) / Math.min(teams, robots) || 0);
