import { describe, expect, test } from 'vitest';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { type Kit, reversed } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { checkChallenge } from '../../../shared/judge/check-challenge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';

const ready = readyChallenges(DEMO_KIT);

describe('readyChallenges', () => {
  test('gives the eight topics in the order of the course, with different keys', () => {
    expect(ready.map((one) => one.topic)).toEqual([2, 3, 6, 9, 13, 17, 18, 22]);
    expect(new Set(ready.map((one) => one.key)).size).toBe(8);
  });

  for (const one of ready) {
    test(`${one.key}: sound, and the same after writing and reading`, () => {
      if (!one.playable) throw new Error('the demo chart has every action');
      expect(checkChallenge(one.challenge)).toEqual([]);
      const again = parseDocument(
        Challenge,
        JSON.parse(JSON.stringify(writeDocument(Challenge, one.challenge))),
      );
      expect(again.ok && again.value.model).toEqual(one.challenge.model);
      expect(again.ok && again.value.sheet.given).toEqual(one.challenge.sheet.given);
    });
  }

  test('a chart without park says so for the one challenge that needs it', () => {
    const kit: Kit = { ...DEMO_KIT, chart: DEMO_KIT.chart.filter((row) => row.action.kind !== 'park') };
    const lacking = readyChallenges(kit).filter((one) => !one.playable);
    expect(lacking).toMatchObject([{ key: 'park-on-the-landing', missing: [{ kind: 'park' }] }]);
  });

  test('marks are looked up in the chart: another word for faster is drawn', () => {
    const chart = DEMO_KIT.chart.map((row) => (row.word === 'CA' ? { ...row, word: 'VAC' } : row));
    const pier = readyChallenges({ ...DEMO_KIT, chart }).find((one) => one.key === 'long-pier');
    const marks = pier?.playable ? pier.challenge.model?.drawing.marks : [];
    expect(marks?.map((mark) => mark.bands.map((band) => band.ink).join(''))).toContain('VAC');
  });

  test('a mark for the way back is drawn the other way round', () => {
    const bakery = ready.find((one) => one.key === 'bakery-and-back');
    const marks = bakery?.playable ? bakery.challenge.model?.drawing.marks : [];
    const right = marks?.find((mark) => mark.id === 'right');
    expect(reversed(right?.bands.map((band) => band.ink).join('') ?? '')).toBe('VA');
  });
});
