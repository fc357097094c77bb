import { describe, expect, it } from 'vitest';
import type { Line, Mark } from '../../../shared/documents/design.ts';
import { type Kit, PACES } from '../../../shared/documents/kit.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { startOn } from '../../../shared/track/start.ts';
import { travelFrom } from '../../../shared/track/travel.ts';
import { bandsOf, KITS, lengthOf, wordFor } from '../../kits.ts';
import { drawn, line, mark, SHEET } from '../rules/setting.ts';

const PIER = line('pier', [40, 100], [260, 100]);

function travelled(kit: Kit, lines: Line[], marks: Mark[] = []) {
  const track = buildTrack(layOut(SHEET, drawn(lines, marks)), kit);
  const start = startOn(track, SHEET.start, kit);
  if (start.kind !== 'on') throw new Error('the start has no line');
  return { track, travel: travelFrom(track, kit, [{ edge: start.edge, from: start.bar }]) };
}

/** Marks in the directions in which they are met, with the pace: `a> steady`. */
function met(kit: Kit, lines: Line[], marks: Mark[]): string[] {
  const { track, travel } = travelled(kit, lines, marks);
  return track.edges.flatMap((edge) =>
    edge.marks.flatMap((m) => {
      const pace = travel.paceAt(edge.index, m);
      return pace === undefined ? [] : [`${m.mark.id}${m.along ? '>' : '<'} ${PACES[pace]}`];
    }),
  );
}

const withRobot = (kit: Kit, change: Partial<Kit['robot']>): Kit => ({
  ...kit,
  robot: { ...kit.robot, ...change },
});

describe.each(KITS)('travelFrom with the kit $id', (kit) => {
  const signal = wordFor(kit, 'signal');
  const onPier = (id: string, at: number, word: string) => mark(id, 'pier', at, bandsOf(kit, word));

  it('drives out of the berth, not back', () => {
    expect(travelled(kit, [PIER]).travel.driven).toEqual([true, false]);
  });

  it('comes back from a loose end at which the robot turns', () => {
    const turning = withRobot(kit, { looseEnd: 'turn-back' });
    expect(travelled(turning, [PIER]).travel.driven).toEqual([true, true]);
  });

  it('goes faster from a mark on; slower only after the room that it needs', () => {
    const slower = wordFor(kit, 'pace-by', { steps: -1 });
    const slowed = 60 + lengthOf(kit, slower);
    const slow = slowed + kit.rules.actionReady.brisk;
    const marks = [
      onPier('a', 30, wordFor(kit, 'pace-by', { steps: 1 })),
      onPier('b', 60, slower),
      onPier('c', slow - 1, signal),
      onPier('d', slow + 25, signal),
    ];
    expect(met(kit, [PIER], marks)).toEqual(['a> steady', 'b> brisk', 'c> brisk', 'd> steady']);
    const later = [...marks.slice(0, 2), onPier('c', slow + 0.1, signal)];
    expect(met(kit, [PIER], later)).toEqual(['a> steady', 'b> brisk', 'c> steady']);
  });

  it('takes the arm that a mark chose, once', () => {
    // Two crossings; "take left" before the first.
    const lines = [PIER, line('one', [140, 60], [140, 140]), line('two', [200, 60], [200, 140])];
    const left = onPier('m', 45, wordFor(kit, 'choose', { way: 'left' }));
    const { track, travel } = travelled(kit, lines, [left]);
    const driven = track.edges.filter((edge) => travel.driven[edge.index]).map((edge) => edge.length);
    // 100 mm of pier, then the 40 mm that lead up; nothing beyond the first crossing ahead.
    expect(driven).toEqual([100, 40]);
  });

  it('goes every way but back at an unmarked junction, or straight on where the robot does', () => {
    const lines = [PIER, line('one', [140, 60], [140, 140])];
    const count = (unmarkedJunction: Kit['robot']['unmarkedJunction']) =>
      travelled(withRobot(kit, { unmarkedJunction }), lines).travel.driven.filter(Boolean).length;
    expect(count('any')).toBe(4);
    expect(count('straight')).toBe(2);
  });

  it('turns back at its mark and meets it again from the other side', () => {
    const marks = [
      onPier('a', 60, signal),
      onPier('t', 120, wordFor(kit, 'turn-back')),
      onPier('z', 180, signal),
    ];
    expect(met(kit, [PIER], marks)).toEqual(['a> steady', 't> steady', 't< steady', 'a< steady']);
  });

  it('ends at a park mark', () => {
    const marks = [onPier('p', 60, wordFor(kit, 'park')), onPier('z', 120, signal)];
    expect(met(kit, [PIER], marks)).toEqual(['p> steady']);
  });
});
