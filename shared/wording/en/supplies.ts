import type { Supply } from '../../prep/supplies.ts';
import { numbers } from './numbers.ts';

/** What depends on the kit: how wide its line is drawn, and the names of its inks. */
export interface SuppliesOf {
  readonly line: string;
  readonly inks: readonly string[];
}

const WHAT: Readonly<Record<Supply, (kit: SuppliesOf) => string>> = {
  robots: () => 'robots',
  tablets: () => 'tablets or small laptops',
  'line-markers': ({ line }) => `black markers with a tip of ${line}`,
  'band-markers': ({ inks }) => `sets of markers for bands: ${numbers.list(inks)}`,
  sheets: () => 'sheets of the challenge',
  'paper-under': () => 'sheets of spare paper',
  tape: () => 'removable tape, in rolls',
  'gauge-cards': () => 'gauge cards',
  slips: () => 'slips',
  patches: () => 'calibration patches',
  chart: () => 'chart for the wall',
  cloths: () => 'damp cloths',
  box: () => 'box',
};

const NOTES: Readonly<Record<Supply, string>> = {
  robots: 'charged, switched on, with the numbers of the berths',
  tablets: 'one for two or three children',
  'line-markers':
    'as wide as the line, so that one stroke draws it; water-based; caps ventilated after ISO 11540',
  'band-markers':
    'those that came with the robots, or others that they read; water-based; caps ventilated after ISO 11540',
  sheets: 'a try, a clean one and one more a team; printed at 100 %',
  'paper-under': 'under the sheet, for ink that goes through',
  tape: '10 m each, for the corners of the sheets',
  'gauge-cards': 'to hold against a drawing before a robot drives over it',
  slips: 'we think · it did · because',
  patches: 'where robots drive, in the light of the lesson',
  chart: 'where all can read it',
  cloths: 'for wet ink on hands and tables',
  box: 'to count robots, caps and spare parts out and back in',
};

export const supplies = {
  leaf: 'Supplies',
  title: 'What the lesson needs',
  teams: 'How many teams',
  forTeams: (n: number): string => `For ${numbers.counted(n, 'team', 'teams')}`,
  what: (supply: Supply, kit: SuppliesOf): string => WHAT[supply](kit),
  note: (supply: Supply): string => NOTES[supply],
  spare: (n: number): string => `${n} of them spare`,
  how: 'Counts are common practice: what a team holds in its hands, and a spare for every five.',
  countHead: 'How many',
  whatHead: 'What',
  careful: 'Take care',
  save: 'Save the list as PDF',
};
