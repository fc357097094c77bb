import { type Drive, drivingRota, turnsFor } from '../../shared/prep/driving-rota.ts';
import type { RoomState, Team } from '../../shared/room/state.ts';

const ofBerths = (teams: readonly Team[]): readonly number[] => teams.map(({ berth }) => berth);

/** Numbers of the robots that drive; as long as nobody said otherwise, one for each berth. */
export const robotsOf = ({ driving, teams }: RoomState): readonly number[] =>
  driving.robots ?? ofBerths(teams);

/** Who drives what in which turn: until every team has driven once, and as far as the class has come. */
export function turnsOf(room: RoomState): readonly Drive<Team>[][] {
  const { teams, driving } = room;
  const robots = robotsOf(room);
  if (teams.length === 0 || robots.length === 0) return [];
  const over = driving.over.map((each) => each ?? ofBerths(teams));
  const drives = over.reduce((all, each) => all + Math.min(teams.length, each.length), 0);
  const left = turnsFor(Math.max(0, teams.length - drives), robots.length, 1);
  return drivingRota(teams, [...over, ...Array.from({ length: Math.max(1, left) }, () => robots)]);
}
