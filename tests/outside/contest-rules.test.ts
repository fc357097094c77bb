import { describe, expect, test } from 'vitest';
import type { Drawing, Line } from '../../shared/documents/design.ts';
import type { Kit } from '../../shared/documents/kit.ts';
import type { Sheet } from '../../shared/documents/sheet.ts';
import { radians } from '../../shared/geometry/exact-math.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';
import { plainFindings, ruleContext } from '../../shared/rules/rules.ts';
import { Pen } from '../sweeps/pen.ts';

/**
 * Course rules of line-following contests as kits: what a rule set allows, at its limit, is silent, and
 * what it forbids by a hundredth is found by that rule alone. Lengths in mm of the contest's floor.
 */
interface RuleSet {
  readonly name: string;
  readonly source: string;
  /** Width of the line, and from where to where it may lie. */
  readonly line: number;
  readonly lines?: readonly [least: number, most: number];
  readonly radius?: number;
  /** Between the middles of two lines. */
  readonly spacing?: number;
  readonly edge?: number;
  /** The sharpest turn, and the least angle of a crossing, degrees. */
  readonly corner?: number;
  readonly crossing?: number;
}

const RULE_SETS: readonly RuleSet[] = [
  {
    name: 'NTF Robotrace',
    source: 'ntf.or.jp, page 948, sections 2-1 to 2-5: crossings at 90 ± 5 degrees',
    line: 19,
    radius: 100,
    crossing: 85,
  },
  {
    name: 'UKMARS line follower',
    source: 'ukmars.org, contest rules from June 2024: 10 ± 2 wide, 75 ± 5 of radius, right angles only',
    line: 10,
    lines: [8, 12],
    radius: 70,
    crossing: 90,
  },
  {
    name: 'UKMARS line follower of 2009',
    source: 'ukmars.org wiki, oldid 85: the smallest of its radii, right angles only',
    line: 19,
    radius: 150,
    crossing: 90,
  },
  {
    name: 'RoboCupJunior Rescue 2009',
    source: 'rcj.sci.brooklyn.cuny.edu, rescue rules 2009, sections 1.3 and 1.4',
    line: 15,
    lines: [10, 20],
    spacing: 100,
  },
  {
    name: 'RCJ Chiba node',
    source: 'rcjj-kanto.org, course guideline 2025: no angle sharper than 90 degrees',
    line: 15,
    corner: 90,
  },
  {
    name: 'NorBot Challenge',
    source: 'KvalheimRacing/NorBotChallenge, Linefollowing_Rules.md',
    line: 20,
    radius: 75,
    spacing: 150,
    edge: 150,
    corner: 90,
  },
  {
    name: 'Line Follower Turbo',
    source: 'robotec.ligaac.ro',
    line: 20,
    radius: 75,
    spacing: 150,
    edge: 150,
  },
  {
    name: 'OSHWDem, sigue líneas',
    source: 'brico-labs/Regulamentos, revision 2 of 2016; taken from middle to middle',
    line: 20,
    radius: 125,
    spacing: 250,
  },
  {
    name: 'open-robosports, velocistas',
    source: 'open-robosports/normativa-velocistas, circuito.md: 20 ± 2 wide, 400 ± 20 of radius',
    line: 20,
    lines: [18, 22],
    radius: 380,
    edge: 100,
  },
  {
    name: 'LVBots line maze',
    source: 'lvbots.github.io, line_maze_rules.md: straight lines that cross at right angles',
    line: 19,
    lines: [12.7, 25.4],
    spacing: 127,
    corner: 90,
    crossing: 90,
  },
  {
    name: 'NASA line running',
    source: 'robotics.nasa.gov, running.php: 76 to the inner edge of a sharp turn',
    line: 19,
    radius: 76 + 19 / 2,
    spacing: 100,
  },
];

/** Every line is drawn 5 mm wide, and what a rule set leaves open is allowed. */
const scaleOf = ({ line }: RuleSet): number => 5 / line;

function kitOf(set: RuleSet): Kit {
  const scale = scaleOf(set);
  const [least, most] = set.lines ?? [set.line, set.line];
  const angle = radians(set.corner ?? 0);
  return {
    ...DEMO_KIT,
    rules: {
      ...DEMO_KIT.rules,
      lineWidth: { nominal: 5, least: least * scale, most: most * scale },
      corner: { untidyBelow: angle, mayStopBelow: angle / 2 },
      curveRadius: (set.radius ?? 0) * scale,
      clearance: (set.spacing ?? set.line) * scale,
      sheetMargin: (set.edge ?? 0) * scale,
      junction: { ...DEMO_KIT.rules.junction, armsApart: radians(set.crossing ?? 0), armLength: 1 },
    },
  };
}

