import type { CDPSession, Page } from 'playwright-core';
import type { Sheet } from '../../shared/documents/sheet.ts';

export type Pointer = 'touch' | 'pen' | 'mouse';

/**
 * A hand on the tablet's paper: presses, pulls and lifts at places in mm, by touch, pen or mouse, with
 * the browser's own input events.
 */
export class TestHand {
  readonly #page: Page;
  readonly #cdp: CDPSession;
  readonly #sheet: Sheet;
  pointer: Pointer = 'touch';
  /** Whether the Alt key is held meanwhile. */
  alt = false;

  private constructor(page: Page, cdp: CDPSession, sheet: Sheet) {
    this.#page = page;
    this.#cdp = cdp;
    this.#sheet = sheet;
  }

  static async on(page: Page, sheet: Sheet): Promise<TestHand> {
    await page.locator('.surface').waitFor();
    return new TestHand(page, await page.context().newCDPSession(page), sheet);
  }

  /** Where a place of the paper lies on the screen. */
  async place(x: number, y: number): Promise<{ x: number; y: number }> {
    const box = await this.#page.locator('.sheet-view-paper').boundingBox();
    if (!box) throw new Error('there is no paper on the page');
    return { x: box.x + (x / this.#sheet.w) * box.width, y: box.y + (y / this.#sheet.h) * box.height };
  }

  /** Down at the first place, over the others, up at the last. */
  async drag(...points: readonly (readonly [number, number])[]): Promise<void> {
    const places = await Promise.all(points.map(([x, y]) => this.place(x, y)));
    for (const [i, place] of places.entries()) await this.#send(i === 0 ? 'down' : 'move', place);
    await this.#send('up', places.at(-1)!);
  }

  /** Over all points at their own times, ms since the first one. */
  async stroke(points: readonly { x: number; y: number }[], times: readonly number[]): Promise<void> {
    const [corner, across] = [await this.place(0, 0), await this.place(100, 100)];
    const places = points.map(({ x, y }) => ({
      x: corner.x + ((across.x - corner.x) * x) / 100,
      y: corner.y + ((across.y - corner.y) * y) / 100,
    }));
    const began = performance.now();
    for (const [i, place] of places.entries()) {
      const early = times[i]! - (performance.now() - began);
      if (early > 1) await new Promise((resolve) => setTimeout(resolve, early));
      await this.#send(i === 0 ? 'down' : 'move', place);
    }
    await this.#send('up', places.at(-1)!);
  }

  tap = (x: number, y: number): Promise<void> => this.drag([x, y]);

  /** Down and over all places, and stays down. Ends with `lift`. */
  async hold(...points: readonly (readonly [number, number])[]): Promise<() => Promise<void>> {
    const places = await Promise.all(points.map(([x, y]) => this.place(x, y)));
    for (const [i, place] of places.entries()) await this.#send(i === 0 ? 'down' : 'move', place);
    return () => this.#send('up', places.at(-1)!);
  }

  /** Two fingers come down one after the other, go to their other places together, and lift. */
  async pinch(
    first: readonly [readonly [number, number], readonly [number, number]],
    second: readonly [readonly [number, number], readonly [number, number]],
  ): Promise<void> {
    const at = (finger: typeof first, share: number) =>
      this.place(
        finger[0][0] + (finger[1][0] - finger[0][0]) * share,
        finger[0][1] + (finger[1][1] - finger[0][1]) * share,
      );
    // The paper moves under the fingers, so all places are asked for before.
    const shares = [0, 0.25, 0.5, 0.75, 1];
    const ones = await Promise.all(shares.map((share) => at(first, share)));
    const others = await Promise.all(shares.map((share) => at(second, share)));
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: { x: number; y: number }[]) =>
      this.#cdp.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: touchPoints.map((point, id) => ({ ...point, id })),
      });
    await touch('touchStart', [ones[0]!]);
    await touch('touchMove', [{ x: ones[0]!.x + 14, y: ones[0]!.y }]);
    await touch('touchStart', [ones[0]!, others[0]!]);
    for (const [i, one] of ones.entries()) await touch('touchMove', [one, others[i]!]);
    await touch('touchEnd', []);
  }

  async #send(what: 'down' | 'move' | 'up', { x, y }: { x: number; y: number }): Promise<void> {
    if (this.pointer === 'touch') {
      const type = ({ down: 'touchStart', move: 'touchMove', up: 'touchEnd' } as const)[what];
      await this.#cdp.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: what === 'up' ? [] : [{ x, y }],
      });
      return;
    }
    const type = ({ down: 'mousePressed', move: 'mouseMoved', up: 'mouseReleased' } as const)[what];
    await this.#cdp.send('Input.dispatchMouseEvent', {
      type,
      x,
      y,
      button: 'left',
      buttons: what === 'up' ? 0 : 1,
      clickCount: what === 'move' ? 0 : 1,
      modifiers: this.alt ? 1 : 0,
      pointerType: this.pointer,
    });
  }
}
