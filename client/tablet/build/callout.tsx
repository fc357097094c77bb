import { ArrowRight, Wrench, X } from 'lucide-react';
import type { Finding } from '../../../shared/documents/verdict.ts';
import type { ScreenPoint } from '../../../shared/geometry/units.ts';
import { PlacedBox } from '../../canvas/placed-box.tsx';
import type { Box } from '../../canvas/view.ts';
import { Button } from '../../parts/button.tsx';
import { Hear } from '../../parts/hear.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';

export interface CalloutProps {
  readonly finding: Finding;
  /** Its place in the list, from 1. */
  readonly number: number;
  readonly of: number;
  readonly at: ScreenPoint;
  readonly within: Box;
  readonly clear: readonly ScreenPoint[];
  /** Whether it says what is wrong, or only that one should look here. */
  readonly withWords: boolean;
  /** So many tries until it can be mended; 0 where it can be now, or never. */
  readonly triesLeft: number;
  readonly onMend: (() => void) | null;
  readonly onNext: () => void;
  readonly onClose: () => void;
}

/** One finding, beside its place: what is wrong in one sentence, and the mending where it is known. */
export function Callout(props: CalloutProps) {
  const { finding, number, of, at, within, clear, withWords, triesLeft, ...does } = props;
  const words = useWords();
  const { building } = words.tablet;
  const said = words.findings.said(finding);
  return (
    <PlacedBox className="callout" about={at} within={within} clear={clear} gap={30} role="group">
      <div className="callout-head" data-severity={finding.severity}>
        <h2>{withWords ? said.title : building.lookClosely}</h2>
        <button type="button" className="callout-close" onClick={does.onClose} aria-label={building.close}>
          <Icon of={X} size={20} />
        </button>
      </div>
      {withWords && <p>{said.sentence}</p>}
      {withWords && <Hear text={`${said.title}. ${said.sentence}`} />}
      {withWords && triesLeft > 0 && <p className="quiet-words">{building.mendAfter(triesLeft)}</p>}
      {(does.onMend || of > 1) && (
        <div className="callout-foot">
          {does.onMend && (
            <Button look="primary" icon={<Icon of={Wrench} />} onClick={does.onMend}>
              {building.mend}
            </Button>
          )}
          {of > 1 && (
            <Button look="quiet" icon={<Icon of={ArrowRight} />} onClick={does.onNext}>
              {building.nextThing}
              <span className="callout-count">{building.oneOf(number, of)}</span>
            </Button>
          )}
        </div>
      )}
    </PlacedBox>
  );
}
