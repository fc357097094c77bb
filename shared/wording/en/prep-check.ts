import type { PrepCheck } from '../../prep/prep-check.ts';

const CHECKS: Readonly<Record<PrepCheck, string>> = {
  pages: 'The server answers, and its pages are built',
  address: 'Tablets have an address to open',
  tablet: 'A tablet gets through',
  kit: 'The kit is chosen',
  charger: 'The charger is watched as long as anything charges',
  robots: 'Robots are charged, switched on and counted',
  paper: 'Sheets are printed at 100 %, and the ruler measures 100 mm',
  tables: 'Markers and tape lie ready, sheets 10 cm from the table’s edge, the ways are free',
};

/** The desk's five minutes before a lesson. */
export const prepCheck = {
  leaf: 'Five minutes',
  title: 'Five minutes before',
  how: 'Tap a line or press its number. What the desk can see by itself is ticked by itself.',
  said: (check: PrepCheck): string => CHECKS[check],
  /** What the desk knows of a line, or what would tick it. */
  serves: 'This page came from it.',
  silent: 'The server does not answer. Look whether it still runs.',
  host: (host: string): string => `They open ${host}.`,
  noHost: 'This machine is in no network yet. Join the one that the tablets are in.',
  tryTablet: (page: string): string => `Open ${page} on one tablet.`,
  kit: (name: string): string => `${name}.`,
  seen: 'seen by itself',
  done: (n: number, of: number): string => `${n} of ${of} done`,
  ready: 'Everything is ready.',
  open: 'Open the room',
  anyway: 'The room opens all the same: what is left can be done later.',
  kept: 'This browser remembers the ticks until the end of the day.',
  again: 'Begin again',
};
