import type { Variant } from '../../documents/challenge.ts';
import type { Hint, ReturnReason } from '../../room/coaching.ts';
import type { OwnSheet } from '../../room/conditions.ts';

/** What a desk says to a team, as the team reads it. Children from seven on: short sentences, plain words. */

const HINT: Readonly<Record<Hint, string>> = {
  'follow-the-line': 'Follow the line with a finger, from start to end. Where is it hard?',
  'one-goal': 'Take one goal first. Then look at the next one.',
  'try-it': 'Try it now. See where the robot leaves your line.',
  'chart-again': 'Look at the chart again. What does this mark say?',
  'which-side': 'From which side does the robot meet this mark? Look on the chart what it says then.',
  'acts-later': 'A mark works a bit later. Look for the blue tick.',
  'room-for-marks': 'Leave some plain line before and after each mark.',
  'round-corners': 'Make your corners rounder.',
  'pass-it-on': 'Pass the pen on. What does your partner see?',
  'call-us': 'Put up a hand. We look at it together.',
};

const RETURNED: Readonly<Record<ReturnReason, string>> = {
  'by-mistake': 'That one came in by mistake. Go on, then hand in again.',
  'not-finished': 'There is more to do. Go on, then hand in again.',
  'goals-again': 'Read the goals once more. Then hand in again.',
  'talk-first': 'Come to the desk and talk about it. Then hand in again.',
};

const SHEETS: Readonly<Record<OwnSheet, string>> = {
  'as-drawn': 'Your sheet is the plain one now. Your drawing came along.',
  mirrored: 'Your sheet is as in a mirror now. Your drawing came along: left is right.',
  turned: 'Your sheet is turned round now. Your drawing came along.',
};

export const notes = {
  title: 'A note for you',
  hint: (hint: Hint): string => HINT[hint],
  /** Over the reason: which of the team's entries it is about. */
  back: (number: number) => `Number ${number} is back with you`,
  returned: (reason: ReturnReason): string => RETURNED[reason],
  sheet: (variant: Variant | null): string => SHEETS[variant ?? 'as-drawn'],
  putAway: 'Put it away',
  givenBack: 'given back, does not count',
};
