import { describe, expect, test } from 'vitest';
import type { Band, Drawing, Line, Mark } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import type { RuleId } from '../../../shared/documents/verdict.ts';
import { plainFindings, ruleContext } from '../../../shared/rules/rules.ts';
import { bandsOf, KITS, lengthOf, wordFor } from '../../kits.ts';
import { Pen } from '../../sweeps/pen.ts';
import { SHEET as SMALL } from './setting.ts';

/** Every limit is the kit's: a drawing a hair within it is fine, one a hair beyond it is not. */

const SHEET = { ...SMALL, w: 500, h: 400, start: { ...SMALL.start, at: { x: 60, y: 200 } } };
const degrees = (rad: number): number => (rad * 180) / Math.PI;

interface Measured {
  readonly severity: string;
  readonly allowed: number | undefined;
}
const said = (rule: RuleId, kit: Kit, { lines, marks }: Drawing): Measured[] =>
  plainFindings(ruleContext(SHEET, { lines: [...lines], marks: [...marks] }, kit))
    .filter((finding) => finding.rule === rule)
    .map(({ severity, allowed }) => ({
      severity,
      allowed: allowed === undefined ? undefined : Math.round(allowed * 100) / 100,
    }));

describe.each(KITS)('limits of the kit $id', (kit) => {
  const { rules, robot } = kit;
  const { bands } = rules;
  const unit = new Array<number>(bands.most + 1).fill(robot.bandUnit);
  const pen = (width = rules.lineWidth.nominal) => new Pen(width);
  const pier = (width?: number) => pen(width).to(60, 200).straight(350);
  const steady = wordFor(kit, 'pace-to', { pace: 'steady' });
  const marked = (changed: readonly Band[], at = 150): Drawing => {
    const mark: Mark = { id: 'm', line: 'line0', at, bands: [...changed] };
    return { lines: pier().drawing().lines, marks: [mark] };
  };
  /** The bands of a word with the second one changed. */
  const second = (change: Partial<Band>) =>
    bandsOf(kit, steady).map((band, i) => (i === 1 ? { ...band, ...change } : band));

  test('a tidy drawing breaks no rule', () => {
    const drawing = pier().mark(150, steady, unit).drawing();
    expect(plainFindings(ruleContext(SHEET, drawing, kit)).map((finding) => finding.rule)).toEqual([]);
  });

  test('R-line-width', () => {
    const { least, most } = rules.lineWidth;
    for (const width of [least, most]) expect(said('R-line-width', kit, pier(width).drawing())).toEqual([]);
    expect(said('R-line-width', kit, pier(least - 0.1).drawing())).toEqual([
      { severity: 'untidy', allowed: least },
    ]);
    expect(said('R-line-width', kit, pier(most + 0.1).drawing())).toEqual([
      { severity: 'may-stop', allowed: most },
    ]);
  });

  test('R-corner', () => {
    const { untidyBelow, mayStopBelow } = rules.corner;
    const cornered = (angle: number) =>
      said(
        'R-corner',
        kit,
        pen()
          .to(60, 200)
          .straight(150)
          .turn(180 - angle)
          .straight(120)
          .drawing(),
      );
    const allowed = degrees(untidyBelow);
    expect(cornered(degrees(untidyBelow) + 0.5)).toEqual([]);
    expect(cornered(degrees(untidyBelow) - 0.5)).toMatchObject([{ severity: 'untidy' }]);
    expect(cornered(degrees(mayStopBelow) + 0.5)).toMatchObject([{ severity: 'untidy' }]);
    expect(cornered(degrees(mayStopBelow) - 0.5)[0]!.allowed).toBeCloseTo(allowed, 6);
    expect(cornered(degrees(mayStopBelow) - 0.5)).toMatchObject([{ severity: 'may-stop' }]);
  });

  test('R-curve-radius', () => {
    const curved = (radius: number) =>
      said('R-curve-radius', kit, pen().to(60, 200).straight(150).arc(radius, 90).straight(80).drawing());
    expect(curved(rules.curveRadius)).toEqual([]);
    expect(curved(rules.curveRadius - 0.1)).toMatchObject([{ allowed: rules.curveRadius }]);
  });

  test('R-clearance', () => {
    const beside = (apart: number): Drawing => {
      const other: Line = {
        ...pen()
          .to(150, 200 + apart)
          .straight(100).lines[0]!,
        id: 'other',
      };
      return { lines: [...pier().lines, other], marks: [] };
    };
    expect(said('R-clearance', kit, beside(rules.clearance))).toEqual([]);
    expect(said('R-clearance', kit, beside(rules.clearance - 0.1))).toMatchObject([
      { allowed: rules.clearance },
    ]);
  });

  test('R-margin', () => {
    const along = (gap: number) => said('R-margin', kit, pen().to(60, gap).straight(350).drawing());
    expect(along(rules.sheetMargin)).toEqual([]);
    expect(along(rules.sheetMargin - 0.1)).toEqual([{ severity: 'untidy', allowed: rules.sheetMargin }]);
  });

  test('R-before-mark', () => {
    const cornerFor = (room: number) => {
      const cornered = pen().to(60, 200).straight(150).turn(80).straight(150);
      return said('R-before-mark', kit, cornered.mark(150 + room, steady, unit).drawing());
    };
    expect(cornerFor(rules.beforeMark)).toEqual([]);
    expect(cornerFor(rules.beforeMark - 0.1)).toEqual([{ severity: 'may-stop', allowed: rules.beforeMark }]);
  });

  test('R-after-mark', () => {
    const left = wordFor(kit, 'choose', { way: 'left' });
    const crossed = (word: string, room: number) => {
      const crossing = pen().to(260, 100, 90).straight(200).to(60, 200).straight(350);
      return said('R-after-mark', kit, crossing.mark(200 - room - lengthOf(kit, word), word, unit).drawing());
    };
    const ready = rules.actionReady[robot.startPace];
    expect(crossed(left, ready)).toEqual([]);
    expect(crossed(left, ready - 0.1)).toEqual([{ severity: 'may-stop', allowed: ready }]);
    expect(crossed(steady, rules.afterMark)).toEqual([]);
    expect(crossed(steady, rules.afterMark - 0.1)).toEqual([
      { severity: 'untidy', allowed: rules.afterMark },
    ]);
  });

  test('R-band-count', () => {
    const ink = (n: number) => kit.inks[n % kit.inks.length]!.id;
    const many = Array.from({ length: bands.most + 1 }, (_, i) => ink(i)).join('');
    expect(said('R-band-count', kit, marked(bandsOf(kit, many.slice(1))))).toEqual([]);
    expect(said('R-band-count', kit, marked(bandsOf(kit, many)))).toMatchObject([{ allowed: bands.most }]);
    expect(said('R-band-count', kit, marked(bandsOf(kit, ink(0))))).toMatchObject([{ allowed: bands.least }]);
  });

  test('R-band-length', () => {
    const long = (length: number) =>
      said('R-band-length', kit, marked(bandsOf(kit, steady).map((band) => ({ ...band, length }))));
    expect(long(bands.tidyLongest)).toEqual([]);
    expect(long(bands.tidyShortest)).toEqual([]);
    expect(long(bands.tidyLongest + 0.1)).toEqual([{ severity: 'untidy', allowed: bands.tidyLongest }]);
    expect(long(bands.tidyShortest - 0.1)).toEqual([{ severity: 'untidy', allowed: bands.tidyShortest }]);
    expect(long(bands.longest + 0.1)).toEqual([{ severity: 'may-stop', allowed: bands.longest }]);
    expect(long(bands.shortest - 0.1)).toEqual([{ severity: 'may-stop', allowed: bands.shortest }]);
  });

  test('R-band-equality', () => {
    // One band of n is longer by a share of their mean: u + d with mean u + d/n.
    const share = (off: number) => {
      const n = steady.length;
      const longer = (robot.bandUnit * off * n) / (n - 1 - off);
      return said('R-band-equality', kit, marked(second({ length: robot.bandUnit + longer })));
    };
    expect(share(bands.equalWithin - 0.01)).toEqual([]);
    expect(share(bands.equalWithin + 0.01)).toMatchObject([{ allowed: bands.equalWithin }]);
  });

  test('R-band-gap', () => {
    const gap = (white: number) => said('R-band-gap', kit, marked(second({ gap: white })));
    expect([...gap(bands.gap), ...gap(-bands.overlap)]).toEqual([]);
    expect(gap(bands.gap + 0.1)).toMatchObject([{ allowed: bands.gap }]);
    expect(gap(-bands.overlap - 0.1)).toMatchObject([{ allowed: bands.overlap }]);
  });

  test('R-unknown-mark', () => {
    const lone = (length: number) =>
      said('R-unknown-mark', kit, marked([{ ink: kit.inks[0]!.id, length, gap: 0 }]));
    expect(lone(bands.colouredFrom)).toEqual([]);
    expect(lone(bands.colouredFrom - 0.1)).toMatchObject([{ allowed: bands.colouredFrom }]);
    expect(lone(bands.unknownFrom)).toMatchObject([{ allowed: bands.colouredFrom }]);
    expect(lone(bands.unknownFrom - 0.1)).toEqual([]);
    const known = said('R-unknown-mark', kit, marked(bandsOf(kit, steady)));
    const strange = kit.inks.map((ink) => ink.id).join('');
    expect(known).toEqual([]);
    expect(said('R-unknown-mark', kit, marked(bandsOf(kit, strange)))).toHaveLength(1);
  });

  test('R-mark-on-curve', () => {
    const bent = (radius: number) =>
      said(
        'R-mark-on-curve',
        kit,
        pen().to(60, 200).straight(80).arc(radius, 100).straight(40).mark(110, steady, unit).drawing(),
      );
    expect(bent(rules.straightFrom + 0.5)).toEqual([]);
    expect(bent(rules.straightFrom - 0.5)).toMatchObject([{ allowed: rules.straightFrom }]);
  });
});
