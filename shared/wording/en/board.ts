import type { Doing } from '../../wire/protocol.ts';
import { numbers } from './numbers.ts';

const { counted } = numbers;

const DOINGS: Readonly<Record<Doing, string>> = {
  drawing: 'drawing',
  answering: 'answering',
  trying: 'trying',
  'handed-in': 'handed in',
  away: 'away',
};

/** What a class did, as counted from its room. */
export interface Together {
  readonly teams: number;
  readonly challenges: number;
  readonly entries: number;
  readonly teamsHandedIn: number;
  /** Teams that met at least one challenge. */
  readonly teamsMet: number;
  /** Teams whose best entry of a round has more points than their first one there. */
  readonly teamsBetter: number;
}

function together(figures: Together): string[] {
  const { teams, challenges, entries, teamsHandedIn, teamsMet, teamsBetter } = figures;
  if (entries === 0) return [counted(teams, 'team was here', 'teams were here')];
  const by =
    teamsHandedIn === teams && teams > 1 ? `all ${teams} teams` : counted(teamsHandedIn, 'team', 'teams');
  const lines = [
    `${counted(entries, 'drawing', 'drawings')} handed in by ${by}`,
    `${counted(challenges, 'challenge', 'challenges')} played`,
  ];
  if (teamsMet > 0) lines.push(`${counted(teamsMet, 'team', 'teams')} met every goal of a challenge`);
  if (teamsBetter > 0)
    lines.push(`${counted(teamsBetter, 'team made its', 'teams made their')} first drawing better`);
  return lines;
}

/** Time is told without hurry: whole minutes, then "the last minute". */
function timeLeft(ms: number): string {
  if (ms <= 0) return 'time is up';
  const minutes = Math.ceil(ms / 60_000);
  return minutes <= 1 ? 'the last minute' : `${minutes} minutes left`;
}

export const board = {
  title: 'Harbour Lines',
  /** In the place of an emblem that a team would rather not show. */
  aTeam: 'a team',
  flipBack: 'Back to the desk',
  noRoom: {
    title: 'No room is open yet',
    next: 'The teacher opens one at the desk. It then appears here by itself.',
    which: 'Which room?',
    gone: 'The room that this board was for is not here, or no longer. Open the board from the desk, or name another room.',
    word: 'Room word',
    show: 'Show it',
  },
  gather: {
    title: 'The harbour wall',
    scan: 'Scan the code',
    or: 'or open',
    andType: 'and type',
    berth: (n: number) => `berth ${n}, free`,
    taken: (n: number, name: string) => `berth ${n}, ${name}`,
    calibrated: 'calibrated',
    empty: 'Free berths wait for you.',
    teams: (n: number) => counted(n, 'team is in', 'teams are in'),
  },
  brief: {
    soon: 'The next challenge',
    goals: 'What must come true',
    asked: 'What will be asked',
    seconds: (s: number) => `The robot has ${numbers.time(s)}.`,
    varied: 'Neighbours have other sheets: look at your own.',
  },
  building: {
    title: 'Building',
    doing: (doing: Doing) => DOINGS[doing],
    timeLeft,
    over: 'Pens down',
    noLimit: 'Take your time',
    handedIn: (n: number, of: number) => `${n} of ${counted(of, 'team has', 'teams have')} handed in`,
  },
  show: {
    title: 'Showing',
    entry: (n: number) => `entry ${n}`,
    soon: 'Which drawing comes first?',
    soonNote: 'Your teacher chooses.',
    loading: 'One moment',
    heat: 'Side by side',
    label: (name: string, n: number) => `The robot on the drawing of ${name}, entry ${n}`,
    neverStarted: 'The robot does not start.',
    pace: (name: string) => `Driving ${name}`,
    /** Under a run that is not the only one: `n` ways in all, of which this has its chance. */
    oneOf: (n: number, chance: number) =>
      chance < 1
        ? `One of ${n} ways: ${numbers.short(chance * 20, 1)} of 20 robots take it. Every way must meet the goals.`
        : `One of ${n} ways. Every way must meet the goals.`,
    ended: (ending: string, t: number) => `${numbers.capital(ending)} after ${numbers.time(t)}`,
  },
  drive: {
    title: 'Robots on paper',
    turn: (n: number) => `Turn ${n}`,
    robot: (n: number) => `robot ${n}`,
    next: 'Next',
    none: 'No robot drives now.',
  },
  standings: {
    title: 'Standings',
    points: 'points',
    none: 'No drawing has been handed in yet.',
    more: (n: number) => `and ${counted(n, 'team', 'teams')} more`,
  },
  look: { title: 'Look here', note: 'Hands off the tablets, please. Your drawings stay as they are.' },
  paused: { title: 'A pause', note: 'Everything waits as it is, time too.' },
  close: { title: 'Together', count: 'Robots back in their berths, caps on the markers.' },
  link: { away: 'No link. It comes back by itself.' },
  together,
};
