import { numbers } from './numbers.ts';

/** What a browser keeps of Harbour Lines. */
export type KeptHere =
  | 'device'
  | 'rota'
  | 'fit'
  | 'check'
  | 'builder'
  | 'kits'
  | 'keys'
  | 'plays'
  | 'outbox'
  | 'drawings'
  | 'files'
  | 'other';

const HERE: Readonly<Record<KeptHere, string>> = {
  device: 'how this device speaks and shows things',
  rota: 'the charging rota as it was typed',
  fit: 'timed runs and limits of robots as they were typed',
  check: 'ticks of the five minutes before a lesson',
  builder: 'changes to challenges that the server does not have yet',
  kits: 'changes to kits that are not saved',
  keys: 'whether single keys do something',
  plays: 'which ways to play this device has shown',
  outbox: 'what waits for the server',
  drawings: 'drawings of teams that played in this browser',
  files: 'files of the tablet’s page, for when the server is away',
  other: 'something of an earlier version',
};

/** The one place that says what is kept and erases it. */
export const kept = {
  leaf: 'What is kept',
  title: 'What is kept, and until when',
  first: 'This is everything. Teams are emblems: no names of people are asked for, so please type none.',
  loading: 'Looking',
  rooms: 'Rooms on this server',
  roomsWhat: 'Drawings, verdicts, answers, what was tried, the log of calibrations, seats.',
  roomsNone: 'No room is kept.',
  room: (word: string, opened: string): string => `${word}, opened ${opened}`,
  until: (when: string): string => `until ${when}`,
  untilErased: 'until it is erased',
  erase: 'Erase',
  eraseRoom: (word: string): string => `Erase the room ${word}`,
  links: 'Links that were given away',
  linksWhat:
    'A hash of each, never the link itself. With a desk that is revoked its challenges and kits are erased; its rooms stay.',
  linksNone: 'No link is kept.',
  deskLink: (word: string, when: string): string => `${word}, a desk, made ${when}`,
  roomLink: (word: string, when: string): string => `${word}, a room, made ${when}`,
  revoke: 'Revoke',
  revokeLink: (word: string): string => `Revoke the link ${word}`,
  made: 'Made at this desk',
  madeNone: 'No challenge and no kit of its own.',
  challenge: (name: string, when: string): string => `challenge “${name}”, saved ${when}`,
  kit: (name: string, when: string): string => `kit “${name}”, saved ${when}`,
  eraseMade: (name: string): string => `Erase ${name}`,
  here: 'In this browser',
  hereThing: (thing: KeptHere): string => HERE[thing],
  hereNone: 'Nothing but the cookie.',
  cookie: 'A cookie: the right to open this desk, for 30 days after it was opened by its link.',
  eraseHere: 'Erase what this browser keeps',
  forget: 'Close the desk in this browser',
  forgetNote: 'Takes the cookie away. The link of this desk brings it back: have it ready.',
  forgetSure: 'Yes, close the desk here',
  forgetNot: 'Keep it open',
  elsewhere: 'Where this desk cannot reach',
  elsewhereLines: [
    'On each tablet: a cookie for its seat, for 30 days, and its own drawing. Erase them in the browser’s settings, as data of this site.',
    'Room files that somebody saved, printed sheets, backups, and a damaged data file that was set aside: delete them where they are.',
    'For a month after a room was erased the server still knows its word and the day, nothing else.',
  ],
  all: 'Erase everything',
  allNote: (rooms: number, links: number, made: number): string =>
    `${numbers.counted(rooms, 'room', 'rooms')}, ${numbers.counted(links, 'link', 'links')}, ${numbers.counted(made, 'challenge or kit of its own', 'challenges and kits of its own')}, and what this browser keeps. Save rooms as files first if you want to keep any.`,
  allSure: 'Yes, erase everything',
  allNot: 'Keep everything',
  undo: {
    all: 'Everything is erased in ten seconds.',
    here: 'What this browser keeps is erased in ten seconds.',
    made: (name: string): string => `${name} is erased.`,
    link: (word: string): string => `The link ${word} is revoked.`,
    desk: (word: string): string => `The desk ${word} is revoked; what it has made is erased in ten seconds.`,
  },
};
