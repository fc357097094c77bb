import type { Sheet } from '../../shared/documents/sheet.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { drive } from '../../shared/run/drive.ts';
import { idealRuns } from '../../shared/run/ideal-runs.ts';
import { buildInkField } from '../../shared/run/ink-field.ts';
import { launch } from '../../shared/run/launch.ts';
import { machineOf } from '../../shared/run/machine.ts';
import { STEP } from '../../shared/run/model.ts';
import { MODE, type RobotState } from '../../shared/run/robot.ts';
import { step } from '../../shared/run/step.ts';
import { UNDISTURBED, worldOf } from '../../shared/run/world.ts';
import { layOut } from '../../shared/track/layout.ts';
import { Pen } from '../sweeps/pen.ts';
import { type Figure, percentile } from './figure.ts';
import { physicsRobot } from './physics.ts';
import { verdictFigures } from './verdict.ts';

/** A round course on A4 with two marks that mean nothing, so that every robot goes on for ever. */
const SHEET: Sheet = {
  w: 297,
  h: 210,
  start: { name: { en: 'boathouse' }, at: { x: 70, y: 40 }, heading: 0, r: 10 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};
const KIT = { ...DEMO_KIT, chart: [] };
const LAYOUT = layOut(
  SHEET,
  new Pen()
    .to(60, 40)
    .straight(160)
    .arc(30, 180)
    .straight(160)
    .arc(30, 180)
    .mark(50, 'CA', [5.5, 5.5])
    .mark(300, 'AVC', [5.5, 5.5, 5.5])
    .drawing(),
);
const WORLD = worldOf(LAYOUT, SHEET, KIT);
const ROBOTS = 20;
const SECONDS = 30;
/** Rounds in which everything takes its turn, so that what else the machine does hits each alike. */
const ROUNDS = 7;
/** How many of the own robots' seconds the slower engine drives. */
const PHYSICS_SHARE = 1 / 15;

/** The world of the trade: whole simulated seconds a second, by how a robot is driven. */
function simulatedRate(robots: number, driver: (robot: RobotState) => () => void): number {
  let simulated = 0;
  const began = performance.now();
  for (let seed = 1; seed <= robots; seed++) {
    const options = { ...UNDISTURBED, seed, disturbance: 1 };
    const robot = launch(machineOf(KIT), SHEET, SHEET.start, options);
    const oneStep = driver(robot);
    for (let i = 0; i < SECONDS / STEP; i++) oneStep();
    if (robot.mode === MODE.stopped) throw new Error('a robot of the bench left its course');
    simulated += SECONDS;
  }
  return simulated / ((performance.now() - began) / 1000);
}

const own = (): number => {
  const machine = machineOf(KIT);
  return simulatedRate(ROBOTS, (robot) => () => step(robot, machine, WORLD.field));
};

const physics = (): number => {
  const machine = machineOf(KIT);
  const robots = Math.ceil(ROBOTS * PHYSICS_SHARE);
  return simulatedRate(robots, (robot) => physicsRobot(robot, machine, WORLD.field));
};

const recorded = (): number => {
  const began = performance.now();
  for (let seed = 1; seed <= ROBOTS; seed++) {
    drive(WORLD, { ...UNDISTURBED, seed, disturbance: 1, limit: SECONDS });
  }
  return (ROBOTS * SECONDS) / ((performance.now() - began) / 1000);
};

const millis = (work: () => void): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

export async function bench(): Promise<Figure[]> {
  const rates = { own: [] as number[], physics: [] as number[], recorded: [] as number[] };
  const times = { field: [] as number[], ideal: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    rates.own.push(own());
    rates.physics.push(physics());
    rates.recorded.push(recorded());
    for (let i = 0; i < 5; i++) {
      times.field.push(millis(() => buildInkField(LAYOUT, SHEET, KIT)));
      times.ideal.push(millis(() => idealRuns(WORLD, { starts: ['start'], limit: SECONDS })));
    }
  }
  const median = (values: readonly number[]): number => percentile(values, 0.5);
  const ratios = rates.own.map((rate, i) => rate / rates.physics[i]!);
  return [
    { name: 'simulated-seconds', value: median(rates.own), unit: 's/s' },
    { name: 'simulated-seconds-with-trace', value: median(rates.recorded), unit: 's/s' },
    { name: 'simulated-seconds-planck', value: median(rates.physics), unit: 's/s' },
    { name: 'own-to-planck', value: median(ratios), unit: 'x', target: { at: 'least', value: 8 } },
    { name: 'field-a4', value: median(times.field), unit: 'ms' },
    { name: 'ideal-run-30s', value: median(times.ideal), unit: 'ms' },
    ...verdictFigures(),
  ];
}
