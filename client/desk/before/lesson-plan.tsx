import { useMemo } from 'react';
import type { Kit } from '../../../shared/documents/kit.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { readyChallenges } from '../../../shared/library/ready.ts';
import { lessonPlan, PERIOD } from '../../../shared/prep/lesson-plan.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { useDevice } from '../../parts/device-settings.ts';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { SavePrint } from './save-print.tsx';
import { WholeNumber } from './whole-number.tsx';
import { useWishes } from './wishes.ts';
import './before.css';

export interface PlanProps {
  readonly room: RoomState | null;
  /** null: until it is here there are no challenges to choose from. */
  readonly kit: Kit | null;
}

/** The lesson by the clock, to be printed for whoever gives it. */
export function LessonPlan({ room, kit }: PlanProps) {
  const { lessonPlan: words } = useWholeWords();
  const { language, units } = useDevice();
  const { minutes, challenge } = useWishes();
  const { phases, questions } = useMemo(() => lessonPlan(minutes), [minutes]);
  return (
    <section className="before" aria-labelledby="plan-title">
      <h2 id="plan-title">{words.leaf}</h2>
      <p>{words.how}</p>
      <div className="before-form">
        <WholeNumber
          label={words.minutes}
          value={minutes}
          least={PERIOD.least}
          most={PERIOD.most}
          onChange={(typed) => useWishes.setState({ minutes: typed })}
        />
        <ChallengeWish room={room} kit={kit} />
        <SavePrint
          wanted={{
            kind: 'lesson-plan',
            language,
            units,
            minutes: String(minutes),
            ...(room && { room: room.word }),
            ...(challenge !== null && { challenge }),
          }}
          label={words.save}
        />
      </div>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.phaseHead}</th>
            <th scope="col">{words.minuteHead}</th>
            <th scope="col">{words.doHead}</th>
          </tr>
        </thead>
        <tbody>
          {phases.map(({ phase, minutes: long, from, to }) => (
            <tr key={phase}>
              <th scope="row">{words.phase(phase)}</th>
              <td className="plan-time">
                <span>{words.lasts(long)}</span>
                <span className="desk-quiet">{words.span(from, to)}</span>
              </td>
              <td>
                {phase === 'close' && <strong>{words.questions(questions)} </strong>}
                {words.does(phase)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function ChallengeWish({ room, kit }: PlanProps) {
  const { page } = useWholeWords().print;
  const { open } = useWholeWords().lessonPlan.challenge;
  const locale = useLocale();
  const challenge = useWishes((wishes) => wishes.challenge);
  const ready = useMemo(
    () => (kit === null ? [] : readyChallenges(kit).filter((each) => each.playable)),
    [kit],
  );
  const playing = ready.find(({ key }) => key === room?.rounds.at(-1)?.key);
  return (
    <label>
      {page.challenge}
      <select
        value={challenge ?? ''}
        onChange={({ target }) =>
          useWishes.setState({ challenge: target.value === '' ? null : target.value })
        }
      >
        <option value="">{playing ? page.playing(textIn(playing.title, locale)) : open}</option>
        {ready.map(({ key, topic, title }) => (
          <option key={key} value={key}>
            {topic} · {textIn(title, locale)}
          </option>
        ))}
      </select>
    </label>
  );
}
