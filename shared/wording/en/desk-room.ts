import type { Weather } from '../../documents/outlook.ts';
import { outlook } from './outlook.ts';

/** What the desk says of who is in a room and on which tablet, and of taking things back. */

export const undo = {
  back: 'Take it back',
  removed: (team: string) => `${team} is out of the room.`,
  freed: (team: string) => `The tablet of ${team} rests.`,
  noteSent: (team: string) => `The note is with ${team}.`,
  returned: (team: string, entry: number) => `Entry ${entry} is back with ${team}.`,
  unqueued: (title: string) => `“${title}” is off the queue.`,
  weather: (weather: Weather): string => `From now on robots drive in ${outlook.weather(weather)}.`,
  teamWeather: (team: string, weather: Weather): string =>
    `From now on robots drive in ${outlook.weather(weather)} for ${team}.`,
  sheet: (team: string, sheet: string) => `The sheet of ${team} is ${sheet} now, and its drawing with it.`,
  ended: 'The building has ended.',
  checkEnded: 'The closing check has ended.',
  lateTaken: (n: number) => (n === 1 ? 'The late entry counts.' : `${n} late entries count.`),
  lateLeft: (n: number) => (n === 1 ? 'The late entry does not count.' : `${n} late entries do not count.`),
};

/** What was handed in after the time. */
export const late = {
  waiting: (n: number) =>
    n === 1 ? 'One entry came late and does not count yet' : `${n} entries came late and do not count yet`,
  takeAll: (n: number): string => (n === 1 ? 'Count it' : 'Count them'),
  take: 'Count it',
  leave: 'Don’t count it',
  counts: 'late, counts',
  notYet: 'late, does not count',
};

export const pausing = {
  pause: 'Pause',
  goOn: 'Go on',
  on: 'Everything is paused: the tablets rest and time stands still.',
};

export const seats = {
  of: (team: string) => `${team}: team and tablet`,
  open: 'Team and tablet',
  tablet: 'Another tablet',
  tabletHow:
    'The team goes on on another tablet, with its drawing and its points. The tablet that it has now rests from then on.',
  code: 'Make a code',
  codeAgain: 'Make another code',
  making: 'One moment',
  codeHow: 'On the other tablet: scan this, or open the address and type the code in place of the room word.',
  codeWord: 'Code',
  codeUntil: (when: string) => `It works once, until ${when}.`,
  moved: 'Another tablet has the seat now.',
  rest: 'The tablet it has now',
  restHow: 'If that tablet is in the wrong hands it can rest at once. Emblem, drawing and points stay.',
  free: 'Have it rest',
  isFree: 'This team’s tablet rests. Give the seat to another tablet, or back to this one.',
  keep: 'Give the seat back to its tablet',
  remove: 'Out of the room',
  removeHow:
    'For a team that is in twice, or does not belong here. Its drawings are kept but count nowhere, and it can be put back.',
  removeGo: 'Take the team out',
  removedTitle: 'Taken out of the room',
  putBack: 'Put back',
  putBackTeam: (team: string) => `Put ${team} back`,
};

export const links = {
  title: 'Desk links',
  note: 'One link for each teacher. A desk sees only the rooms that were opened with it. Please no names: a link has a word of its own.',
  none: 'No link has been made yet.',
  make: 'Make a desk link',
  making: 'One moment',
  made: (word: string) => `The link “${word}”`,
  once: 'It is shown this once. Pass it on now; whoever has it has that desk.',
  address: (word: string) => `Address of the link “${word}”`,
  copy: 'Copy the link',
  copied: 'Copied',
  row: (when: string) => `made ${when}`,
  revoke: 'Revoke',
  revokeThis: (word: string) => `Revoke the link “${word}”`,
  revoked: 'revoked: desks that were open with it are closed',
  revokedDesk:
    'revoked: desks that were open with it are closed, and their challenges and kits are erased in ten seconds',
  giveBackThis: (word: string) => `Give the link “${word}” back`,
  loading: 'Looking for links',
  substitute: 'A link for a substitute',
  substituteNote: 'It opens this room alone and no other.',
  substituteNone: 'No link to this room has been made yet.',
  substituteMake: 'Make a link to this room',
};

export const keeping = {
  more: 'Keep, hand over, erase',
  moreOf: (word: string) => `Keep, hand over or erase ${word}`,
  title: (word: string) => `Room ${word}`,
  file: 'As one file',
  fileNote: 'All drawings, verdicts and results. Any machine with Harbour Lines opens it again.',
  fileSave: 'Save the room (JSON)',
  erase: 'Erase for good',
  eraseNote:
    'Drawings, verdicts, results and seats are deleted from this server. Only a saved file can bring them back.',
  eraseGo: 'Erase this room',
  eraseSure: (word: string) => `Yes, erase ${word}`,
  eraseNot: 'Keep it',
  erasing: (word: string) => `${word} is erased in ten seconds.`,
  until: (when: string) => `kept until ${when}`,
  soon: (word: string, when: string) =>
    `${word} is erased on ${when}, because nobody has used it for long. Save it as a file, or open it and go on.`,
  erasedTitle: 'Erased lately',
  erased: (word: string, when: string, why: 'desk' | 'age') =>
    why === 'age' ? `${word}, on ${when}, because of its age` : `${word}, on ${when}, at a desk`,
};
