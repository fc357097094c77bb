import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../../shared/wire/protocol.ts';
import {
  checkCommand,
  checkDesign,
  checkDocumentId,
  checkHandshake,
  checkHello,
  checkLatest,
  sizeOf,
} from '../../../shared/wire/schemas.ts';
import '../../seed.ts';

const CHECKS = { checkCommand, checkDesign, checkDocumentId, checkHandshake, checkHello, checkLatest };

describe('checks of the wire', () => {
  it.each(Object.entries(CHECKS))('%s refuses anything, and never throws', (_, check) => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.jsonValue()), (value) => {
        const checked = check(value);
        expect(checked.ok ? 'value' : checked.refusal.code).toMatch(
          /^(value|bad-form|too-large|other-version)$/,
        );
      }),
    );
  });

  it('refuse a value that refers to itself', () => {
    const ring: { self?: unknown } = {};
    ring.self = ring;
    expect(checkCommand(ring)).toMatchObject({ ok: false, refusal: { code: 'bad-form' } });
  });

  it('refuse a nest of a hundred thousand lists', () => {
    const nest = JSON.parse('['.repeat(100_000) + ']'.repeat(100_000)) as unknown;
    const command = { version: 1, id: 'x', ask: { kind: 'hand-in', round: 0, design: nest } };
    expect(checkCommand(command)).toMatchObject({ ok: false });
    expect(checkDesign(nest)).toMatchObject({ ok: false });
  });

  it('look at the size before anything else', () => {
    const checked = checkHello('x'.repeat(LIMITS.shortMessageBytes));
    const bytes = LIMITS.shortMessageBytes + 2;
    expect(checked).toEqual({
      ok: false,
      refusal: { code: 'too-large', bytes, most: LIMITS.shortMessageBytes },
    });
  });
});

describe('sizeOf', () => {
  // UTF-8: two bytes for é, three for €, four for an emoji (RFC 3629).
  it('counts bytes, not letters', () => {
    expect([sizeOf('a'), sizeOf('é'), sizeOf('€'), sizeOf('🚢')]).toEqual([3, 4, 5, 6]);
  });

  it('has none for what is no JSON', () => {
    expect([sizeOf(undefined), sizeOf(() => 1), sizeOf(1n)]).toEqual([undefined, undefined, undefined]);
  });
});
