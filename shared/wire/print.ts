import * as z from 'zod/mini';
import { LOCALES, UNITS } from '../documents/values.ts';
import { PERIOD } from '../prep/lesson-plan.ts';
import { EMBLEMS } from '../room/state.ts';

/** What can be asked of print, in the address of a download. */

export const PAPERS = ['A4', 'A3', 'Letter', 'Tabloid'] as const;
export type PaperName = (typeof PAPERS)[number];

/**
 * `sheet`: a challenge's sheet as teams get it; `drawing`: an entry or what is on a tablet now;
 * `chart`, `gauge`, `patch`, `strip`, `slips`: for the wall, the hand and the robots;
 * `timed-line`, `timed-circle`, `limits`: what the kit is fitted to the robots by;
 * `predict`, `two-travellers`, `mend`: questions on paper; `supplies`, `lesson-plan`: before the lesson,
 * also without a room; `closing`: the closing check; `evidence`: what the class and each team have shown;
 * `picture`: how the class did with each challenge;
 * `pack`: what one team gets; `class`: all of it.
 */
export const PRINT_KINDS = [
  'sheet',
  'drawing',
  'chart',
  'gauge',
  'patch',
  'strip',
  'timed-line',
  'timed-circle',
  'limits',
  'slips',
  'predict',
  'two-travellers',
  'mend',
  'supplies',
  'lesson-plan',
  'closing',
  'evidence',
  'picture',
  'pack',
  'class',
] as const;
export type PrintKind = (typeof PRINT_KINDS)[number];

/** What a team may print: its own things, and what hangs on the wall for everybody. */
export const TEAM_KINDS: readonly PrintKind[] = ['sheet', 'drawing', 'chart', 'gauge', 'slips'];

export const LINE_LOOKS = ['ink', 'dots'] as const;
export const MARK_LOOKS = ['colour', 'paint'] as const;
/** Lines as full ink or as a dotted middle to draw over; marks in colour or as places to be painted. */
export type LineLook = (typeof LINE_LOOKS)[number];
export type MarkLook = (typeof MARK_LOOKS)[number];

/** What can be printed before any room is open. */
export const ROOMLESS_KINDS: readonly PrintKind[] = ['supplies', 'lesson-plan'];

/** A whole number as text within limits. */
const whole = (least: number, most: number) =>
  z.string().check(
    z.regex(/^[1-9]\d{0,2}$/),
    z.refine((text) => Number(text) >= least && Number(text) <= most, { error: 'out-of-range' }),
  );

/** Minutes by which a clock may be ahead of UTC, from −12 to +14 hours. */
const OFFSETS = { least: -720, most: 840 } as const;
/** How many minutes the asker's clock was ahead of UTC when the room was opened; absent: dates are by UTC. */
export const Offset = z.optional(
  z.string().check(
    z.regex(/^-?\d{1,3}$/),
    z.refine((text) => Number(text) >= OFFSETS.least && Number(text) <= OFFSETS.most, {
      error: 'out-of-range',
    }),
  ),
);

const Token = z.string().check(z.minLength(1), z.maxLength(64));

export const PrintAsk = z.strictObject({
  kind: z.enum(PRINT_KINDS),
  format: z.enum(['pdf', 'svg']),
  room: z.optional(Token),
  paper: z._default(z.enum(PAPERS), 'A4'),
  /** What stands on the paper, in which language, and lengths in which units. */
  language: z._default(z.enum(LOCALES), 'en'),
  units: z._default(z.enum(UNITS), 'cm'),
  offset: Offset,
  lines: z._default(z.enum(LINE_LOOKS), 'ink'),
  marks: z._default(z.enum(MARK_LOOKS), 'colour'),
  /** A ready challenge by its key; absent: the one that is being played. */
  challenge: z.optional(Token),
  /** Whose drawing; and which of its entries, where it is not the newest drawing. */
  team: z.optional(Token),
  entry: z.optional(Token),
  /** `yes`: questions come with their key. */
  key: z._default(z.enum(['yes', 'no']), 'no'),
  /** For supplies; absent: as many as are in the room, or a usual class. */
  teams: z.optional(whole(1, EMBLEMS.length)),
  /** How long the lesson of a plan is. */
  minutes: z.optional(whole(PERIOD.least, PERIOD.most)),
  /** Which page an SVG shows, from 1. */
  page: z.optional(z.string().check(z.regex(/^[1-9]\d{0,3}$/))),
  /** `yes`: the answer tells line by line how far it is, and carries the file at its end. */
  progress: z._default(z.enum(['yes', 'no']), 'no'),
});
export type PrintAsk = z.output<typeof PrintAsk>;

/** The address of a print; what is left out takes its default. */
export function printPath({ kind, format, ...rest }: Partial<PrintAsk> & Pick<PrintAsk, 'kind' | 'format'>) {
  const pairs = Object.entries(rest).filter((pair): pair is [string, string] => pair[1] !== undefined);
  return `/api/print/${kind}.${format}?${new URLSearchParams(pairs)}`;
}

/** How many pages there are, in the head of an answer with one of them. */
export const PAGES_HEAD = 'x-pages';

/** One line of an answer that tells how far it is; after `bytes` the file follows. */
export type PrintProgress =
  | { readonly done: number; readonly of: number }
  | { readonly bytes: number; readonly name: string };
