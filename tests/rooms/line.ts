import type { Neighbours, News, NewsListener } from '../../server/log/neighbours.ts';

/** A line between servers of one test: what one tells, the others hear a moment later. */
export class FakeLine {
  readonly #ends = new Map<string, FakeEnd>();
  /** The largest news so far, as it would be sent, bytes. */
  largest = 0;

  end(id: string): FakeEnd {
    const end = new FakeEnd(id, this);
    this.#ends.set(id, end);
    return end;
  }

  pass(news: News, from: string): void {
    this.largest = Math.max(this.largest, Buffer.byteLength(JSON.stringify(news)));
    const text = JSON.stringify(news);
    for (const [id, end] of this.#ends) if (id !== from) end.receive(JSON.parse(text) as News, from);
  }

  gone(id: string): void {
    this.#ends.delete(id);
    for (const end of this.#ends.values()) end.listener?.gone(id);
  }
}

class FakeEnd implements Neighbours {
  readonly alone = false;
  listener: NewsListener | null = null;
  #cut = false;
  readonly #id: string;
  readonly #line: FakeLine;

  constructor(id: string, line: FakeLine) {
    this.#id = id;
    this.#line = line;
  }

  tell(news: News): void {
    if (!this.#cut) setImmediate(() => this.#line.pass(news, this.#id));
  }

  hear(listener: NewsListener): void {
    this.listener = listener;
    listener.missed();
  }

  receive(news: News, from: string): void {
    if (!this.#cut) this.listener?.news(news, from);
  }

  /** News in both directions are lost from now on. */
  cut(): void {
    this.#cut = true;
  }

  mend(): void {
    this.#cut = false;
    this.listener?.missed();
  }

  /** The process ends without a word. */
  die(): void {
    this.cut();
    this.#line.gone(this.#id);
  }

  async close(): Promise<void> {
    this.die();
  }
}
