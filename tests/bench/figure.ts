/** One line of a bench. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** What the value is held against: `<= 5` or `>= 100`; absent for a figure that only tells. */
  readonly target?: { readonly at: 'most' | 'least'; readonly value: number };
}

const isOk = ({ value, target }: Figure): boolean =>
  !target || (target.at === 'most' ? value <= target.value : value >= target.value);

const SIGNS = { most: '<=', least: '>=' } as const;
const shown = (value: number) => (Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** `NAME figure value unit target ok|short`; a figure without a target is always ok. */
export function lineOf(bench: string, figure: Figure): string {
  const target = figure.target ? `${SIGNS[figure.target.at]}${figure.target.value}` : '-';
  return [bench, figure.name, shown(figure.value), figure.unit, target, isOk(figure) ? 'ok' : 'short'].join(
    ' ',
  );
}

export const anyShort = (figures: readonly Figure[]): boolean => figures.some((figure) => !isOk(figure));

/** The value below which this share of the values lies (nearest rank). */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const rank = Math.min(sorted.length, Math.max(1, Math.ceil(share * sorted.length)));
  return sorted[rank - 1] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);

/** Processor time of this process so far, s. */
export function coreSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Processor time of each round of some work, ms. */
export function timesOf(rounds: number, work: () => void): number[] {
  return Array.from({ length: rounds }, () => {
    const began = coreSeconds();
    work();
    return (coreSeconds() - began) * 1000;
  });
}
