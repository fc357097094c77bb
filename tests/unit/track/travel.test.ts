import { describe, expect, it } from 'vitest';
import type { Line, Mark } from '../../../shared/documents/design.ts';
import { type Kit, PACES } from '../../../shared/documents/kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { startOn } from '../../../shared/track/start.ts';
import { travelFrom } from '../../../shared/track/travel.ts';
import { drawn, line, mark, SHEET, withRobot } from '../rules/setting.ts';

const PIER = line('pier', [40, 100], [260, 100]);

function travelled(lines: Line[], marks: Mark[] = [], kit: Kit = DEMO_KIT) {
  const track = buildTrack(layOut(SHEET, drawn(lines, marks)), kit);
  const start = startOn(track, SHEET.start, kit);
  if (start.kind !== 'on') throw new Error('the start has no line');
  return { track, travel: travelFrom(track, kit, [{ edge: start.edge, from: start.bar }]) };
}

/** Marks in the directions in which they are met, with the pace: `a> steady`. */
function met(lines: Line[], marks: Mark[], kit: Kit = DEMO_KIT): string[] {
  const { track, travel } = travelled(lines, marks, kit);
  return track.edges.flatMap((edge) =>
    edge.marks.flatMap((m) => {
      const pace = travel.paceAt(edge.index, m);
      return pace === undefined ? [] : [`${m.mark.id}${m.along ? '>' : '<'} ${PACES[pace]}`];
    }),
  );
}

describe('travelFrom', () => {
  it('drives out of the berth, not back', () => {
    expect(travelled([PIER]).travel.driven).toEqual([true, false]);
  });

  it('comes back from a loose end at which the robot turns', () => {
    const kit = withRobot({ looseEnd: 'turn-back' });
    expect(travelled([PIER], [], kit).travel.driven).toEqual([true, true]);
  });

  it('goes faster from a mark on; slower only after the room that it needs', () => {
    const marks = [
      mark('a', 'pier', 30, 'CA'),
      mark('b', 'pier', 60, 'AC'),
      mark('c', 'pier', 100, 'CVC'),
      mark('d', 'pier', 150, 'CVC'),
    ];
    // "Slower" ends at 71 at pace brisk, which asks for 45 mm: until 116.
    expect(met([PIER], marks)).toEqual(['a> steady', 'b> brisk', 'c> brisk', 'd> steady']);
  });

  it('takes the arm that a mark chose, once', () => {
    // Two crossings; "take left" before the first.
    const lines = [PIER, line('one', [140, 60], [140, 140]), line('two', [200, 60], [200, 140])];
    const { track, travel } = travelled(lines, [mark('m', 'pier', 50, 'AV')]);
    const driven = track.edges.filter((edge) => travel.driven[edge.index]).map((edge) => edge.length);
    // 100 mm of pier, then the 40 mm that lead up; nothing beyond the first crossing ahead.
    expect(driven).toEqual([100, 40]);
  });

  it('goes every way but back at an unmarked junction, or straight on where the robot does', () => {
    const lines = [PIER, line('one', [140, 60], [140, 140])];
    const count = (kit: Kit) => travelled(lines, [], kit).travel.driven.filter(Boolean).length;
    expect(count(DEMO_KIT)).toBe(4);
    expect(count(withRobot({ unmarkedJunction: 'straight' }))).toBe(2);
  });

  it('turns back at its mark and meets it again from the other side', () => {
    const marks = [mark('a', 'pier', 60, 'CVC'), mark('t', 'pier', 120, 'VC'), mark('z', 'pier', 180, 'CVC')];
    expect(met([PIER], marks)).toEqual(['a> steady', 't> steady', 't< steady', 'a< steady']);
  });

  it('ends at a park mark', () => {
    const marks = [mark('p', 'pier', 60, 'VAV'), mark('z', 'pier', 120, 'CVC')];
    expect(met([PIER], marks)).toEqual(['p> steady']);
  });
});
