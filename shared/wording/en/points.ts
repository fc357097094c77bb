import type { PointLine } from '../../documents/verdict.ts';

/** Why points were given: codes of `shared/points`. */
export const points = {
  line: (line: PointLine): string => line.reason,
};
