/** One piece of advice, and who gives it. Advice without a source is common practice. */
export interface Caution {
  readonly text: string;
  readonly by: string;
}

export interface CautionGroup {
  readonly key: 'charging' | 'handling' | 'small-parts' | 'tables' | 'markers';
  readonly title: string;
  readonly cautions: readonly Caution[];
}

const PRACTICE = 'common practice';

const CHARGING: readonly Caution[] = [
  {
    text: 'Somebody stays with the charger the whole time. Nothing charges unattended or over night.',
    by: 'West Yorkshire and Avon Fire & Rescue; United Educators',
  },
  {
    text: 'Only between 0 and 40 °C, away from sun and heaters. Where the maker allows less, that holds.',
    by: 'US Fire Administration; NFPA',
  },
  {
    text: 'Only the charger and cable made for the robot, in a wall socket, without chains of extension leads.',
    by: 'NFPA; West Yorkshire and Avon Fire & Rescue',
  },
  {
    text: 'On a hard, bare place: nothing that burns near it, nothing over it, and never on the way out.',
    by: 'NFPA; West Yorkshire and Avon Fire & Rescue',
  },
  {
    text: 'Unplug when full. Robots lie apart from each other, not in a heap.',
    by: 'NFPA; United Educators',
  },
  { text: 'Robots are switched off while they charge.', by: 'Battery University, BU-409' },
];

const HANDLING: readonly Caution[] = [
  {
    text: 'Keep robots dry. Don’t drop, crush or pierce them, and don’t open them.',
    by: 'London Fire Brigade',
  },
  {
    text: 'No loose cells, and no coins or keys where a contact is bare.',
    by: 'US Consumer Product Safety Commission',
  },
  {
    text: 'A robot that fell or got wet is put aside and not charged until you have looked at it.',
    by: PRACTICE,
  },
];

const SMALL_PARTS: readonly Caution[] = [
  {
    text: 'Caps, wheels and screws are small parts: keep them away from children under 3.',
    by: '16 CFR 1501; EN 71, ASTM F963 and ISO 8124 for toys',
  },
  { text: 'Count robots, caps and spare parts out, and count them back in.', by: PRACTICE },
];

const TABLES: readonly Caution[] = [
  {
    text: 'Sheets lie flat and are taped down 10 cm from the table’s edge, with a rail of books; better still, on the floor.',
    by: PRACTICE,
  },
  {
    text: 'Ways stay free: cables, bags and sheets lie where nobody walks, and nobody steps over a robot that drives.',
    by: PRACTICE,
  },
];

const MARKERS: readonly Caution[] = [
  {
    text: 'Water-based markers with ventilated caps (ISO 11540), and spare paper under the sheet. Cap on as soon as a line is done.',
    by: `ISO 11540 for the caps; ${PRACTICE}`,
  },
  {
    text: 'Let ink dry before a robot drives over it, and wipe wet ink off hands, wheels and floor.',
    by: PRACTICE,
  },
];

const GROUPS: readonly CautionGroup[] = [
  { key: 'charging', title: 'Charging', cautions: CHARGING },
  { key: 'handling', title: 'Handling', cautions: HANDLING },
  { key: 'small-parts', title: 'Small parts', cautions: SMALL_PARTS },
  { key: 'tables', title: 'Tables and floor', cautions: TABLES },
  { key: 'markers', title: 'Markers', cautions: MARKERS },
];

export const safety = {
  leaf: 'Cautions',
  title: 'Before the robots come out',
  first:
    'The maker’s instructions and your school’s own rules come first. Where this page differs from them, keep to the stricter one.',
  groups: GROUPS,
  stop: {
    title: 'Stop at once if a robot or charger',
    signs: ['gets hot', 'swells', 'smells', 'hisses or crackles', 'leaks', 'changes colour'],
    whatThen:
      'Switch the socket off if you can do so safely, move everyone away and call the fire service. Never put a damaged robot in household waste.',
    by: 'US Fire Administration; NFPA',
  },
  sources:
    'In our own words, after public advice of the bodies named. It is no substitute for the rules that hold where you teach.',
  print: 'Print this page',
  stays: 'Somebody stays with the charger',
  staysNote: 'for as long as anything charges',
  nobodyStays: 'Nobody has said that they stay with the charger. Then nothing may charge during this lesson.',
  tickUnderPrepare: 'Somebody does? Tick it under “Prepare”.',
};