const START = { x: 200, y: 400 } as const;
const SHEET: Sheet = {
  w: 1500,
  h: 900,
  start: { name: { en: 'start' }, at: START, heading: 0, r: 15 },
  gates: [],
  areas: [],
  keepOut: [],
  given: { lines: [], marks: [] },
};

const pen = (width = 5): Pen => new Pen(width).to(START.x, START.y);
const named = (id: string, drawing: Drawing): Line => ({ ...drawing.lines[0]!, id });

const cornered = (angle: number): Drawing =>
  pen()
    .straight(300)
    .turn(180 - angle)
    .straight(300)
    .drawing();
const crossed = (angle: number): Drawing => {
  const away = radians(angle);
  const from = { x: 400 - 200 * Math.cos(away), y: 400 - 200 * Math.sin(away) };
  const over = new Pen().to(from.x, from.y, angle).straight(400);
  return { lines: [named('on', pen().straight(400).drawing()), named('over', over.drawing())], marks: [] };
};
const beside = (apart: number): Drawing => {
  const other = new Pen().to(START.x, START.y + apart).straight(400);
  return { lines: [named('on', pen().straight(400).drawing()), named('by', other.drawing())], marks: [] };
};
const along = (gap: number): Drawing => new Pen().to(START.x, gap).straight(400).drawing();

const foundBy = (set: RuleSet, drawing: Drawing, sheet: Sheet = SHEET): string[] =>
  plainFindings(ruleContext(sheet, drawing, kitOf(set))).map((finding) => finding.rule);

interface Trial {
  readonly limit: string;
  /** What is found in what is drawn to a share of the limit: 1 is at it. */
  readonly found: (set: RuleSet, share: number) => string[];
  readonly of: (set: RuleSet) => unknown;
  readonly rule: string;
  /** A hundredth beyond the limit. */
  readonly beyond: number;
}

const TRIALS: readonly Trial[] = [
  {
    limit: 'the thinnest line',
    rule: 'R-line-width',
    of: ({ lines }) => lines,
    beyond: 0.99,
    found: (set, share) =>
      foundBy(
        set,
        pen(set.lines![0] * scaleOf(set) * share)
          .straight(400)
          .drawing(),
      ),
  },
  {
    limit: 'the widest line',
    rule: 'R-line-width',
    of: ({ lines }) => lines,
    beyond: 1.01,
    found: (set, share) =>
      foundBy(
        set,
        pen(set.lines![1] * scaleOf(set) * share)
          .straight(400)
          .drawing(),
      ),
  },
  {
    limit: 'the tightest curve',
    rule: 'R-curve-radius',
    of: ({ radius }) => radius,
    beyond: 0.99,
    found: (set, share) => {
      const radius = set.radius! * scaleOf(set) * share;
      return foundBy(set, pen().straight(200).arc(radius, 90).straight(200).drawing());
    },
  },
  {
    limit: 'the nearest line',
    rule: 'R-clearance',
    of: ({ spacing }) => spacing,
    beyond: 0.99,
    found: (set, share) => foundBy(set, beside(set.spacing! * scaleOf(set) * share)),
  },
  {
    limit: 'the nearest edge',
    rule: 'R-margin',
    of: ({ edge }) => edge,
    beyond: 0.99,
    found: (set, share) => {
      const y = set.edge! * scaleOf(set) * share;
      return foundBy(set, along(y), { ...SHEET, start: { ...SHEET.start, at: { x: START.x, y } } });
    },
  },
  {
    limit: 'the sharpest corner',
    rule: 'R-corner',
    of: ({ corner }) => corner,
    beyond: 0.99,
    found: (set, share) => foundBy(set, cornered(set.corner! * share)),
  },
  {
    limit: 'the most oblique crossing',
    rule: 'R-junction-angle',
    of: ({ crossing }) => crossing,
    beyond: 0.99,
    found: (set, share) => foundBy(set, crossed(set.crossing! * share)),
  },
];

const cases = RULE_SETS.flatMap((set) =>
  TRIALS.filter((trial) => trial.of(set) !== undefined).map((trial) => [set, trial] as const),
);

describe('contest rules', () => {
  test.each(cases)('$0.name: $1.limit ($0.source)', (set, { rule, beyond, found }) => {
    expect(found(set, 1)).toEqual([]);
    expect(found(set, beyond)).toEqual([rule]);
  });
});
