import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  canonicalJson,
  storedDesign,
  storedDocument,
  withoutTeachersPart,
  withoutWeather,
} from '../../../server/rooms/documents.ts';
import { isRoomWord, newWord, wordTyped } from '../../../server/rooms/words.ts';
import '../../seed.ts';

/** The same value with the keys of every object in the opposite order. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, v]) => [key, turned(v)]),
  );
}

describe('canonicalJson', () => {
  it('orders keys at every depth and leaves lists as they are', () => {
    expect(canonicalJson({ b: [2, 1], a: { d: null, c: 'é"' }, none: undefined })).toBe(
      '{"a":{"c":"é\\"","d":null},"b":[2,1]}',
    );
  });

  it('is JSON of the same value, whatever the order of keys', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const plain = JSON.parse(JSON.stringify(value)) as unknown;
        expect(JSON.parse(canonicalJson(plain))).toEqual(plain);
        expect(canonicalJson(turned(plain))).toBe(canonicalJson(plain));
      }),
    );
  });
});

describe('storedDocument', () => {
  it('has the SHA-256 of its body as its id', () => {
    const document = storedDocument('verdict', { total: 1, met: true });
    expect(document.body).toBe('{"met":true,"total":1}');
    expect(document.id).toBe(createHash('sha256').update('{"met":true,"total":1}').digest('hex'));
  });

  it('of a design is in whole hundredths, so that equal drawings are equal documents', () => {
    const line = (x: number) => ({
      version: 1 as const,
      drawing: {
        lines: [{ id: 'a', width: 5, from: { x: 0, y: 0 }, pieces: [{ to: { x, y: 0 }, bulge: 0 }] }],
        marks: [],
      },
    });
    expect(storedDesign(line(10.000_4)).id).toBe(storedDesign(line(10)).id);
    expect(storedDesign(line(10.01)).id).not.toBe(storedDesign(line(10)).id);
    expect(storedDesign(line(10.01)).body).toContain('"x":1001');
  });
});

describe('withoutTeachersPart', () => {
  it('takes away the maker’s design and the note', () => {
    expect(withoutTeachersPart({ id: 'a', model: 1, note: 2, goals: [] })).toEqual({ id: 'a', goals: [] });
  });
});

describe('withoutWeather', () => {
  it('leaves runs and goals of a verdict, and nothing that a weather changes', () => {
    const kept = { version: 1, runs: [{ traceHash: 'h' }], goals: [{ id: 'g' }], met: true, total: 80 };
    const verdict = { ...kept, findings: [1], points: [2], odds: [3], steadiness: { weather: 'stormy' } };
    expect(withoutWeather(verdict)).toEqual({ ...kept, findings: [], points: [] });
  });
});

describe('room words', () => {
  it('are a plain word and two digits', () => {
    const words = Array.from({ length: 200 }, () => newWord(0));
    expect(words.filter((word) => !/^[a-z]{3,11}-[1-9]\d$/.test(word))).toEqual([]);
    expect(new Set(words).size).toBeGreaterThan(150);
  });

  it('of a room file are kept where they could be ours', () => {
    const words = ['plum-42', 'plum-4821', 'plum-4', 'bell-4821', 'a-1', 'plum', 'constructor-42'];
    expect(words.filter(isRoomWord)).toEqual(['plum-42', 'plum-4821']);
  });

  it.each([['plum-42'], ['PLUM-42'], [' plum 42 '], ['plum42'], ['Plum – 42'], ['plum_42']])(
    '“%s” is plum-42',
    (typed) => expect(wordTyped(typed)).toBe('plum-42'),
  );
});
