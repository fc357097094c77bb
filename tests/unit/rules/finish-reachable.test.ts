import { describe, expect, it } from 'vitest';
import { berth, drawn, findings, line, mark, of, PIER, withRobot } from './setting.ts';

const finish = { sheet: { finish: berth(260, 100) } };

describe('R-finish-reachable', () => {
  it('R-finish-reachable is silent where the line ends on the rim of the berth', () => {
    const short = line('short', [40, 100], [245, 100]);
    expect(of('R-finish-reachable', drawn([PIER]), finish)).toEqual([]);
    expect(of('R-finish-reachable', drawn([short]), finish)).toEqual([]);
  });

  it('R-finish-reachable finds a line that stops 10 mm before the rim', () => {
    const short = line('short', [40, 100], [235, 100]);
    expect(of('R-finish-reachable', drawn([short]), finish)).toMatchObject([
      { measured: 25, allowed: 15, unit: 'mm', place: { at: { x: 260, y: 100 } } },
    ]);
  });

  it('R-finish-reachable is silent about a berth that robots only set out from', () => {
    const short = line('short', [40, 100], [235, 100]);
    const sheet = { finish: { ...berth(260, 100), startOnly: true } };
    expect(of('R-finish-reachable', drawn([short]), { sheet })).toEqual([]);
  });

  it('R-finish-reachable leaves a gap to R-loose-end, unless it is as wide as between separate lines', () => {
    const gap = (mm: number) => [line('a', [40, 100], [150, 100]), line('b', [150 + mm, 100], [260, 100])];
    for (const mm of [3, 14.9]) expect(of('R-finish-reachable', drawn(gap(mm)), finish)).toEqual([]);
    expect(of('R-finish-reachable', drawn(gap(15)), finish)).toMatchObject([
      { measured: 110, severity: 'untidy' },
    ]);
  });

  it('R-finish-reachable goes over gap after gap', () => {
    const parts = [
      line('a', [40, 100], [100, 100]),
      line('b', [108, 100], [160, 100]),
      line('c', [168, 100], [260, 100]),
    ];
    expect(of('R-finish-reachable', drawn(parts), finish)).toEqual([]);
    expect(of('R-finish-reachable', drawn(parts.slice(0, 2)), finish)).toMatchObject([{ measured: 100 }]);
    expect(of('R-finish-reachable', drawn([parts[0]!, parts[2]!]), finish)).toMatchObject([
      { measured: 160 },
    ]);
  });

  it('R-finish-reachable goes every way at a junction, but not back', () => {
    // The branch leaves the pier against the way of travel; robots take it all the same, as an arm.
    const pier = line('pier', [40, 100], [200, 100]);
    const branch = line('branch', [150, 100], [100, 40], [260, 40]);
    expect(of('R-finish-reachable', drawn([pier, branch]), { sheet: { finish: berth(260, 40) } })).toEqual(
      [],
    );
  });

  it('R-finish-reachable doesn’t look behind the start, unless robots turn round', () => {
    const through = line('through', [100, 100], [260, 100]);
    const sheet = { start: berth(180, 100), finish: berth(110, 100) };
    expect(of('R-finish-reachable', drawn([through]), { sheet })).toMatchObject([{ measured: 70 }]);
    const turning = { sheet, kit: withRobot({ looseEnd: 'turn-back' }) };
    expect(of('R-finish-reachable', drawn([through]), turning)).toEqual([]);
    const turned = drawn([through], [mark('m', 'through', 110, 'VC')]);
    expect(of('R-finish-reachable', turned, { sheet })).toEqual([]);
  });

  it('R-finish-reachable leaves a start without line to R-start-on-line', () => {
    const aside = drawn([line('aside', [100, 160], [260, 160])]);
    expect(findings(aside, finish).map((f) => f.rule)).toEqual(['R-start-on-line']);
  });
});
