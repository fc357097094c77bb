import { describe, expect, it } from 'vitest';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { berth, drawn, findings, line, mark, mended, of, PIER, withRobot } from './setting.ts';

const finish = { finish: berth(260, 100) };
const rules = (...args: Parameters<typeof findings>) => findings(...args).map(({ rule }) => rule);

describe('R-loose-end: a gap', () => {
  /** Out of the berth to (150, 100), and on to the finish from `mm` further, `aside` beside it. */
  const parted = (mm: number, aside = 0) => [
    line('a', [40, 100], [150, 100]),
    line('b', [150 + mm, 100 + aside], [260, 100 + aside]),
  ];

  it('R-loose-end is silent where lines meet within 3 mm, and where they are 15 mm apart', () => {
    for (const mm of [0, 3, 15]) expect(of('R-loose-end', drawn(parted(mm)))).toEqual([]);
  });

  it('R-loose-end finds a gap of 8 mm, and no other rule says it again', () => {
    const all = findings(drawn(parted(8)), { sheet: finish });
    expect(all).toMatchObject([
      {
        rule: 'R-loose-end',
        variant: 'gap',
        measured: 8,
        severity: 'may-stop',
        place: { at: { x: 154, y: 100 } },
      },
    ]);
  });

  it('R-loose-end finds a gap up to the clearance', () => {
    for (const mm of [3.1, 14.9])
      expect(rules(drawn(parted(mm)), { sheet: finish })).toEqual(['R-loose-end']);
  });

  it('R-loose-end: ends that pass one another are no gap but two lines', () => {
    // 3 mm on and 8 mm aside: 69 degrees beside where the line aims.
    expect(rules(drawn(parted(3, 8)), { sheet: finish })).toContain('R-clearance');
    expect(of('R-loose-end', drawn(parted(3, 8)))).toEqual([]);
    // 8 mm on and 3 mm aside: √73 = 8.54 mm.
    expect(of('R-loose-end', drawn(parted(8, 3)))).toMatchObject([{ variant: 'gap', measured: 8.54 }]);
  });

  it('R-loose-end finds a gap in a ring of one line', () => {
    // A square of 60 mm with its last side 8 mm too short.
    const ring = line('ring', [150, 100], [210, 100], [210, 160], [150, 160], [150, 108]);
    const lead = line('lead', [40, 100], [100, 100]);
    expect(of('R-loose-end', drawn([lead, ring]))).toEqual([]);
    const straight = line('ring', [180, 100], [210, 100], [210, 160], [150, 160], [150, 100], [172, 100]);
    expect(of('R-loose-end', drawn([lead, straight]))).toMatchObject([{ variant: 'gap', measured: 8 }]);
  });

  it('R-loose-end says nothing of a gap between given lines, but of one beside the team’s', () => {
    const [a, b] = parted(8);
    expect(of('R-loose-end', drawn([]), { sheet: { given: drawn([a!, b!]) } })).toEqual([]);
    expect(of('R-loose-end', drawn([b!]), { sheet: { given: drawn([a!]) } })).toMatchObject([
      { measured: 8 },
    ]);
  });

  it('R-loose-end is mended by drawing one end on to the other', () => {
    const better = mended(of('R-loose-end', drawn(parted(8)))[0]);
    expect(better.lines[0]?.pieces).toEqual([
      { to: { x: 150, y: 100 }, bulge: 0 },
      { to: { x: 158, y: 100 }, bulge: 0 },
    ]);
    expect(findings(better, { sheet: finish })).toEqual([]);
  });

  it('R-loose-end: marks stay in their places where the line is drawn on from its beginning', () => {
    const given = drawn([line('a', [40, 100], [150, 100])]);
    const marked = drawn([line('b', [158, 100], [260, 100])], [mark('m', 'b', 40, 'CA')]);
    const better = mended(of('R-loose-end', marked, { sheet: { given } })[0]);
    expect(better.lines[0]?.from).toEqual({ x: 150, y: 100 });
    expect(better.marks[0]?.at).toBe(48);
  });
});

describe('R-loose-end: a dead end', () => {
  const branch = line('branch', [150, 100], [150, 40]);

  it('R-loose-end finds a branch that ends in mid-sheet beside a way to the finish', () => {
    expect(findings(drawn([PIER, branch]), { sheet: finish })).toMatchObject([
      { rule: 'R-loose-end', variant: 'loose-end', severity: 'untidy', place: { at: { x: 150, y: 40 } } },
    ]);
  });

  it('R-loose-end is silent while no line leads to the finish, and where there is none', () => {
    const short = line('short', [40, 100], [200, 100]);
    expect(rules(drawn([short, branch]), { sheet: finish })).toEqual(['R-finish-reachable']);
    expect(findings(drawn([PIER, branch]))).toEqual([]);
  });

  it('R-loose-end is silent where no robot comes', () => {
    // Straight on at the junction.
    const marks = [mark('m', 'pier', 60, 'ACA')];
    expect(findings(drawn([PIER, branch], marks), { sheet: finish })).toEqual([]);
    const elsewhere = line('elsewhere', [100, 160], [200, 160]);
    expect(findings(drawn([PIER, elsewhere]), { sheet: finish })).toEqual([]);
  });

  it('R-loose-end is silent where robots turn round at an end', () => {
    const kit = withRobot({ looseEnd: 'turn-back' });
    expect(of('R-loose-end', drawn([PIER, branch]), { sheet: finish, kit })).toEqual([]);
  });

  it('R-loose-end lets a line end in an area, where something is to happen', () => {
    const polygon = [
      { x: 130, y: 25 },
      { x: 170, y: 25 },
      { x: 170, y: 60 },
      { x: 130, y: 60 },
    ];
    const areas = [{ id: 'landing', name: { en: 'landing' }, polygon }];
    expect(findings(drawn([PIER, branch]), { sheet: { ...finish, areas } })).toEqual([]);
  });

  it('R-loose-end leaves an end close to another line to R-clearance', () => {
    const hook = line('hook', [150, 100], [150, 40], [200, 40], [200, 92]);
    expect(rules(drawn([PIER, hook]), { sheet: finish })).toEqual(['R-clearance']);
  });

  it('R-loose-end says nothing of given lines', () => {
    const given = drawn([{ ...branch, id: 'given' }]);
    expect(of('R-loose-end', drawn([PIER]), { sheet: { ...finish, given } })).toEqual([]);
  });
});

