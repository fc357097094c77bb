import type { Mm } from '../geometry/units.ts';
import { MODEL } from '../run/model.ts';
import { isRead, metOn, type PlacedMark } from './rail-marks.ts';
import type { RailMap, RailRun } from './ride.ts';

/** A moment of a list of runs: run by run, pass by pass, way by way. */
export interface Moment {
  readonly run: number;
  readonly pass: number;
  readonly way: Mm;
}

export const BEGINNING: Moment = { run: 0, pass: 0, way: Number.NEGATIVE_INFINITY };

const isAfter = (a: Moment, b: Moment): boolean =>
  a.run !== b.run ? a.run > b.run : a.pass !== b.pass ? a.pass > b.pass : a.way > b.way;

/** A place for a mark of one length, with the moment at which it would first be read. */
export interface Spot {
  readonly rail: number;
  readonly line: number;
  readonly from: Mm;
  readonly along: boolean;
}

/**
 * Every place where a new mark would be read for the first time after `last`: then nothing before that
 * moment changes, and a set of marks is tried in one order only. Where `within` is given, only places that
 * are also read in that run.
 */
export function spotsAfter(
  map: RailMap,
  runs: readonly RailRun[],
  marks: readonly PlacedMark[],
  length: Mm,
  last: Moment,
  within: number | undefined,
): Spot[] {
  const read = new Map<number, Spot | undefined>();
  const needed = new Set<number>();
  runs.forEach((run, r) => {
    run.passes.forEach((pass, p) => {
      for (const { key, spot, way } of readable(map, pass, marks, length)) {
        if (within === r) needed.add(key);
        if (read.has(key)) continue;
        read.set(key, isAfter({ run: r, pass: p, way }, last) ? spot : undefined);
      }
    });
  });
  return [...read].flatMap(([key, spot]) =>
    spot && (within === undefined || needed.has(key)) ? [spot] : [],
  );
}

/** More places than a line has. */
const PLACES = 100_000;

interface Readable {
  readonly key: number;
  readonly spot: Spot;
  readonly way: Mm;
}

function readable(
  { rails, kit, places }: RailMap,
  pass: RailRun['passes'][number],
  marks: readonly PlacedMark[],
  length: Mm,
): Readable[] {
  const rail = rails[pass.rail]!;
  const { line, low, high, along } = rail.edge;
  const met = metOn(rail, marks);
  const found: Readable[] = [];
  const starts = places(line, length);
  for (let i = 0; i < starts.length; i++) {
    const k = along ? i : starts.length - 1 - i;
    const start = starts[k]!;
    if (start < low || start > high - length) continue;
    const from = along ? start - low : high - start - length;
    const to = from + length;
    const way = to + MODEL.blackAfter - kit.robot.barAhead;
    if (way < pass.from || way > pass.to) continue;
    const before = met.findLast((mark) => mark.from < to);
    const after = met.find((mark) => mark.from >= to);
    if (before && before.to + MODEL.blackBefore > from) continue;
    const next = after ? after.from - MODEL.blackBefore + MODEL.blackAfter : Number.POSITIVE_INFINITY;
    if (isRead(rail, from, to, Math.max(pass.plain, before?.to ?? pass.plain), next, kit)) {
      found.push({ key: line * PLACES + k, spot: { rail: rail.edge.index, line, from: start, along }, way });
    }
  }
  return found;
}
