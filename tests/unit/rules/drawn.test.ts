import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../shared/documents/design.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { viewOf } from '../../../shared/rules/context.ts';
import { keepsMarks, linesOn, stretchPlace, withLine, withSlidMark } from '../../../shared/rules/drawn.ts';
import { ruleContext } from '../../../shared/rules/rules.ts';
import { drawn, line, mark, NOTHING, PIER, SHEET } from './setting.ts';

const viewIn = (drawing: Drawing) => viewOf(ruleContext(SHEET, drawing, DEMO_KIT));
const BACK = line('back', [260, 100], [40, 100]);
const OTHER = line('other', [40, 130], [260, 130]);

describe('stretchPlace', () => {
  const on = (drawing: Drawing, from = 30, to = 90) =>
    stretchPlace(viewIn(drawing), pathOf(PIER), from, to, { x: 1, y: 2 });

  it('is a stretch of the line that was drawn there, from less way to more', () => {
    const place = { kind: 'stretch', at: { x: 1, y: 2 } };
    expect(on(drawn([OTHER, PIER]))).toEqual({ ...place, line: 'pier', from: 30, to: 90 });
    expect(on(drawn([PIER, OTHER]))).toEqual({ ...place, line: 'pier', from: 30, to: 90 });
    expect(on(drawn([BACK]))).toEqual({ ...place, line: 'back', from: 130, to: 190 });
  });

  it('is of the line under its middle, where two make up the form’s', () => {
    const [near, far] = [line('near', [40, 100], [90, 100]), line('far', [90, 100], [260, 100])];
    expect(on(drawn([near, far]))).toMatchObject({ line: 'far', from: 0, to: 40 });
    expect(on(drawn([near, far]), 10, 70)).toMatchObject({ line: 'near', from: 10, to: 50 });
    expect(on(drawn([near, far]), 0, 102)).toMatchObject({ line: 'far', to: 52 });
  });

  it('is a point where nothing was drawn', () => {
    expect(on(NOTHING)).toEqual({ kind: 'point', at: { x: 1, y: 2 } });
  });
});

describe('linesOn', () => {
  it('are the drawn lines whose middles lie on one of the form, either way round', () => {
    const ids = (...lines: ReturnType<typeof line>[]) =>
      linesOn(drawn(lines), pathOf(PIER)).map(({ id }) => id);
    expect(ids(OTHER, BACK)).toEqual(['back']);
    expect(ids(line('part', [60, 100], [90, 100]), line('off', [60, 100.03], [90, 100.03]))).toEqual([
      'part',
    ]);
    // They cross it, and their ends lie on it, but not their middles.
    expect(ids(line('across', [150, 60], [150, 145]), line('arch', [60, 100], [90, 100, 0.5]))).toEqual([]);
  });
});

describe('withSlidMark', () => {
  const slid = (drawing: Drawing, id: string, shift: number) => {
    const view = viewIn(drawing);
    return withSlidMark(view, view.track.layout.marks.find((m) => m.id === id)!, shift)?.marks;
  };
  const M = mark('m', 'pier', 60, 'CA');

  it('moves that mark alone along its line, to the step of a file', () => {
    const other = mark('n', 'other', 60, 'CA');
    expect(slid(drawn([OTHER, PIER], [other, M]), 'm', 20.004)).toEqual([other, { ...M, at: 80 }]);
    expect(slid(drawn([OTHER, PIER], [other, M]), 'n', -20)).toEqual([{ ...other, at: 40 }, M]);
  });

  it('moves it back where its line was drawn against the form', () => {
    const [along, against] = [PIER, BACK].map(
      (on) => slid(drawn([on], [{ ...M, line: on.id }]), 'm', 20)![0]!.at,
    );
    expect([along, against]).toEqual([80, 40]);
  });

  it('keeps it on its line: 0 is the first place, its length from the end the last', () => {
    // Two bands are 11 mm long, the pier 220.
    const on = (shift: number) => slid(drawn([PIER], [M]), 'm', shift)?.[0]?.at;
    expect([on(-60), on(-60.01), on(149), on(149.01)]).toEqual([0, undefined, 209, undefined]);
  });

  it('moves a mark of the team’s on a given line', () => {
    const given = drawn([PIER]);
    const view = viewOf(ruleContext({ ...SHEET, given }, drawn([], [M]), DEMO_KIT));
    expect(withSlidMark(view, view.track.layout.marks[0]!, 5)?.marks).toEqual([{ ...M, at: 65 }]);
  });
});

describe('withLine', () => {
  it('moves the marks beyond a way by what the line gets longer', () => {
    const marks = [mark('a', 'pier', 30, 'CA'), mark('b', 'pier', 90, 'CA'), mark('c', 'other', 90, 'CA')];
    const longer = line('pier', [40, 100], [100, 100], [100, 110], [260, 110]);
    const changed = withLine(drawn([PIER, OTHER], marks), PIER, longer, 60);
    expect(changed.lines).toEqual([longer, OTHER]);
    expect(changed.marks.map(({ at }) => at)).toEqual([30, 100, 90]);
  });
});

describe('keepsMarks', () => {
  const keeps = (at: number, on = 'pier') => keepsMarks(drawn([OTHER, PIER], [mark('m', on, at, 'CA')]));

  it('is whether each mark begins on its line, both ends included', () => {
    expect([-0.01, 0, 220, 220.01].map((at) => keeps(at))).toEqual([false, true, true, false]);
  });

  it('asks nothing of marks on lines that are not drawn but given, except that they begin on them', () => {
    expect([-1, 0, 500].map((at) => keeps(at, 'given'))).toEqual([false, true, true]);
  });
});
