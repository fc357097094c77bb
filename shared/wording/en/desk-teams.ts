import type { Variant } from '../../documents/challenge.ts';
import type { Weather } from '../../documents/outlook.ts';
import type { ReturnReason } from '../../room/coaching.ts';
import type { OwnSheet } from '../../room/conditions.ts';
import { onClock } from '../clock.ts';
import { numbers } from './numbers.ts';
import { outlook } from './outlook.ts';

const { counted } = numbers;

/** What the desk says of single teams, of what is to come, and of the class as a whole. */

const REASONS: Readonly<Record<ReturnReason, string>> = {
  'by-mistake': 'handed in by mistake',
  'not-finished': 'not finished yet',
  'goals-again': 'to read the goals again',
  'talk-first': 'to talk about it first',
};

export const coaching = {
  say: 'Say something',
  to: (team: string) => `A note to ${team}`,
  ready: 'A ready-made hint',
  own: 'Or in your own words',
  noNames: 'Please no names: notes are kept with the room.',
  left: (n: number) => `${counted(n, 'character', 'characters')} left`,
  send: 'Send',
  said: 'Said so far',
  isAway: 'put away',
  onTablet: 'on the tablet',
  gentler: 'Gentler form',
  gentlerHow: 'The lines are given, the team puts in the marks. From outside it looks like any other.',
  gentlerNone: 'This challenge has no gentler form.',
  inGentler: 'in the gentler form',
  giveBack: 'Give it back',
  because: 'Why it goes back',
  reason: (reason: ReturnReason): string => REASONS[reason],
  accept: 'Accept it',
  returned: 'given back, does not count',
  tried: 'What it tried',
};

const SHEETS: Readonly<Record<OwnSheet, string>> = {
  'as-drawn': 'as it was drawn',
  mirrored: 'mirrored',
  turned: 'turned by half a turn',
};

export const conditions = {
  weather: 'Weather of this round',
  ofTeam: 'Weather and sheet',
  teamWeather: 'Weather for its robots',
  asChallenge: (weather: Weather): string => `${outlook.weather(weather)}, as the challenge says`,
  asClass: (weather: Weather): string => `${outlook.weather(weather)}, as the class`,
  from: 'For “Try it” and for entries from now on. What is handed in keeps its own.',
  teamSheet: 'Its sheet',
  sheet: (sheet: OwnSheet): string => SHEETS[sheet],
  asBerth: (variant: Variant | null): string => `${SHEETS[variant ?? 'as-drawn']}, like its berth`,
  sheetHow:
    'What it has drawn goes with the sheet, left for right. On the stage a drawing is on its own sheet.',
  judgedIn: (weather: Weather): string => `judged in ${outlook.weather(weather)}`,
};

const STUCK = {
  gone: 'It was erased, or went with its desk’s link. Next passes over it; take it off.',
  'not-playable': 'Not with this kit, or not finished. Next passes over it until it is.',
} as const;

export const queue = {
  title: 'To come',
  none: 'Nothing waits. What you put here is one key away when this challenge is over.',
  add: 'Put it in the queue',
  off: 'Take it off the queue',
  takeOff: (title: string) => `Take “${title}” off the queue`,
  sooner: (title: string) => `“${title}” sooner`,
  later: (title: string) => `“${title}” later`,
  gone: 'A challenge that is gone',
  stuck: (why: 'gone' | 'not-playable'): string => STUCK[why],
  next: (title: string) => `Next: ${title}`,
};

export const picture = {
  title: 'Class picture',
  which: 'Challenge',
  none: 'Nothing has been handed in for this challenge yet.',
  predicted: 'Here answers are handed in, so there is nothing to see on the sheet.',
  rules: 'What trips teams',
  noRules: 'No drawing rule has tripped anybody.',
  trips: (teams: number, entries: number) =>
    `${counted(teams, 'team', 'teams')}, ${counted(entries, 'entry', 'entries')}`,
  /** Of the findings of a rule the one that is furthest off, and what it is about. */
  worst: (measure: string, sentence: string): string => `At worst ${measure}. ${sentence}`,
  where: 'Where runs failed',
  nowhere: 'No run has failed.',
  failed: (n: number) => `${counted(n, 'place', 'places')} where runs failed`,
  counted: 'A number says how many teams had a run that failed there.',
  pdf: 'Save the class picture (PDF)',
  times: 'Minutes',
  screen: 'at the screen',
  paper: 'on paper',
  clock: onClock,
  whole: 'The whole lesson',
  team: 'Team',
  points: 'Points',
  tries: 'Tries',
  entries: 'Entries',
  onTask: 'Time on task',
  onTaskHow: 'Building time until the first entry that meets the challenge, or else the last entry.',
};
