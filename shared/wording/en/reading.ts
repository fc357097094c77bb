import type { Mm, PaperPoint } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

const place = ({ x, y }: PaperPoint): string =>
  `${numbers.centimetres(x)} across, ${numbers.centimetres(y)} down`;
const after = (way: Mm, what: string): string => `After ${numbers.length(way)}: ${what}`;
const side = (turn: number): string => (turn > 0 ? 'right' : 'left');
const size = (degrees: number): string => numbers.angle(degrees < 0 ? -degrees : degrees);
const lines = (met: readonly number[]): string =>
  `${met.length === 1 ? 'line' : 'lines'} ${numbers.list(met.map(String))}`;

/** The sheet in words, for those who hear it. Angles in degrees, positive to the right. */
export const reading = {
  title: 'The sheet in words',
  close: 'Close',
  onSheet: 'On the sheet',
  drawn: 'Lines and marks',
  nothing: 'Nothing is drawn yet.',
  start: (name: string, at: PaperPoint): string => `${name}: robots set out here, ${place(at)}.`,
  finish: (name: string, at: PaperPoint): string => `${name}: ${place(at)}.`,
  gate: (name: string, at: PaperPoint): string => `${name}, a gate: ${place(at)}.`,
  area: (name: string, at: PaperPoint): string => `${name}, a place: around ${place(at)}.`,
  keepOut: (name: string, at: PaperPoint): string => `${name}, keep out: around ${place(at)}.`,
  box: (name: string, from: PaperPoint, to: PaperPoint): string =>
    `${name}, a box to put marks into: from ${place(from)} to ${place(to)}.`,
  place,
  lineNumber: (n: number): string => `line ${n}`,
  line: (n: number, given: boolean, from: string, to: string, length: Mm): string =>
    `Line ${n}${given ? ', given' : ''}, from ${from} to ${to}: ${numbers.length(length)}.`,
  mark: (way: Mm, name: string, back: string | null): string =>
    after(way, back === null ? `mark ${name}.` : `mark ${name}; from the other side ${back}.`),
  corner: (way: Mm, inside: number, turn: number): string =>
    after(way, `corner of ${size(inside)}, to the ${side(turn)}.`),
  curve: (way: Mm, turn: number, radius: Mm): string =>
    after(way, `curve to the ${side(turn)} by ${size(turn)}, radius ${numbers.length(radius)}.`),
  junction: (way: Mm, met: readonly number[]): string => after(way, `junction with ${lines(met)}.`),
  /** Buttons beside sentences. */
  hear: 'Read aloud',
  stop: 'Stop reading',
};
