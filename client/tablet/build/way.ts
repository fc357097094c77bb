import { createStore, delMany, get, getMany, keys, setMany, type UseStore } from 'idb-keyval';
import * as z from 'zod/mini';
import { Design } from '../../../shared/documents/design.ts';
import { writeDocument } from '../../../shared/documents/values.ts';
import type { Editor, Step } from '../../editor/model.ts';
import { type DraftPlace, keyOf, readAs } from './drafts.ts';

/** So many steps are found again after a reload, counted from the drawing as it is. */
const MOST = 200;

/** Which drawings, by their number, the way goes over, and which of them is the one now. */
const Index = z.strictObject({ ids: z.array(z.int()), at: z.int() });

type Way = Pick<Editor, 'past' | 'future'>;
const NO_WAY: Way = { past: null, future: null };

let opened: UseStore | null = null;
const shelf = (): UseStore => {
  opened ??= createStore('harbour-lines-way', 'steps');
  return opened;
};

/** The nearest steps of a list, nearest first. */
function nearest(step: Step | null, most: number): Design[] {
  const found: Design[] = [];
  for (let one = step; one && found.length < most; one = one.before) found.push(one.design);
  return found;
}

/** A list of steps whose nearest one is the last of these. */
const listOf = (designs: readonly Design[]): Step | null =>
  designs.reduce<Step | null>((before, design) => ({ design, before }), null);

/** Each drawing on the way, moved. */
export const movedWay = ({ past, future }: Way, move: (design: Design) => Design): Way => ({
  past: listOf(nearest(past, MOST).reverse().map(move)),
  future: listOf(nearest(future, MOST).reverse().map(move)),
});

/**
 * The way back and forth of one drawing, kept in this browser. Each drawing on it is written once, so that
 * a step costs as much as what it changed. A browser without storage keeps none and still works.
 */
export class KeptWay {
  readonly #key: string;
  readonly #room: string;
  readonly #ids = new WeakMap<Design, number>();
  #kept: readonly number[] = [];
  #next = 0;

  constructor(place: DraftPlace) {
    this.#key = keyOf(place);
    this.#room = `${place.room} `;
  }

  #at(id: number): string {
    return `${this.#key} ${id}`;
  }

  /** The way that was kept, if it leads over `design` as it is now. */
  async find(design: Design): Promise<Way> {
    try {
      await this.#tidy();
      const index = z.safeParse(Index, await get<unknown>(this.#key, shelf()));
      if (!index.success) return NO_WAY;
      const { ids, at } = index.data;
      const raw = await getMany<unknown>(
        ids.map((id) => this.#at(id)),
        shelf(),
      );
      const designs = raw.map((each) => readAs(Design, each));
      this.#kept = ids;
      this.#next = Math.max(-1, ...ids) + 1;
      if (JSON.stringify(raw[at]) !== JSON.stringify(writeDocument(Design, design))) return NO_WAY;
      const whole = designs.filter((each) => each !== null);
      if (whole.length < designs.length) return NO_WAY;
      for (const [i, each] of whole.entries()) this.#ids.set(i === at ? design : each, ids[i]!);
      return { past: listOf(whole.slice(0, at)), future: listOf(whole.slice(at + 1).reverse()) };
    } catch {
      return NO_WAY;
    }
  }

  /** Keeps the way as it is now. */
  async keep({ design, past, future }: Editor): Promise<void> {
    const back = nearest(past, MOST).reverse();
    const designs = [...back, design, ...nearest(future, MOST)];
    const fresh: [string, unknown][] = [];
    const kept = new Set(this.#kept);
    const ids = designs.map((each) => {
      const known = this.#ids.get(each);
      // One that fell off the far end was let go of, and is written anew when the way leads there again.
      if (known !== undefined && kept.has(known)) return known;
      const id = this.#next++;
      this.#ids.set(each, id);
      fresh.push([this.#at(id), writeDocument(Design, each)]);
      return id;
    });
    const gone = this.#kept.filter((id) => !ids.includes(id));
    this.#kept = ids;
    try {
      await setMany([...fresh, [this.#key, { ids, at: back.length }]], shelf());
      await delMany(
        gone.map((id) => this.#at(id)),
        shelf(),
      );
    } catch {
      // Without storage the way lasts as long as the page.
    }
  }

  /** Ways of other rooms are not come back to. */
  async #tidy(): Promise<void> {
    const all = await keys<string>(shelf());
    await delMany(
      all.filter((key) => !key.startsWith(this.#room)),
      shelf(),
    );
  }
}
