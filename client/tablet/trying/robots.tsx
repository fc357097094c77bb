import type { Weather } from '../../../shared/documents/outlook.ts';
import type { Study } from '../../../shared/judge/study.ts';
import { useWords } from '../../parts/use-words.ts';

const TWENTY = Array.from({ length: 20 }, (_, i) => i);

export interface RobotsProps {
  readonly study: Partial<Study>;
  readonly weather: Weather;
  readonly met: boolean;
}

/** Twenty slightly different robots, one sign each, and where the line frays. */
export function Robots({ study, weather, met }: RobotsProps) {
  const { foretelling } = useWords();
  const { robots, frayed } = study;
  const whole = robots?.of === TWENTY.length;
  const worst = frayed?.stretches[0];
  return (
    <section className="trying-robots" aria-live="polite">
      <p className="robots-row" aria-hidden="true">
        {TWENTY.map((i) => (
          <span
            key={i}
            data-does={robots && i < robots.same ? 'same' : robots && i < robots.of ? 'other' : 'open'}
          />
        ))}
      </p>
      <p>
        {robots && whole ? foretelling.robots(robots.same, robots.of, weather, met) : foretelling.counting}
      </p>
      {frayed && (
        <p className="quiet-words">
          {worst?.causes[0]
            ? foretelling.frays(worst.left, frayed.of, worst.causes[0].cause)
            : foretelling.noFray(frayed.of)}
        </p>
      )}
    </section>
  );
}
