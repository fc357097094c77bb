import type { Study } from '../../../shared/judge/study.ts';
import type { RobotsDo } from '../../../shared/wording/en/foretelling.ts';
import { useWords } from '../../parts/use-words.ts';

export interface RobotsProps {
  readonly study: Partial<Study>;
  readonly does: RobotsDo;
}

const TWENTY = Array.from({ length: 20 }, (_, i) => i);

/** Twenty slightly different robots, one sign each, and where the line frays. */
export function Robots({ study, does }: RobotsProps) {
  const { foretelling } = useWords();
  const { entry, frayed } = study;
  const steadiness = entry?.steadiness;
  const worst = frayed?.stretches[0];
  return (
    <section className="trying-robots" aria-live="polite">
      <p className="robots-row" aria-hidden="true">
        {TWENTY.map((i) => (
          <span key={i} data-does={steadiness ? (i < steadiness.same ? 'same' : 'other') : 'open'} />
        ))}
      </p>
      <p>
        {steadiness
          ? foretelling.robots(steadiness.same, steadiness.of, steadiness.weather, does)
          : foretelling.counting}
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
