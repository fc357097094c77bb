import { RotateCcw } from 'lucide-react';
import { type ReactNode, useRef, useState } from 'react';
import { ANSWER_LETTERS } from '../../shared/evidence/letters.ts';
import type { Stop, StopAnswer } from '../../shared/evidence/stops.ts';
import { BOARD_LIMITS, type Forecast } from '../../shared/room/board.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { ClientAsk } from '../../shared/wire/protocol.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useAsked, useForecast } from '../parts/use-forecast.ts';
import { GO_ON_KEY, useGoOn } from './scenes-keys.ts';
import { useWholeWords } from './whole-words.ts';

export interface ForecastControlsProps {
  readonly room: RoomState;
  /** The choice of what is driven. */
  readonly pick: (ask: (command: ClientAsk) => void) => ReactNode;
}

/** The show of hands: a number for each answer, and then the robot drives on. */
export function ForecastControls({ room, pick }: ForecastControlsProps) {
  const { scenes } = useWholeWords();
  const { ask, refusal } = useAsk();
  const here = useForecast(room);
  const { forecast } = room.board;
  const asked = useAsked(forecast, here);
  const waits = asked.stand === 'waits' && here.kind === 'here';
  const driveOn = () => forecast && void ask({ kind: 'drive-on', passed: forecast.passed + 1 });
  useGoOn(waits ? driveOn : undefined);
  const stop = here.kind === 'here' && asked.stop !== null ? here.stops[asked.stop] : undefined;
  return (
    <div className="scene-controls">
      {pick((command) => void ask(command))}
      {stop && forecast && asked.stop !== null && (
        <Hands
          key={`${forecast.since} ${asked.stop}`}
          stop={stop}
          hands={forecast.hands[asked.stop] ?? []}
          onCount={(hands) => void ask({ kind: 'count-hands', stop: asked.stop ?? 0, hands })}
          onDone={driveOn}
        />
      )}
      {waits ? (
        <Button look="primary" shortcut={GO_ON_KEY} onClick={driveOn}>
          {scenes.foretell.driveOn}
        </Button>
      ) : (
        <span>{asked.over ? scenes.foretell.over : scenes.foretell.driving}</span>
      )}
      <Again forecast={forecast} onAgain={(entry) => void ask({ kind: 'foretell', entry })} />
      <Refused refusal={refusal} />
    </div>
  );
}

interface AgainProps {
  readonly forecast: Forecast | null;
  readonly onAgain: (entry: string | null) => void;
}

function Again({ forecast, onAgain }: AgainProps) {
  const { scenes } = useWholeWords();
  if (!forecast) return null;
  return (
    <Button
      look="quiet"
      icon={<Icon of={RotateCcw} />}
      aria-label={scenes.again}
      title={scenes.again}
      onClick={() => onAgain(forecast.hung?.entry ?? null)}
    />
  );
}

interface HandsProps {
  readonly stop: Stop;
  readonly hands: Forecast['hands'][number];
  readonly onCount: (hands: readonly number[]) => void;
  /** Enter in the last field. */
  readonly onDone: () => void;
}

function Hands({ stop, hands, onCount, onDone }: HandsProps) {
  const words = useWholeWords();
  const [typed, setTyped] = useState<readonly string[]>(stop.answers.map((_, i) => String(hands[i] ?? '')));
  const fields = useRef<(HTMLInputElement | null)[]>([]);
  const type = (place: number, text: string) => {
    const now = typed.map((each, i) => (i === place ? text.replace(/\D/g, '') : each));
    setTyped(now);
    onCount(now.map((each) => Math.min(BOARD_LIMITS.hands, Number(each))));
  };
  const next = (place: number) => {
    const field = fields.current[place + 1];
    if (field) field.focus();
    else onDone();
  };
  return (
    <>
      {stop.answers.map(({ action, right, mistake }, i) => {
        const name = action ? words.actions.name(action) : words.actions.unknown;
        return (
          <label
            key={ANSWER_LETTERS[i]}
            className="scene-hands"
            title={right ? words.scenes.foretell.isRight : ideaOf(mistake, words)}
          >
            <span aria-hidden="true">
              <strong>{ANSWER_LETTERS[i]}</strong> {name}
            </span>
            <input
              type="number"
              ref={(field) => {
                fields.current[i] = field;
              }}
              className="scene-number"
              min={0}
              max={BOARD_LIMITS.hands}
              aria-label={words.scenes.foretell.hands(ANSWER_LETTERS[i] ?? '', name)}
              value={typed[i]}
              onChange={({ target }) => type(i, target.value)}
              onKeyDown={({ key }) => key === 'Enter' && next(i)}
            />
          </label>
        );
      })}
    </>
  );
}

/** What those may think who raise their hands for a wrong one. */
function ideaOf(mistake: StopAnswer['mistake'], { reasons, scenes }: Wording): string | undefined {
  if (mistake === null) return undefined;
  return mistake === 'one-ink-mistaken' ? scenes.foretell.inkMistaken : reasons.said(mistake);
}
