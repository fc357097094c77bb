import type { Kit } from '../documents/kit.ts';
import type { Trace } from '../documents/trace.ts';
import { type BarReadings, SEEN } from './bar.ts';
import { FULL, PIXELS_PER_MM, TILE, TILE_BITS, TILE_ROW } from './coverage.ts';
import { type InkField, lightAt } from './ink-field.ts';
import { MODEL, SENSORS } from './model.ts';
import { BLACK, kitReflectances, type Reflectance, WHITE } from './reflectance.ts';
import type { Ambient, World } from './world.ts';

/** The undisturbed robot's readings, without noise; over the table they are paper's. */
export function barReadings({ field, kit }: World, { samples }: Trace, ambient: Ambient): BarReadings {
  const { barAhead, sensorPitch } = kit.robot;
  const read = opticsIn(ambient);
  const count = samples.x.length;
  const dark = new Uint8Array(SENSORS * count);
  let middle = '';
  const nameOf = classesOf(kit);
  for (let i = 0; i < count; i++) {
    const [x, y, c, s] = [samples.x[i]!, samples.y[i]!, samples.cos[i]!, samples.sin[i]!];
    for (let k = 0; k < SENSORS; k++) {
      const left = (2 - k) * sensorPitch;
      const grey = greyAt(field, x + barAhead * c + left * s, y + barAhead * s - left * c);
      dark[SENSORS * i + k] = Math.round(255 * Math.min(1, Math.max(0, 1 - read(grey, 'grey'))));
    }
    middle += nameOf(colourAt(field, x + barAhead * c, y + barAhead * s), read);
  }
  return { dark, middle };
}

type Channel = keyof Ambient['tint'] | 'grey';
/** A reflectance as a calibrated reading: 0 on line, 1 on paper. */
type Read = (reflectance: number, channel: Channel) => number;

/** White and black as they are taken at the light of calibration, readings in the light of now (`launch.ts`). */
function opticsIn({ calibrated, now, tint }: Ambient): Read {
  const raw = (reflectance: number, light: number): number =>
    reflectance * (1 + MODEL.lightGain * light) + MODEL.lightOffset * light;
  return (reflectance, channel) => {
    const share = channel === 'grey' ? 1 : tint[channel];
    const white = Math.min(MODEL.clip, raw(WHITE, calibrated * share));
    const black = raw(BLACK, calibrated * share);
    return (Math.min(MODEL.clip, raw(reflectance, now * share)) - black) / (white - black);
  };
}

/** The class that is nearest in colour, as the reader takes it. */
function classesOf(kit: Kit): (seen: Reflectance, read: Read) => string {
  const calibrated = (reflectance: number) => (reflectance - BLACK) / (WHITE - BLACK);
  const classes = [
    { name: SEEN.line, at: [0, 0, 0] },
    { name: SEEN.paper, at: [1, 1, 1] },
    ...kitReflectances(kit).map((ink, i) => ({ name: kit.inks[i]!.id, at: ink.map(calibrated) })),
  ];
  return ([red, green, blue], read) => {
    const seen = [read(red, 'red'), read(green, 'green'), read(blue, 'blue')];
    const squares = classes.map(({ at }) => squareBetween(at, seen));
    const least = Math.min(...squares);
    return least > MODEL.unlike * MODEL.unlike ? SEEN.other : classes[squares.indexOf(least)]!.name;
  };
}

const squareBetween = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + (value - b[i]!) * (value - b[i]!), 0);

const isOver = ({ width, height }: InkField, x: number, y: number): boolean =>
  x >= 0 && y >= 0 && x < width && y < height;

const greyAt = (field: InkField, x: number, y: number): number =>
  isOver(field, x, y) ? lightAt(field, x * PIXELS_PER_MM, y * PIXELS_PER_MM) / FULL : WHITE;

function colourAt(field: InkField, x: number, y: number): Reflectance {
  const [u, v] = [x * PIXELS_PER_MM, y * PIXELS_PER_MM];
  const [column, row] = [Math.floor(u), Math.floor(v)];
  const tile = (row >> TILE_BITS) * field.across + (column >> TILE_BITS);
  const start = isOver(field, x, y) ? field.colorTiles[tile]! : -1;
  if (start < 0) {
    const grey = greyAt(field, x, y);
    return [grey, grey, grey];
  }
  const first = start + 3 * ((row & (TILE - 1)) * TILE_ROW + (column & (TILE - 1)));
  const channel = (i: number): number => {
    const [at, below] = [first + i, first + i + 3 * TILE_ROW];
    const byte = (place: number) => field.color[place]!;
    const upper = byte(at) + (byte(at + 3) - byte(at)) * (u - column);
    const lower = byte(below) + (byte(below + 3) - byte(below)) * (u - column);
    return (upper + (lower - upper) * (v - row)) / FULL;
  };
  return [channel(0), channel(1), channel(2)];
}
