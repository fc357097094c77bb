import { describe, expect, it } from 'vitest';
import type { Ending, RunEvent, Trace } from '../../../shared/documents/trace.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { agrees } from '../../../shared/odds/agreement.ts';
import { buildTrack } from '../../../shared/track/graph.ts';
import { layOut } from '../../../shared/track/layout.ts';
import { Pen } from '../../sweeps/pen.ts';
import { run } from '../goals/hand-made.ts';
import { chainOn, FORK, fromStart, lighthouseAt, SHEET } from './tracks.ts';

const LIMIT = 60;
const track = buildTrack(layOut(FORK.sheet, FORK.drawing), DEMO_KIT);
const chain = () => chainOn(FORK);
const branch = (way: 'left' | 'right') => {
  const { first, forks } = chain();
  const { leads } = forks[0]!.branches.find((one) => one.way === way)!;
  if (leads.to === 'endless' || first.to === 'endless') throw new Error('both ways end');
  return first.time + leads.time;
};

const where = (t: number, x: number, y: number) => ({ t, x, y, way: 0, pace: 'steady' as const });
const decided = (
  took: 'left' | 'right',
  x = 160,
  y = 150,
  arms: ('left' | 'straight' | 'right')[] = ['left', 'right'],
) => ({ kind: 'junction', ...where(3, x, y), took, by: 'chance', arms }) satisfies RunEvent;
const finish = (t: number): RunEvent => ({ kind: 'finish', ...where(t, 328, 60) });
const end = (ending: Ending, t: number, x: number, y: number): RunEvent => ({
  kind: 'end',
  ...where(t, x, y),
  ending,
});

const arrives = (t: number, ...events: RunEvent[]) =>
  run([...events, finish(t), end('finished', t + 0.5, 340, 60)]);
const stops = (t: number, x: number, y: number) => run([decided('right'), end('stopped', t + 0.5, x, y)]);
const agree = (...runs: Trace[]) => agrees(chain(), track, runs, LIMIT);

describe('agrees', () => {
  it('with runs that take the same ways to the same ends in the same time', () => {
    expect(agree(arrives(branch('left'), decided('left')), stops(branch('right'), 160, 210))).toBe(true);
    expect(agree(arrives(branch('left') + 0.2, decided('left')))).toBe(true);
  });

  it('not with one that takes much longer', () => {
    expect(agree(arrives(branch('left') + 1, decided('left')))).toBe(false);
    expect(agree(arrives(branch('left') - 1, decided('left')))).toBe(false);
  });

  it('not with one that ends otherwise, elsewhere, or without arriving', () => {
    expect(agree(run([decided('left'), end('lost', branch('left') + 0.5, 340, 60)]))).toBe(false);
    expect(agree(stops(branch('right'), 160, 150))).toBe(false);
    expect(agree(run([decided('left'), end('finished', branch('left') + 0.5, 340, 60)]))).toBe(false);
  });

  it('not with one that decides where the chain does not, or less often, or among other ways', () => {
    const t = branch('left');
    expect(agree(arrives(t))).toBe(false);
    expect(agree(arrives(t, decided('left'), decided('left')))).toBe(false);
    expect(agree(arrives(t, decided('left', 160, 150, ['left', 'straight', 'right'])))).toBe(false);
  });

  it('passes over a corner that was taken for a junction', () => {
    expect(agree(arrives(branch('left'), decided('left'), decided('right', 160, 60)))).toBe(true);
  });

  it('takes a run whose time is up for one that the chain lets go on so long', () => {
    const late = run([decided('left'), end('time-up', 5, 160, 100)]);
    expect(agrees(chain(), track, [late], 5)).toBe(true);
    expect(agrees(chain(), track, [late], LIMIT)).toBe(false);
    // Before the fork, too.
    expect(agrees(chain(), track, [run([end('time-up', 2, 100, 150)])], 2)).toBe(true);
  });

  it('asks no time of a robot that never starts', () => {
    const scene = { sheet: lighthouseAt(200, 40), drawing: fromStart().to(30, 40).straight(200).drawing() };
    const bare = { ...scene, drawing: { lines: [scene.drawing.lines[1]!], marks: [] } };
    const off = buildTrack(layOut(bare.sheet, bare.drawing), DEMO_KIT);
    const never = run([end('never-started', 2.4, 40, 150)], { finish: 100 });
    expect(agrees(chainOn(bare), off, [never], LIMIT)).toBe(true);
  });

  it('only where every run does', () => {
    expect(agree(arrives(branch('left'), decided('left')), arrives(branch('left')))).toBe(false);
  });

  it('allows a quarter of a second and a fiftieth of the time', () => {
    const t = branch('left');
    const slack = 0.25 + 0.02 * t;
    const late = (by: number) => agree(arrives(t + by, decided('left')));
    expect([slack - 0.01, -slack + 0.01].map(late)).toEqual([true, true]);
    expect([slack + 0.01, -slack - 0.01].map(late)).toEqual([false, false]);
  });

  it('allows a place 25 mm from the foretold one, and none for an arrival', () => {
    const { at } = chain().endings.find(({ ending }) => ending === 'stopped')!;
    const beside = (by: number) => agree(stops(branch('right'), at.x + by, at.y));
    expect([24.9, -24.9, 25.1].map(beside)).toEqual([true, true, false]);
    const t = branch('left');
    expect(agree(run([decided('left'), finish(t), end('finished', t + 0.5, 20, 20)]))).toBe(true);
  });

  it('counts decisions that chance makes within 15 mm of a junction, and no others', () => {
    const t = branch('left');
    expect(agree(arrives(t, decided('left', 174.9)))).toBe(true);
    expect(agree(arrives(t, decided('left', 175.1)))).toBe(false);
    expect(agree(arrives(t, decided('left'), { ...decided('left'), by: 'mark' }))).toBe(true);
    // The loose end of the right branch is no junction.
    const searched = run([
      decided('right'),
      decided('left', 160, 210),
      end('stopped', branch('right') + 0.5, 160, 210),
    ]);
    expect(agree(searched)).toBe(true);
  });

  it('a run that is still under way has to be so by the chain, but for the same slack', () => {
    const t = branch('left');
    const underWay = run([decided('left'), end('time-up', 5, 160, 100)]);
    // At some 7 s the slack is some 0.4 s.
    expect(agrees(chain(), track, [underWay], t + 0.3)).toBe(true);
    expect(agrees(chain(), track, [underWay], t + 0.6)).toBe(false);
    const strange = run([
      decided('left', 160, 150, ['left', 'straight', 'right']),
      end('time-up', 5, 160, 100),
    ]);
    const { first } = chain();
    if (first.to === 'endless') throw new Error('the first way ends at the fork');
    expect(agrees(chain(), track, [strange], first.time)).toBe(false);
  });

  it('a run that ends before the chain does, or never should, does not agree', () => {
    expect(agrees(chain(), track, [run([end('stopped', 2, 100, 150)])], 2)).toBe(false);
    const start = { ...SHEET.start, at: { x: 140, y: 150 }, heading: -Math.PI / 2 };
    const scene = {
      sheet: { ...SHEET, start },
      drawing: new Pen().to(140, 150, -90).arc(60, 180).arc(60, 180).drawing(),
    };
    const round = buildTrack(layOut(scene.sheet, scene.drawing), DEMO_KIT);
    const ends = (ending: Ending) => agrees(chainOn(scene), round, [run([end(ending, 60, 200, 150)])], LIMIT);
    expect([ends('time-up'), ends('stopped')]).toEqual([true, false]);
  });
});
