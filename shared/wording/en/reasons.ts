import { isMistaken, type MistakenReason, type Reason, type TrueReason } from '../../documents/reason.ts';

/** Why a run went as it went. Read by children: short sentences, the robot is "it". */

const TRUE: Readonly<Record<TrueReason, string>> = {
  'no-line-in-berth': 'It had no line under it at the start.',
  'line-lost': 'It lost the line at one place.',
  'line-ends': 'The line ends before the goal.',
  'off-paper': 'It drove over the edge of the paper.',
  'time-up': 'It needed more time than there was.',
  'mark-overlooked': 'It drove over a mark and did not read it.',
  'mark-unknown': 'It read a mark that is not in the chart.',
  'left-to-luck': 'No mark told it which way to take at a junction.',
  'taken-for-junction': 'It took a sharp corner for a junction.',
  'met-from-behind': 'It met a mark from the other side, where it says something else.',
  'falls-short': 'It did all that is drawn, but that is not yet all that is asked for.',
  'some-robots-stray': 'Robots differ a little. At this place some of them leave the line.',
  'all-as-drawn': 'It followed the line and did what each mark says.',
};

const MISTAKEN: Readonly<Record<MistakenReason, { readonly said: string; readonly but: string }>> = {
  'sees-the-sheet': {
    said: 'It looked at the whole sheet and chose its own way.',
    but: 'Its five sensors see only the spot right under its bar.',
  },
  'knows-the-wish': {
    said: 'It knows where it should go and helped a little.',
    but: 'It knows nothing of the goal. It only follows the line and the marks.',
  },
  'acts-at-once': {
    said: 'A mark works right where it stands.',
    but: 'It reads a mark first and acts a bit later, at the blue tick.',
  },
  'same-from-both-sides': {
    said: 'A mark says the same from both sides.',
    but: 'Read from the other end, the colours come in another order.',
  },
  'first-colour-counts': {
    said: 'Only the first colour of a mark counts.',
    but: 'It reads all colours of a mark, in their order.',
  },
  'shortest-way': {
    said: 'It always takes the shortest way.',
    but: 'It does not know which way is shorter. Without a mark it takes any.',
  },
  'got-tired': {
    said: 'It was tired, or in a bad mood.',
    but: 'A robot has no moods. Something on the paper made it do that.',
  },
};

export const reasons = {
  /** As one of three to choose from. */
  said: (reason: Reason): string => (isMistaken(reason) ? MISTAKEN[reason].said : TRUE[reason]),
  /** Why a mistaken one can't be. */
  but: (reason: MistakenReason): string => MISTAKEN[reason].but,
};
