import { describe, expect, it } from 'vitest';
import type { Place } from '../../../shared/documents/verdict.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { findingAt, lengths, markPlace, pointPlace } from '../../../shared/rules/findings.ts';
import { ruleContext } from '../../../shared/rules/rules.ts';
import { drawn, line, mark, PIER, SHEET } from './setting.ts';

const said = { severity: 'untidy', ...lengths(10, 20), remedy: 'move-inside' } as const;
const idAt = (place: Place) => findingAt('R-margin', place, said).id;

describe('findingAt', () => {
  it('has an id of its rule and its place, to a tenth of a millimetre', () => {
    expect(idAt(pointPlace({ x: 12.34, y: 150 }))).toBe('R-margin@12.3,150');
    expect(idAt(pointPlace({ x: 12.36, y: -0.04 }))).toBe('R-margin@12.4,0');
    expect(idAt({ kind: 'stretch', at: { x: 1, y: 2 }, line: 'a', from: 3, to: 4 })).toBe('R-margin@1,2');
  });

  it('has the mark for a place, where it is about one, and the variant where there is one', () => {
    const place = { kind: 'mark', at: { x: 1, y: 2 }, mark: 'm7' } as const;
    expect(idAt(place)).toBe('R-margin@m7');
    expect(findingAt('R-loose-end', place, { ...said, variant: 'gap' }).id).toBe('R-loose-end.gap@m7');
  });

  it('carries what was said, and what to do as a code', () => {
    const place = pointPlace({ x: 5, y: 6 });
    expect(findingAt('R-margin', place, said)).toEqual({
      id: 'R-margin@5,6',
      rule: 'R-margin',
      severity: 'untidy',
      measured: 10,
      allowed: 20,
      unit: 'mm',
      place: { kind: 'point', at: { x: 5, y: 6 } },
      remedy: { code: 'move-inside' },
    });
  });
});

describe('markPlace', () => {
  const placeOf = (id: string, at: number) => {
    const other = line('other', [40, 40], [260, 40]);
    const drawing = drawn([other, PIER], [mark('low', 'pier', at, 'CA'), mark('high', 'other', at, 'CA')]);
    const { track } = ruleContext(SHEET, drawing, DEMO_KIT);
    return markPlace(track, track.layout.marks.find((m) => m.id === id)!);
  };

  it('is the middle of the mark on its own line', () => {
    expect(placeOf('low', 60)).toEqual({ kind: 'mark', at: { x: 105.5, y: 100 }, mark: 'low' });
    expect(placeOf('high', 60)).toEqual({ kind: 'mark', at: { x: 105.5, y: 40 }, mark: 'high' });
  });

  it('is the end of the line, where the middle hangs over', () => {
    expect(placeOf('low', 218)).toMatchObject({ at: { x: 260, y: 100 } });
  });
});
