import { CircleCheck, CloudOff, Eye, Play, Send } from 'lucide-react';
import { useMemo } from 'react';
import { drawsLines } from '../../editor/model.ts';
import { linePath } from '../../editor/paths.ts';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLinkState } from '../../parts/use-link.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { Findings } from './use-findings.ts';

export interface FootProps {
  readonly session: DrawingSession;
  readonly findings: Findings;
  /** Whether the drawing has been looked at as it is. */
  readonly looked: boolean;
  readonly onTry: () => void;
  readonly onHandIn: () => void;
}

/** What there is so far, and the two ways on: trying and handing in stand apart. */
export function Foot({ session, findings, looked, onTry, onHandIn }: FootProps) {
  const words = useWords();
  const { building } = words.tablet;
  const drawing = useSessionState(session, ({ editor }) => editor.design.drawing);
  const away = useLinkState((state) => state.status.kind !== 'live');
  const tooLarge = useLinkState((state) => state.draftRefusal !== null);
  const ink = useMemo(() => drawing.lines.reduce((sum, line) => sum + linePath(line).length, 0), [drawing]);
  return (
    <footer className="build-foot">
      <div className="foot-words">
        {findings.afterTry ? (
          looked && <span>{building.afterTry}</span>
        ) : findings.all.length > 0 ? (
          <button type="button" className="foot-things" onClick={findings.toggle}>
            <Icon of={Eye} size={22} />
            {building.things(findings.all.length)}
          </button>
        ) : (
          looked &&
          drawing.lines.length + drawing.marks.length > 0 && (
            <span className="foot-sound">
              <Icon of={CircleCheck} size={22} />
              {building.things(0)}
            </span>
          )
        )}
        <span>
          {drawsLines(session.context.play)
            ? building.inkAndMarks(words.numbers.length(ink), drawing.marks.length)
            : building.marksOnly(drawing.marks.length)}
        </span>
        {tooLarge && (
          <span className="foot-away" role="alert">
            <Icon of={CloudOff} size={20} />
            {building.tooLarge}
          </span>
        )}
        {away && (
          <span className="foot-away" role="status">
            <Icon of={CloudOff} size={20} />
            {building.away}
          </span>
        )}
      </div>
      <Button className="foot-button foot-try" icon={<Icon of={Play} size={26} />} onClick={onTry}>
        {building.tryIt}
      </Button>
      <Button look="primary" className="foot-button" icon={<Icon of={Send} size={26} />} onClick={onHandIn}>
        {building.handIn}
      </Button>
    </footer>
  );
}
