import { type Drive, drivingRota, turnsFor } from '../../shared/prep/driving-rota.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';

/** Numbers of the robots that drive; as long as nobody said otherwise, one for each berth. */
export const robotsOf = ({ driving, teams }: RoomState): readonly number[] =>
  driving.robots ?? teams.map(({ berth }) => berth);

/** Who drives what in which turn: until every team has driven once, and as far as the class has come. */
export function turnsOf(room: RoomState): readonly Drive<Team>[][] {
  const robots = robotsOf(room);
  const once = turnsFor(room.teams.length, robots.length, 1);
  return drivingRota(room.teams, robots, Math.max(once, room.driving.turn + 1));
}
