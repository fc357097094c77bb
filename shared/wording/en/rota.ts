import type { Rota, RotaRefusal, Watched } from '../../prep/rota.ts';
import { clock, lasting } from '../clock.ts';
import { numbers } from './numbers.ts';

const { counted, list } = numbers;

const hours = ({ from, to }: Pick<Watched, 'from' | 'to'>): string => `${clock(from)} to ${clock(to)}`;

const REFUSALS: {
  readonly [C in RotaRefusal['code']]: (refusal: Extract<RotaRefusal, { code: C }>) => string;
} = {
  'nobody-watches': () =>
    'Robots charge only while somebody watches, and no such hours lie before the robots are needed. Add hours in which somebody stays with the charger.',
  'at-night': ({ watched }) =>
    `${hours(watched)} reaches into the night. Nothing charges over night or unattended: a fault that nobody sees can become a fire. Give hours between 06:00 and 22:00 in which somebody stays in the room.`,
  'hours-overlap': ({ watched }) =>
    `The hours ${hours(watched)} overlap with others of the same day. Join them, or shorten one.`,
  'hours-backwards': ({ watched }) =>
    `The hours ${hours(watched)} end before they begin. Hours over midnight are not planned: nothing charges over night.`,
  'too-many-robots': ({ most }) => `A rota holds at most ${most} robots. Make one rota for each class set.`,
  'bad-number': ({ robot }) =>
    robot === null
      ? 'Ports, capacity and current must be numbers above 0.'
      : `The charge of robot ${robot} must be between 0 and 100 %.`,
};

function proof({ length, bound, optimal }: Rota): string {
  if (optimal) return 'No plan is shorter.';
  return `No plan was proved to be the shortest; at most ${lasting(length - bound)} could be saved.`;
}

export const rota = {
  title: 'Charging rota',
  first:
    'Who charges where and when, only while somebody stays with the charger. The maker’s instructions and your local rules come first, and the robot’s own light says when it is full.',
  robots: 'Robots',
  count: 'How many robots',
  capacity: 'Capacity of one (mAh)',
  ports: 'Charging ports',
  current: 'A port gives (mA)',
  charge: (robot: number) => `Robot ${robot}, charge in %`,
  charges: 'How full is each now (%)',
  watched: 'Somebody stays with the charger',
  date: 'Date',
  from: 'From',
  to: 'To',
  hoursOf: (number: number) => `Hours ${number}`,
  addHours: 'More hours',
  removeHours: (number: number) => `Take hours ${number} away`,
  needed: 'Robots are needed',
  neededAt: 'Time',
  result: 'The rota',
  refusal: (refusal: RotaRefusal): string =>
    (REFUSALS[refusal.code] as (refusal: RotaRefusal) => string)(refusal),
  summary: (rota: Rota, day: (date: string) => string): string => {
    const { turns, finish } = rota;
    if (!finish) return 'No robot needs to charge in these hours, or none would be full in time.';
    const robots = counted(turns.length, 'robot is', 'robots are');
    return `${robots} full by ${day(finish.date)}, ${clock(finish.minute)}, after ${lasting(rota.length)} of charging. ${proof(rota)}`;
  },
  notReady: (robots: readonly { readonly robot: number; readonly minutes: number }[]): string =>
    `Not full in time: ${list(robots.map(({ robot, minutes }) => `robot ${robot} (needs ${lasting(minutes)})`))}. Add hours or ports, or teach with fewer robots.`,
  fullAlready: (robots: readonly number[]): string =>
    `Full already: ${list(robots.map((r) => `robot ${r}`))}.`,
  when: 'When',
  port: 'Port',
  robot: 'Robot',
  plugged: 'Plugged in (initials)',
  unplugged: 'Unplugged (initials)',
  goesOn: 'goes on later',
  hours,
  print: 'Print the rota',
  assumed:
    'Assumed: constant current to 85 %, then constant voltage until the current has fallen to 3 %, as chargers for lithium-ion cells usually do; every port alike; an interrupted charge goes on where it stopped. Plans, not promises.',
  stopSigns: {
    text: 'Stop at heat, swelling, smell or noise. Between 0 and 40 °C, on a hard bare surface, with the maker’s lead, no chained leads, never on the way out.',
    by: 'US Fire Administration; NFPA; West Yorkshire and Avon Fire & Rescue',
  },
};
