import { describe, expect, it } from 'vitest';
import { fakeLink, settled, welcome } from './fakes.ts';

async function live() {
  const parts = fakeLink();
  parts.wire.connect();
  await parts.wire.answer('hello', welcome());
  return parts;
}

describe('documents', () => {
  it('that came are kept, refusals are not', async () => {
    const { link, wire } = await live();
    const refused = link.fetchDocument('a');
    await wire.answer('fetch', { ok: false, refusal: { code: 'unknown-document' } });
    expect((await refused).ok).toBe(false);
    const fetched = link.fetchDocument('a');
    await wire.answer('fetch', { ok: true, kind: 'design', body: {} });
    expect(await fetched).toEqual({ ok: true, kind: 'design', body: {} });
    expect(await link.fetchDocument('a')).toEqual(await fetched);
    expect(wire.bodies('fetch')).toEqual([]);
  });

  it('that do not come while there is a link are asked for again, until they are there', async () => {
    const { link, wire, timers } = await live();
    const fetched = link.fetchDocument('a');
    for (const code of ['too-fast', 'store-away'] as const) {
      await wire.answer('fetch', { ok: false, refusal: { code } });
      await timers.pass(1000);
    }
    wire.asked.shift()!.fail();
    await settled();
    await timers.pass(1000);
    await wire.answer('fetch', { ok: true, kind: 'design', body: {} });
    expect(await fetched).toEqual({ ok: true, kind: 'design', body: {} });
  });

  it('asked for as the link is lost are given up: whoever shows them asks when it is back', async () => {
    const { link, wire } = await live();
    const fetched = link.fetchDocument('a');
    wire.close();
    expect(await fetched).toEqual({ ok: false, refusal: { code: 'server-trouble' } });
  });
});
