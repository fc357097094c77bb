import { monitorEventLoopDelay } from 'node:perf_hooks';
import { Counter, Gauge, Histogram, type OpenMetricsContentType, Registry } from 'prom-client';

/** What is counted right now, asked for when somebody reads the figures. */
export interface Counts {
  readonly sockets: number;
  readonly rooms: number;
  /** Entries without a verdict that a judge has or will get. */
  readonly judging: number;
}

/** Seconds: from a fast disk to one that a lesson would notice. */
const APPEND_BUCKETS = [0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.25, 1, 5];
const DELAY_EVERY_MS = 10;
const QUANTILES = [0.5, 0.99, 1];
const NS_PER_SECOND = 1e9;

/**
 * Figures of one server process in the OpenMetrics text format. Labels are kinds of commands and codes
 * of refusals, which are closed lists: nothing says which room, team, device or person it was.
 */
export class Meter {
  readonly #registry = new Registry<OpenMetricsContentType>();
  readonly #delay = monitorEventLoopDelay({ resolution: DELAY_EVERY_MS });
  readonly #commands = this.#counter('commands', 'Commands that were taken, by kind', ['kind']);
  readonly #refusals = this.#counter('refusals', 'What was refused, by way in and code', ['way', 'code']);
  readonly #appends = new Histogram({
    name: 'harbour_append_seconds',
    help: 'Time of one durable append to a room',
    buckets: APPEND_BUCKETS,
    registers: [this.#registry],
  });

  constructor(counts: () => Counts) {
    this.#registry.setContentType(Registry.OPENMETRICS_CONTENT_TYPE);
    this.#delay.enable();
    this.#gauge('sockets', 'Connected pages', () => counts().sockets);
    this.#gauge('rooms', 'Rooms in memory', () => counts().rooms);
    this.#gauge('judge_queue', 'Entries that wait for their verdict', () => counts().judging);
    this.#gauge('resident_bytes', 'Resident memory of the process', () => process.memoryUsage.rss());
    this.#delayGauge();
  }

  #counter<L extends string>(name: string, help: string, labelNames: L[]): Counter<L> {
    return new Counter({ name: `harbour_${name}`, help, labelNames, registers: [this.#registry] });
  }

  #gauge(name: string, help: string, value: () => number): void {
    const registers = [this.#registry];
    new Gauge({
      name: `harbour_${name}`,
      help,
      registers,
      collect() {
        this.set(value());
      },
    });
  }

  /** Since the last reading. The histogram holds times between its own ticks, so one tick is taken off. */
  #delayGauge(): void {
    const delay = this.#delay;
    new Gauge({
      name: 'harbour_event_loop_delay_seconds',
      help: 'How late the event loop was since the last reading',
      labelNames: ['quantile'],
      registers: [this.#registry],
      collect() {
        for (const quantile of QUANTILES) {
          const seconds = (delay.percentile(quantile * 100) - DELAY_EVERY_MS * 1e6) / NS_PER_SECOND;
          this.set({ quantile }, Math.max(0, seconds));
        }
        delay.reset();
      },
    });
  }

  took(kind: string): void {
    this.#commands.inc({ kind });
  }

  refused(way: string, code: string): void {
    this.#refusals.inc({ way, code });
  }

  appended(seconds: number): void {
    this.#appends.observe(seconds);
  }

  get contentType(): string {
    return this.#registry.contentType;
  }

  text(): Promise<string> {
    return this.#registry.metrics();
  }

  close(): void {
    this.#delay.disable();
  }
}
