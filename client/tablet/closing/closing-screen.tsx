import { ArrowRight, CloudOff } from 'lucide-react';
import { useState } from 'react';
import type { ClosingCheck } from '../../../shared/documents/closing-check.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { RoomCheck, RoomState, Team } from '../../../shared/room/state.ts';
import { Button } from '../../parts/button.tsx';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { hereOf, useDocument } from '../../parts/use-document.ts';
import { useLinkState } from '../../parts/use-link.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import { Resting } from '../build/resting.tsx';
import { NoteButton } from '../notes/note-button.tsx';
import { GivenSheet } from '../predict/given-sheet.tsx';
import { ConnectingScreen } from '../screens/connecting.tsx';
import { Known } from './known.tsx';
import { Pick } from './pick.tsx';
import '../build/build.css';
import '../predict/predict.css';
import './closing.css';

export interface ClosingScreenProps {
  readonly room: RoomState;
  readonly team: Team;
  readonly onDone: () => void;
}

/** The last questions of a lesson; once they are over, what is right and why. */
export function ClosingScreen({ room, team, onDone }: ClosingScreenProps) {
  const check = room.checks.at(-1);
  const document = hereOf(useDocument('closing-check', check?.document ?? null));
  if (!check || !document) return <ConnectingScreen />;
  return (
    <>
      <Questions key={room.checks.length} {...{ room, team, check, document, onDone }} />
      {room.lookHere && <Resting paused={false} />}
    </>
  );
}

interface QuestionsProps extends ClosingScreenProps {
  readonly check: RoomCheck;
  readonly document: ClosingCheck;
}

function Questions({ room, team, check, document, onDone }: QuestionsProps) {
  const words = useWords().closing.check;
  const locale = useLocale();
  const [at, setAt] = useState(0);
  const { said, say, refusal } = useSaid(room, team, check);
  const { questions } = document;
  const { kit, sheet, sentence, ask } = questions[at]!;
  const answer = check.key?.[at];
  const picked = said(at);
  return (
    <main className="build predict closing" inert={room.lookHere}>
      <header className="build-head">
        <EmblemBadge emblem={team.emblem} size={30} />
        <h1 className="predict-sentence">{check.ended ? words.ended : words.title(questions.length)}</h1>
        <NoteButton room={room} team={team} />
      </header>
      <GivenSheet challenge={{ kit, sheet }} question={ask} label={words.sheet(textIn(sentence, locale))} />
      <section className="question" aria-label={words.which(at + 1, questions.length)}>
        <p className="quiet-words">{words.which(at + 1, questions.length)}</p>
        {check.ended && answer ? (
          <Known question={questions[at]!} answer={answer} picked={picked} />
        ) : (
          <Pick question={questions[at]!} picked={picked} onPick={(key) => say(at, key)} />
        )}
        <Steps at={at} of={questions.length} onGo={setAt} />
      </section>
      <footer className="build-foot">
        <FootWords open={questions.filter((_, i) => said(i) === undefined).length} ended={check.ended} />
        <Refused refusal={refusal} />
        {check.ended && (
          <Button
            look="primary"
            className="foot-button"
            icon={<Icon of={ArrowRight} size={26} />}
            onClick={onDone}
          >
            {words.onward}
          </Button>
        )}
      </footer>
    </main>
  );
}

/** What the team has picked, at once as it was tapped, and as the room has it. */
function useSaid(room: RoomState, team: Team, check: RoomCheck) {
  const { ask, refusal } = useAsk();
  const [tapped, setTapped] = useState<Readonly<Record<number, string>>>({});
  const kept = (question: number) =>
    check.answers.find((one) => one.team === team.id && one.question === question)?.picked;
  return {
    refusal,
    said: (question: number) => (check.ended ? kept(question) : (tapped[question] ?? kept(question))),
    say: (question: number, picked: string) => {
      setTapped((before) => ({ ...before, [question]: picked }));
      void ask({ kind: 'answer-check', check: room.checks.length - 1, question, picked });
    },
  };
}

interface StepsProps {
  readonly at: number;
  readonly of: number;
  readonly onGo: (at: number) => void;
}

function Steps({ at, of, onGo }: StepsProps) {
  const { predicting } = useWords().tablet;
  return (
    <div className="question-steps">
      <Button disabled={at === 0} onClick={() => onGo(at - 1)}>
        {predicting.before}
      </Button>
      <Button disabled={at === of - 1} onClick={() => onGo(at + 1)}>
        {predicting.next}
      </Button>
    </div>
  );
}

function FootWords({ open, ended }: { readonly open: number; readonly ended: boolean }) {
  const { closing, tablet } = useWords();
  const away = useLinkState((state) => state.status.kind !== 'live');
  return (
    <div className="foot-words">
      {!ended && <span role="status">{open === 0 ? closing.check.done : closing.check.open(open)}</span>}
      {away && (
        <span className="foot-away" role="status">
          <Icon of={CloudOff} size={20} />
          {tablet.predicting.away}
        </span>
      )}
    </div>
  );
}
