import { describe, expect, it } from 'vitest';
import { drawnOn, onOtherSheet, onSheetOf, onSheetOfHung } from '../../../../client/parts/variants.ts';
import { AS_IT_IS } from '../../../../shared/documents/challenge.ts';
import { designIn } from '../../../../shared/library/variants.ts';
import type { Entry } from '../../../../shared/room/state.ts';
import { challengeOf } from '../../../disturbed.ts';

const challenge = challengeOf('ferry-junction');
const model = challenge.model!;
const MIRRORED = { variant: 'mirrored', weather: null } as const;

describe('onSheetOf', () => {
  it('makes each sheet and weather once, and none where nothing differs', () => {
    expect(onSheetOf(AS_IT_IS, challenge)).toBe(challenge);
    expect(onSheetOf(MIRRORED, challenge)).toBe(onSheetOf(MIRRORED, challenge));
    const stormy = onSheetOf({ variant: null, weather: 'stormy' }, challenge);
    expect([stormy.weather, stormy.sheet === challenge.sheet]).toEqual(['stormy', true]);
    expect(onSheetOf({ variant: null, weather: 'stormy' }, challenge)).toBe(stormy);
    // Robots in any weather can drive on one sheet on top of each other.
    const mirrored = onSheetOf({ variant: 'mirrored', weather: 'stormy' }, challenge);
    expect([mirrored.weather, mirrored.sheet === onSheetOf(MIRRORED, challenge).sheet]).toEqual([
      'stormy',
      true,
    ]);
  });

  it('takes a room that an older page has kept for one without sheets and weather', () => {
    expect(onSheetOf({} as Entry, challenge)).toBe(challenge);
  });
});

it('onSheetOfHung goes by what hangs, and by the entry where that says nothing', () => {
  const hung = { entry: 'e', design: 'd' };
  const unknown = { ...AS_IT_IS } as Entry;
  const mirrored = onSheetOf(MIRRORED, challenge);
  expect(onSheetOfHung({ ...hung, variant: 'mirrored' }, unknown, challenge)).toBe(mirrored);
  expect(onSheetOfHung(hung, { ...unknown, variant: 'mirrored' }, challenge)).toBe(mirrored);
  expect(onSheetOfHung({ ...hung, variant: null }, unknown, challenge)).toBe(challenge);
});

it('onOtherSheet leads from one sheet to another and back', () => {
  const mirrored = onSheetOf(MIRRORED, challenge);
  const back = onOtherSheet(mirrored, 'mirrored', null);
  const { sentence, mirroredSentence, goals, model } = challenge;
  expect(back).toMatchObject({ sentence, mirroredSentence, goals, model });
  expect(back.sheet.given).toEqual(challenge.sheet.given);
  expect(back.sheet.areas).toEqual(challenge.sheet.areas);
  expect(onOtherSheet(mirrored, 'mirrored', 'mirrored')).toBe(mirrored);
  const turned = onSheetOf({ variant: 'turned', weather: null }, challenge);
  expect(onOtherSheet(mirrored, 'mirrored', 'turned').sheet).toEqual(turned.sheet);
});

it('drawnOn moves a drawing once', () => {
  const there = drawnOn(model, null, 'mirrored', challenge);
  expect(there).toEqual(designIn('mirrored', challenge, model));
  expect(drawnOn(model, null, 'mirrored', challenge)).toBe(there);
  expect(drawnOn(model, 'turned', 'turned', challenge)).toBe(model);
});
