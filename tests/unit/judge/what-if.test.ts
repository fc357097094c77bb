import { describe, expect, it } from 'vitest';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { wordOf } from '../../../shared/documents/design.ts';
import { WEATHERS } from '../../../shared/documents/outlook.ts';
import { OTHER_LIGHTS, type WhatIf } from '../../../shared/documents/what-if.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { sceneOf } from '../../../shared/judge/scene.ts';
import { supposed } from '../../../shared/judge/what-if.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';

function ready(key: string): Challenge {
  const one = readyChallenges(DEMO_KIT).find((each) => each.key === key);
  if (!one?.playable) throw new Error(`no playable challenge ${key}`);
  return one.challenge;
}

const FAST = ready('one-fast-stretch');
const model = FAST.model!;
const first = model.drawing.marks[0]!;

/** What is read and how it ends if so. */
function drivenIf(whatIf: WhatIf, challenge = FAST, design = challenge.model!) {
  const other = supposed(whatIf, challenge, design)!;
  const { verdict, traces } = judge(other.challenge, other.design, 'live', sceneOf, other.robot);
  return {
    words: verdict.runs[0]!.readings.map(({ word }) => word),
    ending: traces[0]!.ending,
    verdict,
    traces,
  };
}

describe('supposed', () => {
  const asIs = judge(FAST, model, 'live');

  it.each(OTHER_LIGHTS)('%s: marks are misread, the line is not lost', (light) => {
    const { words, ending } = drivenIf({ kind: 'light', light });
    expect(words).not.toEqual(asIs.verdict.runs[0]!.readings.map(({ word }) => word));
    expect(['finished', 'stopped']).toContain(ending);
  });

  it('another start: the same drawing from the other berth', () => {
    const { traces } = drivenIf({ kind: 'start' }, ready('first-line'));
    expect(traces.map(({ start }) => start)).toEqual(['finish']);
    const two = ready('from-the-other-end');
    expect(
      supposed({ kind: 'start' }, two, { version: 1, drawing: { lines: [], marks: [] } }),
    ).toBeUndefined();
  });

  it.each(WEATHERS)('%s: one robot that is not the undisturbed one, the same each time', (weather) => {
    const [once, again] = [7, 7].map((robot) => drivenIf({ kind: 'weather', weather, robot }));
    expect(once!.traces[0]!.hash).toBe(again!.traces[0]!.hash);
    expect(once!.traces[0]!.hash).not.toBe(asIs.traces[0]!.hash);
    expect(once!.traces.map(({ seed, probability }) => [seed, probability])).toEqual([[7, 1]]);
  });

  it('a robot of the verdict’s twenty that does as the undisturbed one in a storm ends as that one', () => {
    const { steadiness } = judge({ ...FAST, weather: 'stormy' }, model, 'entry').verdict;
    const strays = steadiness!.strays.map(({ seed }) => seed);
    const robot = Array.from({ length: 20 }, (_, i) => i + 1).find((seed) => !strays.includes(seed))!;
    expect(drivenIf({ kind: 'weather', weather: 'stormy', robot }).ending).toBe(asIs.traces[0]!.ending);
  });

  it('one band changed: this mark is another word, all else is as it was', () => {
    const ink = first.bands[0]!.ink === 'V' ? 'C' : 'V';
    const { design, challenge } = supposed({ kind: 'band', mark: first.id, band: 0, ink }, FAST, model)!;
    expect(challenge).toBe(FAST);
    const [changed, ...rest] = design.drawing.marks;
    expect(wordOf(changed!)).toBe(ink + wordOf(first).slice(1));
    expect([rest, design.drawing.lines]).toEqual([model.drawing.marks.slice(1), model.drawing.lines]);
  });

  it('one band of a given mark changed: the sheet that is driven on is another one', () => {
    const given = ready('one-mark-two-junctions');
    const { id, bands } = given.sheet.given.marks[0]!;
    const ink = bands[1]!.ink === 'V' ? 'C' : 'V';
    const other = supposed({ kind: 'band', mark: id, band: 1, ink }, given, {
      version: 1,
      drawing: { lines: [], marks: [] },
    })!;
    expect(other.challenge.sheet.given.marks[0]!.bands[1]!.ink).toBe(ink);
    expect(given.sheet.given.marks[0]!.bands[1]!.ink).toBe(bands[1]!.ink);
  });

  it('changes nothing where there is no such band, ink, or difference', () => {
    const band = (over: Partial<Extract<WhatIf, { kind: 'band' }>>) =>
      supposed({ kind: 'band', mark: first.id, band: 0, ink: 'V', ...over }, FAST, model);
    expect([
      band({ mark: 'no' }),
      band({ band: 7 }),
      band({ ink: 'Q' }),
      band({ ink: first.bands[0]!.ink }),
    ]).toEqual([undefined, undefined, undefined, undefined]);
  });

  it('always comes with a design of its own, and leaves the entry’s untouched', () => {
    const before = JSON.stringify([FAST, model]);
    for (const whatIf of [
      { kind: 'light', light: 'darker' },
      { kind: 'weather', weather: 'stormy', robot: 3 },
    ] as const)
      expect(supposed(whatIf, FAST, model)!.design).not.toBe(model);
    expect(JSON.stringify([FAST, model])).toBe(before);
  });
});
