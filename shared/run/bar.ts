/** What the bar of a run's robot read, beside the samples of its trace. */
export interface BarReadings {
  /** Five a sample, from the left: 0 on paper to 255 on line. */
  readonly dark: Uint8Array;
  /** What the middle sensor saw, one letter a sample: an ink's, `-` line, space paper, `?` something else. */
  readonly middle: string;
}

export const SEEN = { line: '-', paper: ' ', other: '?' } as const;
