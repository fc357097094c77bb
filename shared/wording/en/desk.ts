import type { Play } from '../../documents/challenge.ts';
import type { Doing } from '../../wire/protocol.ts';
import { onClock } from '../clock.ts';
import { keeping, late, links, pausing, seats, undo } from './desk-room.ts';
import { coaching, conditions, picture, queue } from './desk-teams.ts';
import { numbers } from './numbers.ts';

const { counted } = numbers;

export type Step = 'prepare' | 'gather' | 'brief' | 'build' | 'show' | 'drive' | 'close';

const STEPS: Readonly<Record<Step, string>> = {
  prepare: 'Prepare',
  gather: 'Gather',
  brief: 'Brief',
  build: 'Build',
  show: 'Show',
  drive: 'Drive',
  close: 'Close',
};

const PLAYS: Readonly<Record<Play, string>> = {
  draw: 'Draw',
  'fill-in': 'Fill in',
  mend: 'Mend',
  predict: 'Predict',
};

const PLAY_SENTENCES: Readonly<Record<Play, string>> = {
  draw: 'Teams draw the whole track.',
  'fill-in': 'The lines are given, teams put the marks in.',
  mend: 'Teams get a faulty drawing and change as little as they can.',
  predict: 'All is given. Teams say what the robot will do.',
};

const DOINGS: Readonly<Record<Doing, string>> = {
  drawing: 'drawing',
  answering: 'answering',
  trying: 'trying it out',
  'handed-in': 'handed in',
  away: 'tablet away',
};

const preparing = {
  leaves: 'Before the lesson',
  openTitle: 'Open a room',
  openNote: 'One room is one class playing together. It is kept on this machine until it is erased.',
  open: 'Open a room',
  opening: 'Opening the room',
  unwatched:
    'The room opens all the same. The desk keeps saying that nobody watches the charger until you tick it.',
  thanks: 'Noted: somebody stays with the charger.',
  roomsTitle: 'Rooms on this machine',
  roomsNone: 'No room has been opened here yet.',
  roomsLoading: 'Looking for rooms',
  goOn: 'Go on',
  goOnWith: (word: string) => `Go on with ${word}`,
  nextLesson: 'Next lesson',
  nextLessonOf: (word: string) => `Next lesson with the class of ${word}`,
  openedAt: (when: string) => `opened ${when}`,
  restoreTitle: 'Open a room file',
  restoreNote: 'A file that a desk saved at the end of a lesson, from this machine or another one.',
  restore: 'Choose a file',
  notARoomFile:
    'This file could not be read as a room file. Choose the one that was saved with “Save the room”.',
  toWall: 'To the harbour wall',
};

const gathering = {
  title: 'Teams come in',
  how: 'On each tablet: scan the code, or open the address and type the room word.',
  word: 'Room word',
  address: 'Address',
  copy: 'Copy the link',
  copied: 'Copied',
  boardOpen: 'Open the board',
  boardHere: 'Board here',
  boardHereTitle: 'Show the board on this screen',
  noTeams: 'Nobody is here yet. Emblems appear as tablets come in.',
  teams: (n: number) => counted(n, 'team', 'teams'),
  berth: (n: number) => `berth ${n}`,
  choose: 'Choose a challenge',
};

const briefing = {
  title: 'Choose a challenge',
  chosen: 'chosen',
  played: 'played',
  take: 'Take this challenge',
  takeNext: 'Take it as the next challenge',
  buildingStill: 'Teams are still building. End that first.',
  topic: (n: number) => `Topic ${n}`,
  play: (play: Play) => PLAYS[play],
  playSentence: (play: Play) => PLAY_SENTENCES[play],
  goals: 'What must come true',
  asked: 'What is asked',
  also: 'worth points, not a must',
  teaches: 'What it teaches',
  mistakes: 'Usual mistakes',
  ask: 'A question to ask',
  time: 'Time to build, in minutes',
  noLimit: 'no limit',
  minutes: (n: number) => String(n),
  varied: 'Neighbouring tables get mirrored or turned sheets',
  variedNote:
    'Each sheet is as hard as the other; a copied drawing does not do. In wind, a few robots more or fewer may make it.',
  start: 'Start building',
};

const building = {
  title: (n: number) => counted(n, 'team', 'teams'),
  noTeams: 'No team is in the room. Tablets can still come in with the room word.',
  left: 'left',
  over: 'building is over',
  spent: (ms: number) => `${onClock(ms)} so far`,
  extend: (minutes: number) => `+${minutes} min`,
  end: 'End building',
  show: 'Go to showing',
  doing: (doing: Doing) => DOINGS[doing],
  nothingYet: 'nothing drawn yet',
  nothingAnswered: 'Nothing answered yet.',
  entry: (number: number) => `entry ${number}`,
  points: (n: number) => `${n} p`,
  mayNeed: 'May need you',
  nobody: 'Nobody seems stuck.',
  need: {
    empty: 'nothing drawn yet',
    away: 'tablet away',
    stuck: (entries: number) => `${entries} entries, not there yet`,
    same: (tries: number, title: string) => `${counted(tries, 'try', 'tries')}, same finding: ${title}`,
    tries: (n: number) => `${counted(n, 'try', 'tries')}, not there yet`,
  },
  order: 'Order',
  byNeed: 'who is stuck first',
  byBerth: 'berths',
  trips: 'What trips the class',
  tripped: (title: string, teams: number) => `${title}: ${counted(teams, 'team', 'teams')}`,
  select: 'Choose a team to see its drawing and why it scores what it scores.',
  thisChallenge: 'The challenge being built',
};

