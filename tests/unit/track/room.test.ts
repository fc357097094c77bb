import { describe, expect, it } from 'vitest';
import type { Line, Mark } from '../../../shared/documents/design.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { plainAfter, plainBefore, wayToJunction } from '../../../shared/track/room.ts';
import { drawn, line, mark, SHEET } from '../rules/setting.ts';

function rooms(lines: Line[], marks: Mark[], id = 'm') {
  const track = buildTrack(layOut(SHEET, drawn(lines, marks)), DEMO_KIT);
  const edge = track.edges.find((e) => e.along && e.marks.some((m) => m.mark.id === id))!;
  const on = edge.marks.find((m) => m.mark.id === id)!;
  const said = ({ length, until }: { length: number; until: string }) => [
    Math.round(length * 100) / 100,
    until,
  ];
  return {
    before: said(plainBefore(track, edge.index, on, 50)),
    after: said(plainAfter(track, edge.index, on, 50)),
    junction: said(wayToJunction(track, edge.index, on)),
  };
}

describe('plain line beside a mark', () => {
  it('ends at a corner and at a loose end', () => {
    const elbow = line('l', [40, 100], [140, 100], [140, 180]);
    expect(rooms([elbow], [mark('m', 'l', 60, 'CA')])).toEqual({
      before: [60, 'end'],
      after: [29, 'corner'],
      junction: [109, 'end'],
    });
  });

  it('ends at another mark, and at a curve under 50 mm', () => {
    const curve = line('l', [40, 60], [140, 60], [180, 100, Math.SQRT2 - 1], [180, 180]);
    const marks = [mark('a', 'l', 20, 'CA'), mark('m', 'l', 60, 'CA')];
    expect(rooms([curve], marks)).toMatchObject({ before: [29, 'mark'], after: [29, 'curve'] });
  });

  it('goes on through a joint, and to the junction through corners', () => {
    const lines = [
      line('l', [40, 100], [100, 100]),
      line('on', [100, 100], [160, 100], [160, 180]),
      line('across', [120, 140], [240, 140]),
    ];
    expect(rooms(lines, [mark('m', 'l', 30, 'CA')])).toMatchObject({
      after: [79, 'corner'],
      junction: [119, 'junction'],
    });
  });
});
