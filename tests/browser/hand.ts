import type { CDPSession, Page } from 'playwright-core';
import type { Sheet } from '../../shared/documents/sheet.ts';

/** In the page: the box of an element that has stayed where it is for some frames. */
const boxAtRest = (element: Element) =>
  new Promise<{ x: number; y: number; width: number; height: number }>((resolve) => {
    const FRAMES = 4;
    let still = 0;
    let last = element.getBoundingClientRect();
    const look = () => {
      const box = element.getBoundingClientRect();
      const same = (['x', 'y', 'width', 'height'] as const).every((side) => box[side] === last[side]);
      still = same ? still + 1 : 0;
      last = box;
      if (still < FRAMES) requestAnimationFrame(look);
      else resolve({ x: box.x, y: box.y, width: box.width, height: box.height });
    };
    requestAnimationFrame(look);
  });

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

  /** Where the places of the paper lie on the screen, once the page has found its sizes. */
  async places(points: readonly (readonly [number, number])[]): Promise<{ x: number; y: number }[]> {
    const paper = this.#page.locator('.sheet-view-paper');
    const box = await paper.evaluate(boxAtRest);
    return points.map(([x, y]) => ({
      x: box.x + (x / this.#sheet.w) * box.width,
      y: box.y + (y / this.#sheet.h) * box.height,
    }));
  }

  async place(x: number, y: number): Promise<{ x: number; y: number }> {
    return (await this.places([[x, y]]))[0]!;
  }

  /** Down at the first place, over the others, up at the last. */
  async drag(...points: readonly (readonly [number, number])[]): Promise<void> {
    const places = await this.places(points);
    for (const [i, place] of places.entries()) await this.#send(i === 0 ? 'down' : 'move', place);
    await this.#send('up', places.at(-1)!);
  }

  /** Over all points at their own times, ms since the first one. */
  async stroke(points: readonly { x: number; y: number }[], times: readonly number[]): Promise<void> {
    const places = await this.places(points.map(({ x, y }) => [x, y]));
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
    const places = await this.places(points);
    for (const [i, place] of places.entries()) await this.#send(i === 0 ? 'down' : 'move', place);
    return () => this.#send('up', places.at(-1)!);
  }

  /** Two fingers come down one after the other, go to their other places together, and lift. */
  async pinch(
    first: readonly [readonly [number, number], readonly [number, number]],
    second: readonly [readonly [number, number], readonly [number, number]],
  ): Promise<void> {
    // The paper moves under the fingers, so all places are asked for before.
    const shares = [0, 0.25, 0.5, 0.75, 1];
    const at = (finger: typeof first) =>
      shares.map(
        (share) =>
          [
            finger[0][0] + (finger[1][0] - finger[0][0]) * share,
            finger[0][1] + (finger[1][1] - finger[0][1]) * share,
          ] as const,
      );
    const ones = await this.places(at(first));
    const others = await this.places(at(second));
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
