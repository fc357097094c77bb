import { Check, Hand } from 'lucide-react';
import { useMemo } from 'react';
import { ANSWER_LETTERS } from '../../shared/evidence/letters.ts';
import type { Stop } from '../../shared/evidence/stops.ts';
import { durationOf, middleOf } from '../../shared/picture/replay.ts';
import type { Forecast } from '../../shared/room/board.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { layOut } from '../../shared/track/layout.ts';
import { paintPointed } from '../canvas/paint-question.ts';
import { ReplayView } from '../canvas/replay-view.tsx';
import { Icon } from '../parts/icon.tsx';
import { MarkPicture } from '../parts/mark-picture.tsx';
import {
  type Asked,
  type ForecastHere,
  handsRight,
  useAsked,
  useForecast,
  useForecastTime,
} from '../parts/use-forecast.ts';
import { useWords } from '../parts/use-words.ts';
import { Head } from './head.tsx';
import { useRem } from './use-rem.ts';
import './forecast-scene.css';

type Here = Extract<ForecastHere, { kind: 'here' }>;

/** A drive that stops before each mark: hands go up, then it shows what the mark says. */
export function ForecastScene({ room }: { readonly room: RoomState }) {
  const { board, scenes } = useWords();
  const here = useForecast(room);
  const { forecast } = room.board;
  if (here.kind === 'no-drive') return <Head title={scenes.foretell.title} word={board.show.neverStarted} />;
  if (here.kind !== 'here' || !forecast)
    return <Head title={scenes.foretell.title} word={board.show.loading} />;
  return <Drive here={here} forecast={forecast} />;
}

interface DriveProps {
  readonly here: Here;
  readonly forecast: Forecast;
}

function Drive({ here, forecast }: DriveProps) {
  const { actions, board, scenes } = useWords();
  const rem = useRem();
  const timeAt = useForecastTime(forecast, here);
  const asked = useAsked(forecast, here);
  const { challenge, design, trace, stops } = here;
  const hands = handsRight(stops, forecast.hands);
  const pointed = usePointed(here, asked);
  const traces = useMemo(() => [trace], [trace]);
  const number = asked.stop === null ? null : asked.stop + 1;
  return (
    <>
      <Head
        title={scenes.foretell.title}
        {...(number === null ? {} : { word: scenes.foretell.mark(number, stops.length) })}
      />
      <div className="beside">
        <div className="beside-sheet" style={{ aspectRatio: `${challenge.sheet.w} / ${challenge.sheet.h}` }}>
          <ReplayView
            challenge={challenge}
            drawing={design.drawing}
            traces={traces}
            timeAt={timeAt}
            textSize={rem}
            pad={6}
            over={pointed}
            label={scenes.foretell.label}
          />
        </div>
        <div className="beside-side foretell">
          {asked.stop === null ? (
            <p className="foretell-note">
              {stops.length === 0 ? scenes.foretell.noMarks : scenes.foretell.begins}
            </p>
          ) : (
            <Question here={here} forecast={forecast} asked={asked} stop={stops[asked.stop]!} />
          )}
          {asked.over && (
            <div className="foretell-end">
              <p>{board.show.ended(actions.ending(trace.ending), durationOf(trace))}</p>
              {hands.of > 0 && <p>{scenes.foretell.right(hands.right, hands.of)}</p>}
            </div>
          )}
        </div>
      </div>
    </>
  );
}

/** A ring around the mark that is asked about, while the robot waits before it. */
function usePointed({ challenge, design, stops }: Here, { stop, stand }: Asked) {
  const mark = stand === 'waits' && stop !== null ? stops[stop]?.mark : undefined;
  return useMemo(() => {
    const at = middleOf(mark, layOut(challenge.sheet, design.drawing));
    return at ? paintPointed({ at, area: null, letters: [] }) : null;
  }, [challenge, design, mark]);
}

interface QuestionProps extends DriveProps {
  readonly asked: Asked;
  readonly stop: Stop;
}

function Question({ here, forecast, asked, stop }: QuestionProps) {
  const { scenes, actions, questions } = useWords();
  const rem = useRem();
  const hands = forecast.hands[asked.stop ?? 0] ?? [];
  const most = Math.max(1, ...hands);
  const told = asked.stand === 'told';
  return (
    <section>
      <h2 className="foretell-ask">
        {asked.stand === 'waits' && <Icon of={Hand} size="1.1em" />}
        {told ? scenes.foretell.says : scenes.foretell.ask}
      </h2>
      <p className="foretell-mark">
        <MarkPicture kit={here.challenge.kit} word={stop.word} size={1.5 * rem} />
      </p>
      <ol className="foretell-answers">
        {stop.answers.map(({ action, right }, i) => (
          <li key={ANSWER_LETTERS[i]} data-right={told && right}>
            <span className="foretell-letter">
              {told && right ? <Icon of={Check} size="1.1em" label={questions.right} /> : ANSWER_LETTERS[i]}
            </span>
            <span className="foretell-word">{action ? actions.name(action) : actions.unknown}</span>
            {hands[i] !== undefined && (
              <>
                <span className="foretell-hands">{hands[i]}</span>
                <span className="foretell-bar" style={{ width: `${(100 * hands[i]) / most}%` }} />
              </>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
