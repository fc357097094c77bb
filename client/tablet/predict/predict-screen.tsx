import { BookOpen, CloudOff, Send } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import { Answers } from '../../../shared/documents/answers.ts';
import { textIn, writeDocument } from '../../../shared/documents/values.ts';
import { questionsOf } from '../../../shared/judge/questions.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { EmblemBadge } from '../../parts/emblem-badge.tsx';
import { entriesOf } from '../../parts/figures.ts';
import { Icon } from '../../parts/icon.tsx';
import { useLink, useLinkState } from '../../parts/use-link.tsx';
import { useLocale, useWords } from '../../parts/use-words.ts';
import type { BuildScreenProps } from '../build/build-screen.tsx';
import { Resting } from '../build/resting.tsx';
import { TimeLeft } from '../build/time-left.tsx';
import { EntriesButton, EntriesDialog } from '../handing/entries.tsx';
import { handedInBy, Roles } from '../handing/roles.tsx';
import { useHandIn } from '../handing/use-hand-in.ts';
import { WallWishes } from '../handing/wall-wishes.tsx';
import { NoteButton } from '../notes/note-button.tsx';
import { HowButton } from '../playing/how-to-play.tsx';
import { Chart } from './chart.tsx';
import { GivenSheet } from './given-sheet.tsx';
import { HandInAnswers } from './hand-in-answers.tsx';
import { PredictedEntry } from './predicted-entry.tsx';
import { QuestionPanel } from './question-panel.tsx';
import { type AnswersNow, useAnswers } from './use-answers.ts';
import './predict.css';

/** All is given: the team says what the robot will do, question by question. */
export function PredictScreen(props: BuildScreenProps) {
  const { room, team, round } = props;
  const answers = useAnswers({ room: room.id, team: team.id, round, moves: team.moves });
  return answers && <Questions {...props} now={answers} />;
}

type Open = 'handing-in' | 'entries' | 'chart' | null;

function Questions({ room, team, round, challenge, now }: BuildScreenProps & { readonly now: AnswersNow }) {
  const words = useWords();
  const link = useLink();
  const sentence = textIn(challenge.sentence, useLocale());
  const questions = useMemo(() => questionsOf(challenge), [challenge]);
  const [at, setAt] = useState(0);
  const [open, setOpen] = useState<Open>(null);
  const closed = (which: Open) => setOpen((shown) => (shown === which ? null : shown));
  const { answers } = now;
  const entries = entriesOf(room, team.id, round);
  const asked = { kind: 'hand-in-answers', round, answers: writeDocument(Answers, answers) } as const;
  const sending = useHandIn(() => asked, entries.length);
  const doing = entries.length > 0 ? 'handed-in' : 'answering';
  useEffect(() => link.tell({ kind: 'doing', doing }), [link, doing]);
  const question = questions[at]!;
  const resting = room.lookHere || room.paused !== null;

  return (
    <>
      <main className="build predict" inert={resting}>
        <header className="build-head">
          <EmblemBadge emblem={team.emblem} size={30} />
          <h1 className="predict-sentence">{sentence}</h1>
          <NoteButton room={room} team={team} />
          <HowButton challenge={challenge} />
          <EntriesButton entries={entries} waiting={sending.waiting} onOpen={() => setOpen('entries')} />
          <TimeLeft room={room} />
        </header>
        <GivenSheet challenge={challenge} question={question} label={words.tablet.building.sheet(sentence)} />
        <QuestionPanel
          challenge={challenge}
          questions={questions}
          at={at}
          says={answers.answers.find((answer) => answer.question === question.id)?.says}
          onSay={(says) => now.say(question.id, says)}
          onGo={setAt}
        />
        <PredictFoot
          answered={answers.answers.length}
          of={questions.length}
          onChart={() => setOpen('chart')}
          onHandIn={() => setOpen('handing-in')}
        />
        <Dialog
          open={open === 'chart'}
          title={words.tablet.predicting.chart}
          closeWord={words.tablet.building.close}
          onClose={() => closed('chart')}
        >
          <Chart kit={challenge.kit} />
        </Dialog>
        <HandInAnswers
          open={open === 'handing-in'}
          challenge={challenge}
          answers={answers}
          late={room.building?.ended ?? false}
          onClose={() => closed('handing-in')}
          onYes={() => {
            sending.handIn();
            setOpen('entries');
          }}
        />
        <EntriesDialog
          open={open === 'entries'}
          title={words.tablet.predicting.entriesTitle}
          closeWord={words.tablet.predicting.back}
          entries={entries}
          sending={sending}
          onClose={() => closed('entries')}
          before={entries.length > 0 && <Roles handedIn={handedInBy(room, team)} />}
          after={<WallWishes team={team} />}
          view={(entry) => <PredictedEntry entry={entry} challenge={challenge} />}
        />
      </main>
      {resting && <Resting paused={room.paused !== null} />}
    </>
  );
}

interface FootProps {
  readonly answered: number;
  readonly of: number;
  readonly onChart: () => void;
  readonly onHandIn: () => void;
}

function PredictFoot({ answered, of, onChart, onHandIn }: FootProps) {
  const { building, predicting } = useWords().tablet;
  const away = useLinkState((state) => state.status.kind !== 'live');
  return (
    <footer className="build-foot">
      <div className="foot-words">
        <span role="status">{predicting.answered(answered, of)}</span>
        {away && (
          <span className="foot-away" role="status">
            <Icon of={CloudOff} size={20} />
            {predicting.away}
          </span>
        )}
      </div>
      <Button className="foot-button foot-try" icon={<Icon of={BookOpen} size={26} />} onClick={onChart}>
        {predicting.chart}
      </Button>
      <Button look="primary" className="foot-button" icon={<Icon of={Send} size={26} />} onClick={onHandIn}>
        {building.handIn}
      </Button>
    </footer>
  );
}
