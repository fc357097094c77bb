import { endFromEdgeOf, inkLighterOf, type Kit, PACES, tolerancesOf } from '../../../shared/documents/kit.ts';
import type { KitPath } from '../../../shared/kit/kit-problem.ts';
import { withProfile } from '../../../shared/kit/versions.ts';
import type { kit as words } from '../../../shared/wording/en/kit.ts';
import { valueAt, withValue } from './changes.ts';

/** The numbers of a kit as people type them in. */

export type Unit = 'mm' | 'mm/s' | 's' | '°' | '%' | '×' | '';

interface Scale {
  /** As it is shown, and back; a document holds hundredths, and hundredths of a degree. */
  readonly shown: (value: number) => number;
  readonly kept: (shown: number) => number;
  readonly least: number;
  readonly most: number;
}

const hundredths = (value: number): number => Math.round(value * 100) / 100;
const plain = (least: number, most: number): Scale => ({ shown: hundredths, kept: hundredths, least, most });

export const SCALES: Readonly<Record<Unit, Scale>> = {
  mm: plain(0, 8000),
  'mm/s': plain(0, 8000),
  s: plain(0, 3600),
  '×': plain(1, 21),
  '': { shown: Math.round, kept: Math.round, least: 1, most: 8 },
  '°': {
    shown: (radians) => hundredths((radians * 180) / Math.PI),
    kept: (degrees) => (Math.round(degrees * 100) * Math.PI) / 18_000,
    least: 0,
    most: 180,
  },
  '%': {
    shown: (share) => hundredths(share * 100),
    kept: (percent) => Math.round(percent * 100) / 10_000,
    least: 0,
    most: 100,
  },
};

/** The number that somebody has typed, with a point or a comma; null where it is none within the scale. */
export function typedNumber(text: string, unit: Unit): number | null {
  const { least, most, kept } = SCALES[unit];
  if (!/^\s*\d+([.,]\d*)?\s*$/.test(text)) return null;
  const number = Number(text.replace(',', '.'));
  return number >= least && number <= most ? kept(number) : null;
}

/** The kit with a number where it may be left out and is the usual one. */
const filled = (kit: Kit): Kit => ({
  ...kit,
  robot: { ...kit.robot, tolerances: tolerancesOf(kit.robot) },
  rules: { ...kit.rules, endFromEdge: endFromEdgeOf(kit.rules), inkLighter: inkLighterOf(kit.rules) },
});

export const numberAt = (kit: Kit, path: KitPath): number => valueAt(filled(kit), path) as number;

export function withNumber(kit: Kit, path: KitPath, value: number): Kit {
  if (path[1] !== 'tolerances') return withValue(kit, path, value);
  const tolerances = { ...tolerancesOf(kit.robot), [path[2]!]: value };
  return withProfile(kit, { ...kit.robot, tolerances });
}

type RuleWords = (typeof words)['rules'];
export type RuleKey = keyof RuleWords['of'];
export type RulePart = keyof RuleWords['parts'];

export interface RuleRow {
  readonly rule: RuleKey;
  readonly unit: Unit;
  /** `part` null: the rule has one number. */
  readonly numbers: readonly { readonly part: RulePart | null; readonly path: KitPath }[];
}

const one = (rule: RuleKey, unit: Unit, ...path: string[]): RuleRow => ({
  rule,
  unit,
  numbers: [{ part: null, path: ['rules', ...path] }],
});
const several = (rule: RuleKey, unit: Unit, within: string, parts: readonly RulePart[]): RuleRow => ({
  rule,
  unit,
  numbers: parts.map((part) => ({ part, path: ['rules', within, part] })),
});

/** All drawing rules with their numbers, as they stand under one another. */
export const RULE_ROWS: Readonly<Record<keyof RuleWords['groups'], readonly RuleRow[]>> = {
  line: [
    several('lineWidth', 'mm', 'lineWidth', ['least', 'nominal', 'most']),
    several('corner', '°', 'corner', ['mayStopBelow', 'untidyBelow']),
    one('curveRadius', 'mm', 'curveRadius'),
    one('clearance', 'mm', 'clearance'),
    one('sheetMargin', 'mm', 'sheetMargin'),
    one('endFromEdge', 'mm', 'endFromEdge'),
  ],
  marks: [
    one('beforeMark', 'mm', 'beforeMark'),
    one('afterMark', 'mm', 'afterMark'),
    one('straightFrom', 'mm', 'straightFrom'),
    several('actionReady', 'mm', 'actionReady', PACES),
  ],
  bands: [
    several('bandCount', '', 'bands', ['least', 'most']),
    several('bandLength', 'mm', 'bands', ['shortest', 'tidyShortest', 'tidyLongest', 'longest']),
    one('equalWithin', '%', 'bands', 'equalWithin'),
    one('gap', 'mm', 'bands', 'gap'),
    one('overlap', 'mm', 'bands', 'overlap'),
    several('stretch', 'mm', 'bands', ['unknownFrom', 'colouredFrom']),
    one('inkLighter', '×', 'inkLighter'),
  ],
  junctions: [
    one('armsApart', '°', 'junction', 'armsApart'),
    one('armLength', 'mm', 'junction', 'armLength'),
    one('snap', 'mm', 'junction', 'snap'),
  ],
};
