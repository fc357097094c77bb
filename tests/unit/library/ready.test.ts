import { describe, expect, test } from 'vitest';
import { Challenge } from '../../../shared/documents/challenge.ts';
import { type Kit, reversed } from '../../../shared/documents/kit.ts';
import { parseDocument, writeDocument } from '../../../shared/documents/values.ts';
import { checkChallenge } from '../../../shared/judge/check-challenge.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { SECOND_KIT } from '../../../shared/kit/second-kit.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { KITS } from '../../kits.ts';

const ready = readyChallenges(DEMO_KIT);

describe('readyChallenges', () => {
  test('gives the 24 topics in the order of the course, with different keys and titles', () => {
    expect(ready.map((one) => one.topic)).toEqual(Array.from({ length: 24 }, (_, i) => i + 1));
    expect(new Set(ready.map((one) => one.key)).size).toBe(24);
    expect(new Set(ready.map((one) => one.title)).size).toBe(24);
  });

  test('plays each topic in the way that the course has for it', () => {
    const ways = { predict: [1, 8, 10, 12, 15], mend: [3, 7, 11, 17], draw: [2, 4, 5, 18, 20, 23, 24] };
    for (const one of ready) {
      const way = Object.entries(ways).find(([, topics]) => topics.includes(one.topic))?.[0] ?? 'fill-in';
      expect([one.topic, one.playable && one.challenge.play]).toEqual([one.topic, way]);
    }
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

  test('each has a note with a question, and names actions: no band, ink or word of a chart', () => {
    const inks = KITS.flatMap((kit) => kit.inks.map((ink) => ink.name.en));
    const banned = new RegExp(`\\b([CAVLHR]{2,}|${inks.join('|')})\\b`);
    for (const one of ready) {
      if (!one.playable) throw new Error('the demo chart has every action');
      const { sentence, note } = one.challenge;
      const { teaches, mistakes, ask } = note!;
      expect(ask.en).toMatch(/\?$/);
      for (const text of [one.title.en, sentence.en, teaches.en, mistakes.en, ask.en]) {
        expect(text.length).toBeGreaterThan(0);
        expect(text).not.toMatch(banned);
      }
    }
  });

  test('a chart without park says so for each challenge that needs it', () => {
    const kit: Kit = { ...DEMO_KIT, chart: DEMO_KIT.chart.filter((row) => row.action.kind !== 'park') };
    const lacking = readyChallenges(kit).filter((one) => !one.playable);
    expect(lacking.map((one) => one.topic)).toEqual([6, 7, 11, 24]);
    for (const one of lacking) expect(one).toMatchObject({ missing: [{ kind: 'park' }] });
  });

  test('a chart with its choices in two-way words has no mark for two travellers, and names both actions', () => {
    const chart = DEMO_KIT.chart.flatMap((row) => {
      if (row.word === 'AV') return [{ word: 'VAV', action: row.action }];
      if (row.word === 'VA') return [{ word: 'CVC', action: row.action }];
      return row.word === 'VAV' || row.word === 'CVC' ? [] : [row];
    });
    const kit: Kit = { ...DEMO_KIT, chart };
    const junctions = readyChallenges(kit).find((one) => one.topic === 15);
    expect(junctions).toMatchObject({
      playable: false,
      missing: [
        { kind: 'choose', way: 'left' },
        { kind: 'choose', way: 'right' },
      ],
    });
  });

  test('par is known with a kit that drives alike, whatever it is called, and not with another', () => {
    const parWith = (kit: Kit) => new Set(readyChallenges(kit).map((one) => one.playable && one.par));
    const { robot, chart } = DEMO_KIT;
    expect(parWith(DEMO_KIT)).toEqual(new Set(['known']));
    const renamed = {
      ...DEMO_KIT,
      name: 'Ours',
      robot: { ...robot, name: 'Ours' },
      chart: chart.toReversed(),
    };
    expect(parWith(renamed)).toEqual(new Set(['known']));
    const slower = { ...DEMO_KIT, robot: { ...robot, paces: { ...robot.paces, steady: 35 } } };
    expect(parWith(slower)).toEqual(new Set(['not-known']));
    expect(parWith({ ...DEMO_KIT, inks: DEMO_KIT.inks.slice(1) })).toEqual(new Set(['not-known']));
  });

  test('with the second kit each says whether it can be played; par is known of none', () => {
    const second = readyChallenges(SECOND_KIT);
    // Its chart has no tiptoe, and its robot goes straight on without being told to.
    const missing = second.flatMap((one) => (one.playable ? [] : [[one.topic, one.missing.length] as const]));
    expect(missing).toEqual([
      [14, 0],
      [17, 0],
      [19, 1],
      [20, 1],
    ]);
    for (const one of second) if (one.playable) expect(one.par).toBe('not-known');
  });

  test('a kit that waits for another time waits for that', () => {
    const chart = DEMO_KIT.chart.map((row) =>
      row.action.kind === 'wait' ? { ...row, action: { ...row.action, time: 3 } } : row,
    );
    expect(readyChallenges({ ...DEMO_KIT, chart }).every((one) => one.playable)).toBe(true);
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
