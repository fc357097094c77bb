import { describe, expect, test } from 'vitest';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { EMPTY_DESIGN } from '../../../shared/documents/design.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { checkChallenge } from '../../../shared/judge/check-challenge.ts';
import { judge } from '../../../shared/judge/judge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../shared/kit/second-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';

/** The ready challenges with a kit that they were not made with: other robot, other chart, other limits. */
const ready = readyChallenges(SECOND_KIT);
const inks = new Set(SECOND_KIT.inks.map((ink) => ink.id));

describe('ready challenges with the second kit', () => {
  test('are those of the demo kit, in the same order', () => {
    expect(ready.map((one) => one.key)).toEqual(readyChallenges(DEMO_KIT).map((one) => one.key));
  });

  test('two are solved by going straight on, which the demo robot does not do by itself', () => {
    const solved = ready.filter((one) => !one.playable && one.doneByItself).map((one) => one.topic);
    expect(solved).toEqual([14, 17]);
    expect(readyChallenges(DEMO_KIT).every((one) => one.playable)).toBe(true);
  });

  for (const one of ready) {
    if (!one.playable) {
      const why = one.doneByItself ? 'this robot does it by itself' : 'the chart lacks what it names';
      test(`${one.key}: not playable, because ${why}`, () => {
        expect(one.missing.length > 0).toBe(!one.doneByItself);
        for (const action of one.missing) {
          expect(SECOND_KIT.chart.map((row) => row.action)).not.toContainEqual(action);
        }
      });
      continue;
    }
    const { challenge, par } = one;
    test(`${one.key}: in the kit's own inks and widths, sound, and its par not known`, () => {
      expect(par).toBe('not-known');
      expect(checkChallenge(challenge)).toEqual([]);
      const file = JSON.parse(JSON.stringify(writeDocument(Challenge, challenge)));
      expect(parseDocument(Challenge, file).ok).toBe(true);
      const drawings = [challenge.sheet.given, challenge.begin?.drawing, challenge.model?.drawing];
      const bands = drawings.flatMap((drawing) => drawing?.marks ?? []).flatMap((mark) => mark.bands);
      expect(bands.filter((band) => !inks.has(band.ink))).toEqual([]);
    });
    const { model, begin = EMPTY_DESIGN } = challenge;
    if (!model) continue;
    test(`${one.key}: what a team begins with is not met`, () => {
      expect(judge(challenge, begin, 'live').verdict.met).toBe(false);
    });
    test(`${one.key}: the maker's design meets it with this robot too, and nothing stops it`, () => {
      // What is wanted of many robots is measured for entries only.
      const { verdict, refusal } = judge(challenge, model, 'entry');
      expect(refusal).toBeUndefined();
      expect(verdict.goals.filter((goal) => !goal.met)).toEqual([]);
      expect(verdict.findings.filter((finding) => finding.severity === 'stops')).toEqual([]);
      expect(verdict.met).toBe(true);
    });
  }
});
