import { describe, expect, it } from 'vitest';
import { referenceIsHere, skippedWithoutReference } from '../reference.ts';
import { recordedStrokes } from '../strokes.ts';
import { expectClean } from './browser.ts';
import { drawFreely, redrawn } from './recorded.ts';
import { stage } from './stage.ts';
import { tabletIn } from './tablet-page.ts';

const here = stage('file');

/** Every so many of the recorded strokes are tried here, all of them by the bench of the tablet. */
const EVERY = 14;

describe.skipIf(!referenceIsHere)(`recorded strokes on the paper${skippedWithoutReference}`, () => {
  it('become lines that lie within 4 mm of them, with their own timing', async () => {
    const { hand, watched } = await tabletIn(here.browser, here.room, 'one-fast-stretch');
    await drawFreely(watched.page);
    const some = recordedStrokes().filter((_, i) => i % EVERY === 0);
    expect(some.length).toBeGreaterThan(10);
    for (const stroke of some) {
      const { worst } = await redrawn(watched.page, hand, stroke);
      expect({ id: stroke.id, near: worst <= 4 ? 'near' : worst }).toEqual({ id: stroke.id, near: 'near' });
    }
    expectClean(watched);
    await watched.context.close();
  });
});
