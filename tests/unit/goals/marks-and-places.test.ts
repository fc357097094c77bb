import { describe, expect, test } from 'vitest';
import { at, CONTEXT, measured, run, SHEET } from './hand-made.ts';

const end = at.end('finished');
const gateOf = (id: string) => ({ id, name: { en: id }, a: { x: 1, y: 1 }, b: { x: 2, y: 2 } });
const gated = {
  ...CONTEXT,
  sheet: { ...SHEET, gates: [gateOf('market'), gateOf('bakery'), gateOf('pier')] },
};

describe('G-every-gate', () => {
  test('three gates passed, one of them twice: met with nothing to spare', () => {
    const all = run([at.gate('pier'), at.gate('market'), at.gate('pier'), at.gate('bakery'), end]);
    expect(measured({ kind: 'every-gate' }, [all], gated)).toMatchObject({
      met: true,
      margin: 0,
      unit: 'count',
      by: 'every-gate',
    });
  });
  test('one of three passed twice: two are missing', () => {
    const one = run([at.gate('pier'), at.gate('pier'), end]);
    expect(measured({ kind: 'every-gate' }, [one], gated)).toMatchObject({ met: false, margin: -2 });
  });
});

describe('G-read-marks', () => {
  test('two marks, one of them read twice, are one short of three', () => {
    const two = run([at.read('m1'), at.read('m2'), at.read('m1'), end]);
    expect(measured({ kind: 'read-marks', count: 3 }, [two])).toMatchObject({
      met: false,
      margin: -1,
      unit: 'count',
      by: 'read-marks',
    });
    expect(measured({ kind: 'read-marks', count: 1 }, [two])).toMatchObject({ met: true, margin: 1 });
  });
  test('a word that the chart lacks and a word where no mark is do not count', () => {
    const strange = run([at.read('m1', false), at.read(undefined), end]);
    expect(measured({ kind: 'read-marks', count: 1 }, [strange])).toMatchObject({ met: false, margin: -1 });
  });
});

describe('G-act-in', () => {
  // The landing reaches from (100, 100) to (160, 140).
  const wish = (act: 'wait' | 'signal') => ({ kind: 'act-in', act, area: 'landing' }) as const;
  test('of two waits the deeper one counts: 12 mm from the nearest edge', () => {
    const twice = run([at.acting('wait', { x: 103, y: 120 }), at.acting('wait', { x: 130, y: 112 }), end]);
    expect(measured(wish('wait'), [twice])).toMatchObject({
      met: true,
      margin: 12,
      unit: 'mm',
      by: 'act-in',
    });
  });
  test('waiting 7 mm beside the area lacks 7 mm', () => {
    const beside = run([at.acting('wait', { x: 93, y: 120 }), end]);
    expect(measured(wish('wait'), [beside])).toMatchObject({ met: false, margin: -7, unit: 'mm' });
  });
  test('calling is not waiting: one is missing', () => {
    const called = run([at.acting('signal', { x: 130, y: 120 }), end]);
    expect(measured(wish('signal'), [called])).toMatchObject({ met: true, margin: 20 });
    expect(measured(wish('wait'), [called])).toMatchObject({ met: false, margin: -1, unit: 'count' });
  });
});

describe('G-way', () => {
  test('counts until the finish, not until the end', () => {
    const arrived = run([at.finish({ way: 280 }), at.end('finished', { way: 300 })]);
    expect(measured({ kind: 'way', how: 'at-most', length: 290 }, [arrived])).toMatchObject({
      met: true,
      margin: 10,
      unit: 'mm',
      by: 'way',
    });
    expect(measured({ kind: 'way', how: 'at-least', length: 290 }, [arrived])).toMatchObject({
      met: false,
      margin: -10,
    });
  });
  test('without a finish until the end', () => {
    const parked = run([at.end('parked', { way: 120 })]);
    expect(measured({ kind: 'way', how: 'at-least', length: 100 }, [parked])).toMatchObject({ margin: 20 });
  });
});
