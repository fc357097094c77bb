import { useMemo, useState } from 'react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Design } from '../../../shared/documents/design.ts';
import { fromOtherEnd, inStorm, type NextQuestion, without } from '../../../shared/judge/next-question.ts';
import type { DrawingSession } from '../../editor/surface/session.ts';
import { useSessionState } from '../../editor/surface/use-session-state.ts';
import { useJudged } from '../../parts/judging.ts';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/use-words.ts';
import type { Help } from '../build/use-help.ts';
import { Back } from './back.tsx';
import { Foretell } from './foretell.tsx';
import { Run } from './run.tsx';
import type { RunProps } from './side.tsx';
import { useEvidence } from './use-evidence.ts';
import './trying.css';

export interface TryItProps {
  readonly challenge: Challenge;
  readonly session: DrawingSession;
  readonly round: number;
  readonly help: Help;
  readonly onBack: () => void;
}

/** What is driven: the team's own drawing, or what the next question makes of it. */
interface Driven {
  readonly challenge: Challenge;
  readonly design: Design;
}

/** The robot drives over the drawing as it is, once the team has said what it will do. Nothing is scored. */
export function TryIt({ challenge, session, round, help, onBack }: TryItProps) {
  const { trying } = useWords().tablet;
  const design = useSessionState(session, (state) => state.editor.design);
  const { tried, foretell, explain } = useEvidence(challenge, design, round, help);
  const own = useMemo<Driven>(() => ({ challenge, design }), [challenge, design]);
  const [asked, setAsked] = useState<Driven | null>(null);
  const driven = asked ?? own;
  const { drawing } = design;
  const empty = drawing.lines.length + challenge.sheet.given.lines.length === 0;
  return (
    <section className="trying" aria-label={trying.title}>
      {tried || empty ? (
        <Drive
          driven={driven}
          isOwn={asked === null}
          tried={tried}
          onExplain={explain}
          onSee={(question) => setAsked(questioned(own, question))}
          onBack={asked ? () => setAsked(null) : onBack}
        />
      ) : (
        <>
          <Foretell challenge={challenge} drawing={drawing} onSay={foretell} />
          <div className="trying-foot">
            <Back onBack={onBack} words={trying.back} />
          </div>
        </>
      )}
    </section>
  );
}

/** What a question asks to be driven. */
function questioned({ challenge, design }: Driven, question: NextQuestion): Driven {
  switch (question.kind) {
    case 'other-end':
      return { challenge: fromOtherEnd(challenge) ?? challenge, design };
    case 'storm':
      return { challenge: inStorm(challenge), design };
    case 'fewer-marks':
      return { challenge, design: question.spare === null ? design : without(design, question.spare) };
  }
}

interface DriveProps extends Pick<RunProps, 'tried' | 'onExplain' | 'onSee' | 'onBack'> {
  readonly driven: Driven;
  readonly isOwn: boolean;
}

/** The run, once it is worked out. */
function Drive({ driven, isOwn, onBack, ...rest }: DriveProps) {
  const { tablet, foretelling } = useWords();
  const { challenge, design } = driven;
  const judged = useJudged(challenge, design);
  const back = isOwn ? tablet.trying.back : foretelling.ownRun;
  if (judged && judged.traces.length > 0)
    return (
      <Run
        key={judged.traces[0]!.hash + challenge.weather + challenge.starts}
        {...driven}
        {...rest}
        judged={judged}
        isOwn={isOwn}
        back={back}
        onBack={onBack}
      />
    );
  return (
    <div className="trying-wait">
      <Notice role="status" tone={judged ? 'caution' : 'plain'}>
        {judged ? tablet.trying.noRun : tablet.trying.working}
      </Notice>
      <Back onBack={onBack} words={back} />
    </div>
  );
}
