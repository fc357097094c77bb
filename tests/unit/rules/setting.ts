import type { Band, Drawing, Line, Mark } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { Berth, Sheet } from '../../../shared/documents/sheet.ts';
import type { Finding, RuleId } from '../../../shared/documents/verdict.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { checkDrawing, ruleContext } from '../../../shared/rules/rules.ts';

export const NOTHING: Drawing = { lines: [], marks: [] };

export const berth = (x: number, y: number, heading = 0, r = 15): Berth => ({
  name: { en: 'berth' },
  at: { x, y },
  heading,
  r,
});

/** 300 × 200 mm; robots start at (40, 100), facing right. Limits are the demo kit's. */
export const SHEET: Sheet = {
  w: 300,
  h: 200,
  start: berth(40, 100),
  gates: [],
  areas: [],
  keepOut: [],
  given: NOTHING,
};

type Stop = readonly [x: number, y: number, bulge?: number];

/** A line over stops; the bulge of a stop is that of the piece which leads to it. */
export function line(id: string, from: Stop, ...stops: Stop[]): Line {
  return {
    id,
    width: 5,
    from: { x: from[0], y: from[1] },
    pieces: stops.map(([x, y, bulge = 0]) => ({ to: { x, y }, bulge })),
  };
}

/** `CA` as two bands of 5.5, edge to edge. */
export const bands = (word: string, length = 5.5, gap = 0): Band[] =>
  [...word].map((ink, i) => ({ ink, length, gap: i === 0 ? 0 : gap }));

export const mark = (id: string, on: string, at: number, word: string | Band[]): Mark => ({
  id,
  line: on,
  at,
  bands: typeof word === 'string' ? bands(word) : word,
});

/** A line straight out of the start berth to the right, 220 mm long. */
export const PIER = line('pier', [40, 100], [260, 100]);

export const drawn = (lines: Line[], marks: Mark[] = []): Drawing => ({ lines, marks });

export interface Setting {
  readonly sheet?: Partial<Sheet>;
  readonly kit?: Kit;
  readonly starts?: readonly ('start' | 'finish')[];
  readonly limits?: { readonly ink?: number; readonly marks?: number };
}

export function findings(drawing: Drawing, setting: Setting = {}): Finding[] {
  const { sheet, kit = DEMO_KIT, starts, limits } = setting;
  return checkDrawing(ruleContext({ ...SHEET, ...sheet }, drawing, kit, starts, limits));
}

/** The findings of one rule, with measured values to a hundredth. */
export function of(rule: RuleId, drawing: Drawing, setting: Setting = {}): Finding[] {
  return findings(drawing, setting)
    .filter((finding) => finding.rule === rule)
    .map((f) => (f.measured === undefined ? f : { ...f, measured: Math.round(f.measured * 100) / 100 }));
}

/** The finding's own mended drawing; fails the test where there is none. */
export function mended(finding: Finding | undefined): Drawing {
  const design = finding?.remedy?.design;
  if (!design) throw new Error('no mended design');
  return design.drawing;
}

export const withRules = (change: Partial<Kit['rules']>): Kit => ({
  ...DEMO_KIT,
  rules: { ...DEMO_KIT.rules, ...change },
});
export const withRobot = (change: Partial<Kit['robot']>): Kit => ({
  ...DEMO_KIT,
  robot: { ...DEMO_KIT.robot, ...change },
});