const team = {
  now: 'On the tablet now',
  noEntries: 'Nothing handed in yet.',
  entry: (number: number) => `Entry ${number}`,
  judging: 'being judged',
  unjudged: 'could not be judged',
  judgeAgain: 'Judge it again',
  points: (n: number) => counted(n, 'point', 'points'),
  goals: 'Goals',
  findings: 'What the rules say',
  noFindings: 'The lines and marks are fine.',
  happens: 'What the robot does',
  why: 'Why these points',
  checking: 'Checking the drawing',
  show: 'Show on the board',
  showing: 'On the board',
  back: 'All teams',
};

const showing = {
  title: 'The stage',
  empty: 'Nothing is on the stage. Press a number to show that team’s best drawing.',
  emptyNoEntries: 'No entry has been handed in for this challenge.',
  best: 'Best of each team',
  play: 'Play',
  pause: 'Pause',
  again: 'From the start',
  speedWord: 'Speed',
  scrub: 'Where the replay stands',
  at: (t: number, of: number) => `${numbers.short(t, 1)} of ${numbers.short(of, 1)} s`,
  heatWith: (name: string) => `Side by side with ${name}`,
  clear: 'Clear the stage',
  standings: 'Standings on the board',
  standingsWait: 'There is no room for standings beside a heat. They come with one drawing, or none.',
  next: 'Next drawing',
  close: 'Close the lesson',
  noEntry: 'no entry',
  entry: (name: string, number: number) => `${name}, entry ${number}`,
};

const closing = {
  together: 'Together',
  results: 'Results',
  csv: 'Save the results (CSV)',
  file: 'Save the room (JSON)',
  fileNote: 'The room file holds all drawings and verdicts and opens again on another machine.',
  count: 'Count back in',
  counts: ['robots in their berths', 'caps on markers', 'chargers unplugged'],
  teamHead: 'Team',
  total: 'Total',
  round: (n: number) => `Challenge ${n}`,
  none: 'No entry was handed in.',
  again: 'Another challenge',
  leave: 'Leave this room',
};

const board = {
  title: 'On the board now',
  gather: 'the harbour wall',
  brief: 'the goal and the sheet',
  build: 'who is doing what, no drawings',
  show: 'a drawing on the stage',
  empty: 'the stage, still empty',
  drive: 'which team drives which robot',
  close: 'what the class did together',
  check: 'the last questions',
  look: '“Look here”',
  paused: 'a pause',
  standings: 'standings shown',
  noStandings: 'no ranks',
};

const status = {
  connecting: 'Finding the server',
  away: 'The server does not answer. What you see is the last that came; the link comes back by itself.',
  quiet: 'This desk is open in a newer tab. That one has the room now.',
  takeOver: 'Use this tab',
  lost: (n: number) =>
    `The server has lost the end of this lesson: ${counted(n, 'step', 'steps')}. Look it through; what is missing can be done and handed in again.`,
  seenLoss: 'I have seen it',
  waiting: (n: number) => counted(n, 'command waits', 'commands wait'),
};

const keys = {
  title: 'Keys',
  open: 'Keys',
  on: 'Single keys do something on this page',
  groups: { lesson: 'Lesson', teams: 'Teams', stage: 'Stage' },
  next: 'the next sensible step, the blue button',
  step: 'look at a step of the lesson',
  look: '“Look here” on and off',
  pause: 'pause everything, and go on',
  undo: 'take back what was just removed or ended',
  standings: 'standings on the board on and off',
  flip: 'this screen shows the board; B there comes back',
  help: 'this list',
  pick: 'choose a team by its number, two digits one soon after the other; on the stage: show its best drawing',
  say: 'say something to the chosen team',
  order: 'the cards by berths, or who may need you first',
  second: 'put another one beside it, or take it away',
  move: 'from team to team',
  unpick: 'no team, back to the challenge',
  extend: 'two minutes more',
  paper: 'what goes to paper',
  picture: 'the class as a whole',
  queue: 'the marked challenge into the queue, or off it',
  play: 'play and pause',
  scrub: 'one second back and on',
  readings: 'to the reading before and to the next one',
  speed: 'speed ¼, ½, 1, 2, 4',
  loop: 'show a stretch again and again',
  sensors: 'what the sensors read',
  whole: 'the whole run as a still picture',
  onTop: 'a heat on top of each other',
  whatIf: 'what if something were otherwise',
  clear: 'clear the stage',
};

export const desk = {
  title: 'Harbour Lines',
  room: 'room',
  path: 'Steps of the lesson',
  step: (step: Step) => STEPS[step],
  here: 'the class is here',
  doneStep: 'done',
  lookHere: 'Look here',
  close: 'Close',
  time: onClock,
  noSeat:
    'This browser has no desk. Open the link that the server printed at its start, or ask for a new one: a link that was revoked opens nothing.',
  unknownRoom: 'This room is not on this server any more.',
  toRooms: 'All rooms',
  preparing,
  gathering,
  briefing,
  building,
  team,
  showing,
  closing,
  board,
  status,
  keys,
  coaching,
  conditions,
  queue,
  picture,
  late,
  pausing,
  seats,
  undo,
  links,
  keeping,
};
