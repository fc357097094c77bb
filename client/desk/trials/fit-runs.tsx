import { Plus, X } from 'lucide-react';
import { type FormEvent, useState } from 'react';
import { type Kit, PACES } from '../../../shared/documents/kit.ts';
import { TIMED_CIRCLES, type TimedRun } from '../../../shared/prep/fit.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { WholeNumber } from '../before/whole-number.tsx';
import { useWholeWords } from '../whole-words.ts';
import { FIRST_RUN, FIT_LIMITS, type FitNotes } from './fit-notes.ts';

interface RunsProps {
  readonly notes: FitNotes;
  readonly kit: Kit;
  readonly onChange: (notes: FitNotes, said?: string) => void;
}

/** Timed runs: a line to type one in, and all that have been. */
export function FitRuns({ notes, kit, onChange }: RunsProps) {
  const { fitting } = useWholeWords();
  const { runs } = notes;
  const remove = (place: number) => onChange({ ...notes, runs: runs.toSpliced(place, 1) }, fitting.removed);
  return (
    <>
      <RunForm
        kit={kit}
        full={runs.length >= FIT_LIMITS.runs}
        onAdd={(run) => onChange({ ...notes, runs: [...runs, run] })}
      />
      {runs.length === 0 ? (
        <p className="desk-quiet">{fitting.noRuns}</p>
      ) : (
        <details className="fit-list" open>
          <summary>{fitting.runs(runs.length)}</summary>
          <ol>
            {runs
              .map((run, place) => ({ run, place }))
              .map(({ run, place }) => (
                <li key={place}>
                  <RunWords run={run} />
                  <Button
                    look="quiet"
                    icon={<Icon of={X} size={18} />}
                    aria-label={fitting.remove(place + 1)}
                    title={fitting.remove(place + 1)}
                    onClick={() => remove(place)}
                  />
                </li>
              ))}
          </ol>
        </details>
      )}
    </>
  );
}

function RunWords({ run }: { readonly run: TimedRun }) {
  const { fitting, driving, actions, numbers } = useWholeWords();
  const over = run.laps === 0 ? fitting.line : fitting.circle(run.laps, numbers.length(run.radius));
  return (
    <span>
      {driving.robot(run.robot)}, {actions.pace(run.pace)}, {over}: <strong>{driving.timed(run.time)}</strong>
    </span>
  );
}

interface FormProps {
  readonly kit: Kit;
  readonly full: boolean;
  readonly onAdd: (run: TimedRun) => void;
}

/** Robot, pace and way stay for the next run, so that only its time has to be typed. */
function RunForm({ kit, full, onAdd }: FormProps) {
  const { fitting, actions, numbers } = useWholeWords();
  const [run, setRun] = useState<TimedRun>(FIRST_RUN);
  const [seconds, setSeconds] = useState('');
  const round = run.laps > 0;
  const pace = round ? kit.robot.startPace : run.pace;
  const set = (change: Partial<TimedRun>) => setRun({ ...run, ...change });
  const add = (event: FormEvent) => {
    event.preventDefault();
    const time = Number(seconds);
    if (full || !(time > 0)) return;
    onAdd({ ...run, pace, time: Math.min(FIT_LIMITS.seconds, Math.round(time * 100) / 100) });
    setSeconds('');
  };
  return (
    <form className="fit-form" onSubmit={add}>
      <WholeNumber
        label={fitting.robot}
        value={run.robot}
        least={1}
        most={FIT_LIMITS.robotNumber}
        onChange={(robot) => set({ robot })}
      />
      <label>
        {fitting.over}
        <select
          value={round ? String(run.radius) : 'line'}
          onChange={({ target }) =>
            set(target.value === 'line' ? { laps: 0 } : { laps: run.laps || 5, radius: Number(target.value) })
          }
        >
          <option value="line">{fitting.line}</option>
          {TIMED_CIRCLES.map((radius) => (
            <option key={radius} value={radius}>
              {fitting.round(numbers.length(radius))}
            </option>
          ))}
        </select>
      </label>
      {round ? (
        <WholeNumber
          label={fitting.laps}
          value={run.laps}
          least={1}
          most={FIT_LIMITS.laps}
          onChange={(laps) => set({ laps })}
        />
      ) : (
        <label>
          {fitting.pace}
          <select
            value={pace}
            onChange={({ target }) => set({ pace: PACES.find((each) => each === target.value)! })}
          >
            {PACES.map((each) => (
              <option key={each} value={each}>
                {actions.pace(each)}
              </option>
            ))}
          </select>
        </label>
      )}
      <label>
        {fitting.seconds}
        <input
          type="number"
          className="fit-seconds"
          min={0.1}
          max={FIT_LIMITS.seconds}
          step={0.01}
          value={seconds}
          onChange={({ target }) => setSeconds(target.value)}
        />
      </label>
      <Button type="submit" icon={<Icon of={Plus} />} disabled={full}>
        {fitting.add}
      </Button>
    </form>
  );
}
