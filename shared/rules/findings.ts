import type { Finding, FindingVariant, Place, Remedy, RuleId } from '../documents/verdict.ts';
import { pointAt } from '../geometry/path.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { LaidMark } from '../track/layout.ts';
import type { Track } from '../track/track.ts';

type Measure = Pick<Finding, 'measured' | 'allowed' | 'unit'>;

interface Said extends Measure {
  readonly variant?: FindingVariant;
  readonly severity: Finding['severity'];
  /** Code of the wording for what to do. */
  readonly remedy: Remedy;
}

/** A finding with its id: the rule, its variant, and the place to a tenth of a millimetre. */
export function findingAt(rule: RuleId, place: Place, said: Said): Finding {
  const { remedy, ...rest } = said;
  const variant = said.variant === undefined ? '' : `.${said.variant}`;
  return { id: `${rule}${variant}@${placeKey(place)}`, rule, ...rest, place, remedy: { code: remedy } };
}

const tenth = (mm: Mm): number => Math.round(mm * 10) / 10 + 0;

function placeKey(place: Place): string {
  if (place.kind === 'mark') return place.mark;
  const { x, y } = place.at;
  return `${tenth(x)},${tenth(y)}`;
}

export const pointPlace = ({ x, y }: PaperPoint): Place => ({ kind: 'point', at: { x, y } });

/** The ring of a mark's finding stands on the middle of the mark. */
export function markPlace(track: Track, mark: LaidMark): Place {
  const line = track.lines.find((l) => l.line.id === mark.line)!.line;
  const middle = Math.min((mark.from + mark.to) / 2, line.path.length);
  return { kind: 'mark', at: pointAt(line.path, middle), mark: mark.id };
}

/** A measured length beside the allowed one. */
export const lengths = (measured: Mm, allowed: Mm): Measure => ({ measured, allowed, unit: 'mm' });
