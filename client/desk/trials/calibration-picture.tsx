import type { Bin } from '../../../shared/prep/foretold.ts';
import { useWholeWords } from '../whole-words.ts';

/** Side of the picture and its margins, in units of its own. */
const [SIDE, EDGE, TOP] = [200, 44, 18];
const TICKS = [0, 0.5, 1] as const;

const x = (share: number) => EDGE + share * SIDE;
const y = (share: number) => TOP + (1 - share) * SIDE;

/** The calibration curve: what came over what was foretold, with ranges, beside the line where both are the same. */
export function CalibrationPicture({ bins }: { readonly bins: readonly Bin[] }) {
  const { beside } = useWholeWords();
  const { mean, axes } = beside;
  return (
    <figure className="calibration">
      <svg viewBox={`0 0 ${EDGE + SIDE + 24} ${TOP + SIDE + 38}`} role="img" aria-label={beside.picture}>
        <rect className="calibration-frame" x={EDGE} y={TOP} width={SIDE} height={SIDE} />
        <line className="calibration-same" x1={x(0)} y1={y(0)} x2={x(1)} y2={y(1)} />
        {TICKS.map((share) => (
          <g key={share}>
            <text x={x(share)} y={y(0) + 14} textAnchor="middle">
              {mean(share)}
            </text>
            <text x={x(0) - 4} y={y(share) + 4} textAnchor="end">
              {mean(share)}
            </text>
          </g>
        ))}
        <text x={x(0)} y={8} textAnchor="middle">
          {axes.came}
        </text>
        <text x={x(0.5)} y={y(0) + 30} textAnchor="middle">
          {axes.foretold}
        </text>
        {bins.map(({ from, foretold, trials, came, interval }) => (
          <g key={from} className="calibration-bin">
            <line x1={x(foretold)} x2={x(foretold)} y1={y(interval.low)} y2={y(interval.high)} />
            <circle cx={x(foretold)} cy={y(came / trials)} r={5} />
          </g>
        ))}
      </svg>
      <figcaption>{beside.picture}</figcaption>
    </figure>
  );
}
