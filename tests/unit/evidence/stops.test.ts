import { describe, expect, it } from 'vitest';
import { stopsOf } from '../../../shared/evidence/stops.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { actionKey } from '../../../shared/judge/questions.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { poseAt } from '../../../shared/picture/replay.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { challengeOf } from '../../disturbed.ts';

const challenge = challengeOf('one-fast-stretch');
const { sheet, kit, model } = challenge;
const [trace] = judge(challenge, model!, 'live').traces;
const layout = layOut(sheet, model!.drawing);
const stops = stopsOf(trace!, layout, kit);

describe('stopsOf the maker’s drawing of one fast stretch: faster, faster, steady', () => {
  it('has one stop a reading, in order, each before its reading and not before the one before', () => {
    expect(stops.map(({ word }) => word)).toEqual(['CA', 'CA', 'AVA']);
    stops.forEach(({ at, readAt }, i) => {
      expect(at).toBeLessThan(readAt);
      expect(at).toBeGreaterThanOrEqual(stops[i - 1]?.readAt ?? 0);
    });
  });

  it('stands with its bar on plain line, 5 to 15 mm before the first band', () => {
    for (const { at, mark } of stops) {
      const { at: axle, heading } = poseAt(trace!, at);
      const bar = { x: axle.x + heading.x * kit.robot.barAhead, y: axle.y + heading.y * kit.robot.barAhead };
      const laid = layout.marks.find(({ id }) => id === mark)!;
      const { path } = layout.lines.find(({ id }) => id === laid.line)!;
      // The drawing begins in the berth, so the way along its one line is the way of the robot.
      const first = path.pieces[0]!;
      const along = laid.from - Math.hypot(bar.x - first.from.x, bar.y - first.from.y);
      if (laid.to > first.length) continue;
      expect(along).toBeGreaterThan(5);
      expect(along).toBeLessThan(15);
    }
  });

  it('asks with the right row and those of known mistakes, in the order of the chart', () => {
    // By the demo kit's chart: A C slower from the other side, V A take right with one ink mistaken, C V pass by the first colour.
    expect(
      stops[0]!.answers.map(({ action, right, mistake }) => [actionKey(action!), right, mistake]),
    ).toEqual([
      ['pace-by:1', true, null],
      ['pace-by:-1', false, 'same-from-both-sides'],
      ['choose:right', false, 'one-ink-mistaken'],
      ['nothing', false, 'first-colour-counts'],
    ]);
  });

  it('has one right answer at each stop, and no two alike', () => {
    for (const { answers } of stops) {
      expect(answers.filter(({ right }) => right)).toHaveLength(1);
      const keys = answers.map(({ action }) => action && actionKey(action));
      expect(new Set(keys).size).toBe(keys.length);
    }
  });
});

describe('a mark that the chart lacks', () => {
  it('is right where nobody says what it does, and comes last', () => {
    const chart = DEMO_KIT.chart.filter(({ word }) => word !== 'CA');
    const [first] = stopsOf(trace!, layout, { ...kit, chart });
    // The run was driven with the whole chart; its reading says what it did.
    expect(first!.answers.some(({ right, action }) => right && action !== null)).toBe(true);
    const unread = { ...trace!, events: trace!.events.map((e) => (e.kind === 'read' ? unknown(e) : e)) };
    const { answers } = stopsOf(unread, layout, { ...kit, chart })[0]!;
    expect(answers.at(-1)).toEqual({ action: null, right: true, mistake: null });
    expect(answers.length).toBeGreaterThan(1);
  });
});

function unknown<E extends { readonly action?: unknown }>(event: E): Omit<E, 'action'> {
  const { action: _, ...rest } = event;
  return rest;
}
