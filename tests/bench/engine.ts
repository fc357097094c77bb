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
import { coreSeconds, type Figure, median, timesOf } from './figure.ts';
import { memoryFigures } from './memory.ts';
import { parFigures } from './par.ts';
import { type PhysicsRobot, planckRobot, rapierRobot, readyRapier } from './physics.ts';
import { rulesFigures } from './rules.ts';
import { verdictFigures } from './verdict.ts';
import { workerFigures } from './workers.ts';

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
const ROBOTS = 40;
const SECONDS = 30;
/** Rounds in which everything takes its turn, so that what else the machine does hits each alike. */
const WARM_UP = 3;
const ROUNDS = 7;
/** The slower engines drive fewer. */
const PHYSICS_ROBOTS = 2;
const PIECE_ROUNDS = 35;

function mustGoOn(robot: RobotState): void {
  if (robot.mode === MODE.stopped) throw new Error('a robot of the bench left its course');
}

/** In a loop of its own: one that also drives other engines' robots would be compiled for all of them. */
const own = (): number => {
  const machine = machineOf(KIT);
  const began = coreSeconds();
  for (let seed = 1; seed <= ROBOTS; seed++) {
    const robot = launch(machine, SHEET, SHEET.start, { ...UNDISTURBED, seed, disturbance: 1 });
    for (let i = 0; i < SECONDS / STEP; i++) step(robot, machine, WORLD.field);
    mustGoOn(robot);
  }
  return (ROBOTS * SECONDS) / (coreSeconds() - began);
};

const physics = (physicsRobot: PhysicsRobot): number => {
  const machine = machineOf(KIT);
  const began = coreSeconds();
  for (let seed = 1; seed <= PHYSICS_ROBOTS; seed++) {
    const robot = launch(machine, SHEET, SHEET.start, { ...UNDISTURBED, seed, disturbance: 1 });
    const oneStep = physicsRobot(robot, machine, WORLD.field);
    for (let i = 0; i < SECONDS / STEP; i++) oneStep();
    mustGoOn(robot);
  }
  return (PHYSICS_ROBOTS * SECONDS) / (coreSeconds() - began);
};

const recorded = (): number => {
  const began = coreSeconds();
  for (let seed = 1; seed <= ROBOTS; seed++) {
    drive(WORLD, { ...UNDISTURBED, seed, disturbance: 1, limit: SECONDS });
  }
  return (ROBOTS * SECONDS) / (coreSeconds() - began);
};

/**
 * How far the step is from what the machine could do. It reads 20 bytes of the field around the five
 * sensors (12 more where there are bands), 32 of noise, 256 of optics, and some 35 numbers of the robot,
 * boxed by the engine, 560: under 900 bytes, which stay in a first-level cache, since a robot moves a
 * quarter of a pixel a step. So memory is no limit. It makes about 180 additions, multiplications and
 * comparisons and three divisions in some 900 machine instructions, the rest being addresses and checks: at
 * 20,000 simulated seconds a second that is 100 ns or 300 cycles at 3 GHz, three instructions a cycle. What
 * counts is how many independent ones lie side by side. Next would be the robot's numbers in one array that
 * never moves, without boxes and checks, or WebAssembly with four sensors in one vector; either is a second
 * copy of the step that must give the same bits.
 */
function simulationFigures(): Figure[] {
  const rates = {
    own: [] as number[],
    planck: [] as number[],
    rapier: [] as number[],
    recorded: [] as number[],
  };
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const now = {
      own: own(),
      planck: physics(planckRobot),
      rapier: physics(rapierRobot),
      recorded: recorded(),
    };
    if (round < 0) continue;
    rates.own.push(now.own);
    rates.planck.push(now.planck);
    rates.rapier.push(now.rapier);
    rates.recorded.push(now.recorded);
  }
  const ratios = rates.own.map((rate, i) => rate / Math.max(rates.planck[i]!, rates.rapier[i]!));
  return [
    {
      name: 'simulated-seconds',
      value: median(rates.own),
      unit: 's/s',
      target: { at: 'least', value: 18_000 },
    },
    { name: 'simulated-seconds-with-trace', value: median(rates.recorded), unit: 's/s' },
    { name: 'simulated-seconds-planck', value: median(rates.planck), unit: 's/s' },
    { name: 'simulated-seconds-rapier', value: median(rates.rapier), unit: 's/s' },
    { name: 'own-to-faster-of-both', value: median(ratios), unit: 'x', target: { at: 'least', value: 8 } },
  ];
}

function pieceFigures(): Figure[] {
  const field = timesOf(PIECE_ROUNDS, () => buildInkField(LAYOUT, SHEET, KIT));
  const ideal = timesOf(PIECE_ROUNDS, () => idealRuns(WORLD, { starts: ['start'], limit: SECONDS }));
  return [
    { name: 'field-a4', value: median(field), unit: 'ms' },
    { name: 'ideal-run-30s', value: median(ideal), unit: 'ms' },
  ];
}

/** Rates and times of one core are in processor time, so that what else the machine does counts little. */
export async function bench(): Promise<Figure[]> {
  await readyRapier();
  return [
    ...simulationFigures(),
    ...pieceFigures(),
    ...verdictFigures(),
    ...parFigures(),
    ...rulesFigures(),
    ...(await workerFigures()),
    ...(await memoryFigures()),
  ];
}
