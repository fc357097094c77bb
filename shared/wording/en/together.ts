import type { WallWish } from '../../room/state.ts';

/** What a team has to agree on among itself: who does what, and whether it wants to be seen. */

const ROLES = { pen: 'pen', chart: 'chart', lookout: 'lookout' } as const;
const SEATS = ['left', 'middle', 'right'] as const;

const WISHES: Readonly<Record<WallWish, string>> = {
  shown: 'Yes, with our emblem',
  'no-emblem': 'Yes, without our emblem',
  'not-at-all': 'Not on the wall, please',
};

export const together = {
  roles: 'Who does what',
  begin: 'The pen draws, the chart names the marks, the lookout says what the robot will do.',
  passOn: 'Pass the roles on by one seat.',
  role: (role: keyof typeof ROLES): string => ROLES[role],
  seat: (seat: number): string => SEATS[seat] ?? '',
  pair: 'Two of you? One has chart and lookout.',
  wall: 'May our drawings be on the wall?',
  wish: (wish: WallWish): string => WISHES[wish],
};
