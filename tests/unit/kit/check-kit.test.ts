import { describe, expect, it } from 'vitest';
import type { Action, ChartRow, Kit } from '../../../shared/documents/kit.ts';
import { checkKit } from '../../../shared/kit/check-kit.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';

const nothing: Action = { kind: 'nothing' };
const row = (word: string, action: Action = nothing): ChartRow => ({ word, action });
const withRows = (...rows: ChartRow[]): Kit => ({ ...DEMO_KIT, chart: [...DEMO_KIT.chart, ...rows] });
const codes = (kit: Kit) => checkKit(kit).map(({ code }) => code);

describe('checkKit', () => {
  it('finds nothing in the demo kit', () => {
    expect(checkKit(DEMO_KIT)).toEqual([]);
  });

  it('a word with two meanings is named with both rows', () => {
    expect(checkKit(withRows(row('CA')))).toEqual([
      { code: 'word-twice', word: 'CA', first: 0, path: ['chart', 12, 'word'], severity: 'wrong' },
    ]);
  });

  it('a one-way word needs a meaning from the other side', () => {
    expect(checkKit(withRows(row('CAV')))).toEqual([
      {
        code: 'reverse-without-meaning',
        word: 'CAV',
        reverse: 'VAC',
        path: ['chart', 12, 'word'],
        severity: 'wrong',
      },
    ]);
    expect(codes(withRows(row('CAV'), row('VAC')))).toEqual([]);
  });

  it('equal neighbours are found only where the kit does not allow them', () => {
    const kit = withRows(row('CCA'), row('ACC'));
    expect(codes(kit)).toEqual(['equal-neighbours', 'equal-neighbours']);
    expect(codes({ ...kit, equalNeighbours: true })).toEqual([]);
  });

  it('a two-way word never turns back: the robot would meet it again for ever', () => {
    const chart = DEMO_KIT.chart.map((r) => (r.word === 'VCV' ? row('VCV', { kind: 'turn-back' }) : r));
    expect(codes({ ...DEMO_KIT, chart })).toEqual(['two-way-turns-back']);
  });

  it('a letter without an ink is named once a word', () => {
    expect(checkKit(withRows(row('XAX')))).toMatchObject([{ code: 'ink-not-in-kit', ink: 'X', word: 'XAX' }]);
  });

  it('words outside the band count are found', () => {
    expect(codes(withRows(row('C')))).toEqual(['too-few-bands']);
    expect(codes(withRows(row('CACAC')))).toEqual(['too-many-bands']);
  });

  it('sizes and speeds of 0 are named, each at its place', () => {
    const { robot } = DEMO_KIT;
    const paces = { ...robot.paces, brisk: 0 };
    const found = checkKit({ ...DEMO_KIT, robot: { ...robot, wheelTrack: 0, bandUnit: 0, paces } });
    expect(found).toEqual(
      [['wheelTrack'], ['bandUnit'], ['paces', 'brisk']].map((path) => ({
        code: 'size-zero',
        path: ['robot', ...path],
        severity: 'wrong',
      })),
    );
  });

  it('two inks with one letter are found', () => {
    const [coral, aqua, violet] = DEMO_KIT.inks;
    const inks = [coral!, aqua!, { ...violet!, id: 'A' }];
    const chart = DEMO_KIT.chart.filter(({ word }) => !word.includes('V'));
    expect(checkKit({ ...DEMO_KIT, inks, chart })).toEqual([
      { code: 'ink-letter-twice', ink: 'A', path: ['inks', 2, 'id'], severity: 'wrong' },
    ]);
  });

  it('an ink close to the line is a caution at the ink', () => {
    const inks = DEMO_KIT.inks.map((ink) => (ink.id === 'V' ? { ...ink, color: '#201030' } : ink));
    expect(checkKit({ ...DEMO_KIT, inks })).toMatchObject([
      {
        code: 'colours-too-close',
        one: 'line',
        two: { ink: 'V' },
        path: ['inks', 2, 'color'],
        severity: 'caution',
      },
    ]);
  });

  it('red and green that only normal sight tells apart are a caution with the sight', () => {
    const inks = DEMO_KIT.inks.map((ink) =>
      ink.id === 'C' ? { ...ink, color: '#B08000' } : ink.id === 'A' ? { ...ink, color: '#70A000' } : ink,
    );
    const [problem] = checkKit({ ...DEMO_KIT, inks });
    expect(problem).toMatchObject({ code: 'colours-too-close', one: { ink: 'C' }, two: { ink: 'A' } });
    expect(problem).not.toMatchObject({ sight: 'normal' });
  });
});
