import type { Drawing } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { drive } from '../../shared/run/drive.ts';
import { HASH_VERSION } from '../../shared/run/state-hash.ts';
import { type DriveOptions, UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import { Pen } from '../sweeps/pen.ts';
import { DRAWN_SHEET, drawn } from './drawn.ts';

/**
 * Fifty runs whose fingerprints are frozen: ten that each show one thing, and forty of random drawings.
 * Nothing here needs Node, so that browsers can run them too.
 */
interface GoldenRun {
  readonly drawing: Drawing;
  readonly sheet?: Sheet;
  readonly options?: Partial<DriveOptions>;
  readonly kit?: Kit;
}

const SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'boathouse' }, at: { x: 30, y: 100 }, heading: 0, r: 15 },
  finish: { name: { en: 'lighthouse' }, at: { x: 260, y: 100 }, heading: Math.PI, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

const BANDS = [5.5, 5.5, 5.5];
const pen = () => new Pen().to(30, 100).straight(230);
const crossed = () => new Pen().to(160, 40, 90).straight(120).to(30, 100).straight(230);
const TURNS_BACK: Kit = { ...DEMO_KIT, robot: { ...DEMO_KIT.robot, looseEnd: 'turn-back' } };

const SHOWN: Readonly<Record<string, GoldenRun>> = {
  straight: { drawing: pen().drawing() },
  corners: {
    drawing: new Pen().to(30, 100).straight(60).turn(-90).straight(50).turn(120).straight(90).drawing(),
  },
  curves: {
    drawing: new Pen()
      .to(30, 100)
      .straight(30)
      .arc(25, -90)
      .arc(20, 180)
      .arc(40, -120)
      .straight(40)
      .drawing(),
  },
  paces: { drawing: pen().mark(40, 'CA', BANDS).mark(90, 'CA', BANDS).mark(150, 'AC', BANDS).drawing() },
  choice: { drawing: crossed().mark(50, 'AV', BANDS).drawing() },
  chance: { drawing: crossed().drawing(), options: { choices: [2] } },
  'turn-back': { drawing: pen().mark(100, 'VC', BANDS).drawing() },
  'wait-call-park': {
    drawing: pen().mark(40, 'VCV', BANDS).mark(90, 'CVC', BANDS).mark(140, 'VAV', BANDS).drawing(),
  },
  'loose-end': {
    drawing: new Pen().to(30, 100).straight(90).arc(30, 60).drawing(),
    kit: TURNS_BACK,
    options: { limit: 10 },
  },
  stormy: {
    drawing: new Pen()
      .to(30, 100)
      .straight(70)
      .arc(20, -90)
      .arc(20, 90)
      .straight(70)
      .mark(30, 'CA', BANDS)
      .drawing(),
    options: { seed: 7, disturbance: 3 },
  },
};

const DRAWN = 40;
/** No wind at all, calm, breezy, stormy. */
const WEATHER = [0, 1, 1.5, 3];

/** A drawing of each seed; one in four is driven by the undisturbed robot, every other four on hand-drawn ink. */
const drawnRuns = (): [string, GoldenRun][] =>
  Array.from({ length: DRAWN }, (_, i) => {
    const disturbance = WEATHER[i % WEATHER.length]!;
    const seed = disturbance === 0 ? 0 : i;
    const ink = i % (2 * WEATHER.length) < WEATHER.length ? 0 : disturbance;
    return [`drawn-${i}`, { drawing: drawn(i), sheet: DRAWN_SHEET, options: { seed, disturbance, ink } }];
  });

/** One run: by which robot, and its fingerprint. */
export interface GoldenTrace {
  readonly seed: number;
  readonly hash: string;
}

/** What a golden file holds: which fingerprint it is of, and one a run. */
export interface Golden {
  readonly version: number;
  readonly traces: Readonly<Record<string, GoldenTrace>>;
}

/** Drives all of them. */
export function goldenNow(): Golden {
  const traces = [...Object.entries(SHOWN), ...drawnRuns()].map(([name, run]): [string, GoldenTrace] => {
    const { drawing, sheet = SHEET, kit = DEMO_KIT, options } = run;
    const { seed, hash } = drive(worldOf(layOut(sheet, drawing), sheet, kit), {
      ...UNDISTURBED,
      limit: 30,
      ...options,
    });
    return [name, { seed, hash }];
  });
  return { version: HASH_VERSION, traces: Object.fromEntries(traces) };
}
