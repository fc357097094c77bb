import type { Kit } from '../../../shared/documents/kit.ts';
import { bandsTried, CORNERS_TRIED, type Limit, type Made } from '../../../shared/prep/fit-limits.ts';
import { useWholeWords } from '../whole-words.ts';
import { FIT_LIMITS, type FitNotes, withMade } from './fit-notes.ts';

interface LimitsProps {
  readonly notes: FitNotes;
  readonly kit: Kit;
  readonly corner: Limit | undefined;
  readonly band: Limit | undefined;
  readonly onChange: (notes: FitNotes) => void;
}

/** How many robots made each step of the printed limits, and what all of them make. */
export function FitLimits({ notes, kit, corner, band, onChange }: LimitsProps) {
  const { fitting, numbers } = useWholeWords();
  const lengths = bandsTried(kit);
  return (
    <>
      <label className="fit-tried">
        {fitting.tried}
        <input
          type="number"
          min={1}
          max={FIT_LIMITS.robots}
          value={notes.tried}
          onChange={({ target }) =>
            onChange({ ...notes, tried: whole(target.valueAsNumber, FIT_LIMITS.robots) || 1 })
          }
        />
      </label>
      <Steps
        legend={fitting.corners}
        steps={CORNERS_TRIED.map((degrees) => numbers.angle(degrees))}
        made={notes.corners}
        most={notes.tried}
        onChange={(corners) => onChange({ ...notes, corners })}
      />
      <LimitSaid
        limit={corner}
        tried={notes.tried}
        some={notes.corners.some((made) => made !== null)}
        said={corner ? fitting.cornerLimit(CORNERS_TRIED[corner.step]!) : ''}
      />
      <Steps
        legend={fitting.bands}
        steps={lengths.map((length) => numbers.length(length, 1))}
        made={notes.bands}
        most={notes.tried}
        onChange={(bands) => onChange({ ...notes, bands })}
      />
      <LimitSaid
        limit={band}
        tried={notes.tried}
        some={notes.bands.some((made) => made !== null)}
        said={band ? fitting.bandLimit(numbers.length(lengths[band.step] ?? 0, 1)) : ''}
      />
    </>
  );
}

/** A whole number up to `most`; undefined where none is typed. */
const whole = (typed: number, most: number): number | undefined =>
  Number.isFinite(typed) ? Math.max(0, Math.min(most, Math.floor(typed))) : undefined;

interface StepsProps {
  readonly legend: string;
  readonly steps: readonly string[];
  readonly made: readonly Made[];
  readonly most: number;
  readonly onChange: (made: readonly Made[]) => void;
}

const Steps = ({ legend, steps, made, most, onChange }: StepsProps) => (
  <fieldset className="fit-steps">
    <legend>{legend}</legend>
    {steps.map((step, i) => (
      <label key={step}>
        {step}
        <input
          type="number"
          min={0}
          max={most}
          value={made[i] ?? ''}
          onChange={({ target }) =>
            onChange(withMade(made, steps.length, i, whole(target.valueAsNumber, most) ?? null))
          }
        />
      </label>
    ))}
  </fieldset>
);

interface SaidProps {
  readonly limit: Limit | undefined;
  readonly tried: number;
  /** Something has been typed in. */
  readonly some: boolean;
  readonly said: string;
}

function LimitSaid({ limit, tried, some, said }: SaidProps) {
  const { fitting } = useWholeWords();
  if (!some) return null;
  if (!limit) return <p role="status">{fitting.noLimit}</p>;
  return (
    <p role="status">
      <strong>{said}</strong> {fitting.allOf(tried, limit.interval.low)} {!limit.met && fitting.further}
    </p>
  );
}