describe('R-loose-end: towards the edge', () => {
  /** Two marks "faster" bring the pace from steady to fast. */
  const twice = [mark('a', 'pier', 40, 'CA'), mark('b', 'pier', 90, 'CA')];

  it('R-loose-end: an end aimed at an edge within 60 mm is a caution at pace fast only', () => {
    const pier = line('pier', [40, 100], [250, 100]);
    expect(of('R-loose-end', drawn([pier], twice))).toMatchObject([
      { variant: 'edge', measured: 50, allowed: 60, severity: 'untidy' },
    ]);
    expect(of('R-loose-end', drawn([pier], twice.slice(1)))).toEqual([]);
    const far = line('pier', [40, 100], [240, 100]);
    expect(of('R-loose-end', drawn([far], twice))).toEqual([]);
  });

  it('R-loose-end: how much paper it wants ahead is the kit’s to say', () => {
    const pier = line('pier', [40, 100], [250, 100]);
    const kit = { ...DEMO_KIT, rules: { ...DEMO_KIT.rules, endFromEdge: 80 } };
    expect(of('R-loose-end', drawn([pier], twice), { kit })).toMatchObject([{ measured: 50, allowed: 80 }]);
    const near = { ...DEMO_KIT, rules: { ...DEMO_KIT.rules, endFromEdge: 50 } };
    expect(of('R-loose-end', drawn([pier], twice), { kit: near })).toEqual([]);
  });

  it('R-loose-end lets a line end in the finish berth at any pace', () => {
    expect(findings(drawn([PIER], twice), { sheet: finish })).toEqual([]);
  });
});

describe('R-loose-end: the paper ahead of an end', () => {
  /** 100 mm of line that ends at a place, led there at pace fast in steps of 80 and 60 mm, or straight. */
  const ahead = (x: number, y: number, dx: number, dy: number) => {
    const start = berth(x - 100 * dx, y - 100 * dy, Math.atan2(dy, dx));
    const lead = line('lead', [start.at.x, start.at.y], [x, y]);
    const kit = withRobot({ startPace: 'fast' });
    return of('R-loose-end', drawn([lead]), { sheet: { start }, kit }).map(({ measured }) => measured);
  };

  it('is measured straight on to each edge of a sheet of 300 by 200 mm', () => {
    expect([ahead(250, 100, 1, 0), ahead(50, 100, -1, 0)]).toEqual([[50], [50]]);
    expect([ahead(150, 160, 0, 1), ahead(150, 35, 0, -1)]).toEqual([[40], [35]]);
  });

  it('is measured on a slant to the edge that comes first', () => {
    // 0.8 across and 0.6 along: 30 mm down are 50 mm of way, 40 mm across are 50 mm of way.
    expect([ahead(170, 170, 0.8, 0.6), ahead(130, 170, -0.8, 0.6)]).toEqual([[50], [50]]);
    expect([ahead(170, 30, 0.8, -0.6), ahead(130, 30, -0.8, -0.6)]).toEqual([[50], [50]]);
    expect([ahead(260, 100, 0.8, 0.6), ahead(40, 100, -0.8, 0.6)]).toEqual([[50], [50]]);
    expect([ahead(260, 100, 0.8, -0.6), ahead(40, 100, -0.8, -0.6)]).toEqual([[50], [50]]);
    expect([ahead(170, 163, 0.8, 0.6), ahead(251, 100, 0.8, 0.6)]).toEqual([[], []]);
  });

  it('counts at loose ends only: not at corners, nor where a gap is said', () => {
    const kit = withRobot({ startPace: 'fast' });
    const elbow = line('elbow', [40, 100], [250, 100], [250, 30]);
    expect(of('R-loose-end', drawn([elbow]), { kit })).toMatchObject([{ variant: 'edge', measured: 30 }]);
    const gap = [line('a', [40, 100], [245, 100]), line('b', [253, 100], [265, 100])];
    expect(of('R-loose-end', drawn(gap), { kit })).toMatchObject([{ variant: 'gap', measured: 8 }]);
  });
});

describe('R-loose-end: what counts as a dead end', () => {
  const branch = line('branch', [150, 100], [150, 40]);

  it('one at which robots come on tiptoe, too', () => {
    const kit = withRobot({ startPace: 'creep' });
    expect(of('R-loose-end', drawn([PIER, branch]), { sheet: finish, kit })).toHaveLength(1);
  });

  it('not an end on the rim of a berth, but one outside of it', () => {
    const ends = (y: number) =>
      of('R-loose-end', drawn([PIER, line('branch', [260, 100], [260, y])]), { sheet: finish });
    expect(ends(85)).toEqual([]);
    expect(ends(84)).toHaveLength(1);
  });

  it('not one nearer to another line than the clearance', () => {
    const ends = (y: number) =>
      of('R-loose-end', drawn([PIER, line('hook', [150, 100], [150, 40], [220, 40], [220, y])]), {
        sheet: finish,
      });
    expect([ends(85), ends(85.1)].map((found) => found.length)).toEqual([1, 0]);
  });
});
