import type { PlanPhase } from '../../prep/lesson-plan.ts';
import { numbers } from './numbers.ts';

export interface PhaseWords {
  readonly name: string;
  readonly does: string;
  /** In the teacher's words, to the class; none before it is there. */
  readonly say: string;
  readonly materials: string;
  readonly careful: string;
}

const PHASES: Readonly<Record<PlanPhase, PhaseWords>> = {
  prepare: {
    name: 'Prepare',
    does: 'Go through the five-minute check on the desk. Lay out what the list of supplies names. Put the board on the projector: “Open the board” under Gather, or key B on a laptop with one screen.',
    say: '',
    materials: 'laptop, projector, robots, sheets, markers, tape',
    careful:
      'Unplug the chargers or stay with them. Tape sheets down 10 cm from the table’s edge; keep the ways free.',
  },
  gather: {
    name: 'Gather',
    does: 'Two or three children take a tablet and scan the code on the board, or open the address and type the room word. Calibrate the robots on the patch; tap each one’s berth under Gather, Robots.',
    say: '“Scan the code on the wall. The picture that you get is your team.”',
    materials: 'tablets, robots, calibration patches',
    careful: 'Nobody types a name. Robots are set down, not thrown.',
  },
  brief: {
    name: 'Brief',
    does: 'Choose the challenge under Brief and take it (N). Read its goal aloud from the board; show the chart.',
    say: '“The robot follows the line. It reads bands from the side that it comes from. What must it do here?”',
    materials: 'chart for the wall, a sheet to hold up',
    careful: 'Key H has all tablets rest while you speak.',
  },
  build: {
    name: 'Build',
    does: 'Start building (N). Teams draw on the tablet, try, and hand in. Walk round: the desk says who may need you, and why a drawing fails.',
    say: '“Before you try: will the robot make it? Where could it go wrong?”',
    materials: 'tablets',
    careful: 'Key T pauses everything. No drawing is on the board before you put it there.',
  },
  show: {
    name: 'Show',
    does: 'End building (N), go to Show (N). N shows the next drawing, a number that team’s best one. Stop before a mark and ask.',
    say: '“What will it do at this mark? Hands up. Now we look.”',
    materials: 'the board',
    careful: 'Ranks stay off unless you turn them on. Who would rather not be shown is not.',
  },
  drive: {
    name: 'Drive',
    does: 'Go to Drive. Teams draw their track on a sheet of paper, or get theirs printed (key O). The list says which team drives which robot; note there what it does. The team fills in a slip.',
    say: '“Did it do what the tablet said? If not: what is different on paper?”',
    materials: 'sheets, markers, spare paper, gauge cards, slips, robots',
    careful:
      'Cap on as soon as a line is done; ink dries before a robot drives. Put a robot aside that gets hot, swells, smells or makes a noise.',
  },
  close: {
    name: 'Close',
    does: 'Go to Close. Begin with the closing check, on the tablets or on paper. Then look together at what the class did, and save the results.',
    say: '“What would you tell somebody who draws a mark for the first time?”',
    materials: 'tablets, the box',
    careful: 'Count robots, caps and spare parts back in. Unplug the chargers.',
  },
};

/** What is printed for whoever gives the lesson, also for somebody who has never seen the desk. */
export const lessonPlan = {
  leaf: 'Lesson plan',
  title: (minutes: number): string => `Lesson plan for ${minutes} minutes`,
  minutes: 'Minutes of the lesson',
  how: 'The phases fit the minutes exactly. The plan says what to do, what to say and what to heed, also to somebody who has never seen this desk.',
  save: 'Save the plan as PDF',
  phase: (phase: PlanPhase): string => PHASES[phase].name,
  does: (phase: PlanPhase): string => PHASES[phase].does,
  say: (phase: PlanPhase): string => PHASES[phase].say,
  materials: (phase: PlanPhase): string => `Materials: ${PHASES[phase].materials}.`,
  careful: (phase: PlanPhase): string => `Take care: ${PHASES[phase].careful}`,
  span: (from: number, to: number): string => `${from} to ${to}`,
  lasts: (minutes: number): string => `${minutes} min`,
  questions: (n: number): string => `Closing check: ${numbers.counted(n, 'question', 'questions')}.`,
  phaseHead: 'Phase',
  minuteHead: 'Minute',
  doHead: 'What to do',
  room: (word: string, teams: number): string =>
    `Room ${word}, ${teams === 0 ? 'no team yet' : numbers.counted(teams, 'team', 'teams')}`,
  open: {
    title: 'How to open the desk',
    start:
      'Switch on the laptop and the projector. If Harbour Lines does not run on the laptop, start it: the start file in its folder, or npm start.',
    link: (word: string): string =>
      `Open the link that you were given, in a browser in the same network. It opens the desk of the room ${word} and nothing else. There is no account and no password.`,
    anyLink:
      'Open the link that you were given, in a browser in the same network. There is no account and no password.',
    without: (address: string): string =>
      `Without a link: open ${address}/desk in the browser of that laptop, and choose Go on beside the room.`,
    tablets: (address: string): string => `Tablets open ${address} and type the room word.`,
    keys: 'N is always the next sensible step, ? shows all keys, U takes back what was just removed.',
    write: 'Link for a substitute (desk, Prepare, “Keep, hand over, erase”):',
  },
  challenge: {
    title: 'The challenge',
    open: 'none yet',
    none: 'None is chosen yet. Choose one under Brief: the first in the list suits a first lesson.',
    teaches: (text: string): string => `It teaches: ${text}`,
    mistakes: (text: string): string => `Usual mistakes: ${text}`,
    ask: (text: string): string => `A question to ask: ${text}`,
  },
  trouble: {
    title: 'If something goes wrong',
    lines: [
      'A tablet does not get in: open the address with /check behind it on that tablet. It says why.',
      'A page looks wrong: reload it. Drawings and points are kept.',
      'The link is gone: teams go on drawing, and it comes back by itself.',
      'You need quiet: H has tablets rest, T pauses the time too.',
    ],
  },
};
