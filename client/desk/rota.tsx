import { Minus, Plus, Printer } from 'lucide-react';
import { type ReactNode, useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { Rota, Turn, Watched } from '../../shared/prep/rota.ts';
import { Button } from '../parts/button.tsx';
import { daysAfter, localDate, useDates } from '../parts/dates.ts';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { firstPlan, keepPlan, keptPlan, movedOn, type Plan, rotaOf, withRobots } from './rota-plan.ts';
import { useWholeWords } from './whole-words.ts';
import './rota.css';

const startingPlan = (): Plan => {
  const today = localDate(Date.now());
  const kept = keptPlan();
  return kept ? movedOn(kept, today) : firstPlan(today, daysAfter(today, 1));
};

/** Who charges where and when; worked out anew at every change, and printed with room for initials. */
export function ChargingRota() {
  const { rota: words } = useWholeWords();
  const [plan, setPlan] = useState(startingPlan);
  const settled = useDeferredValue(plan);
  const answer = useMemo(() => rotaOf(settled), [settled]);
  useEffect(() => keepPlan(settled), [settled]);
  return (
    <section className="rota" aria-labelledby="rota-title">
      <header className="cautions-head">
        <h2 id="rota-title">{words.title}</h2>
        <Button look="quiet" icon={<Icon of={Printer} />} onClick={() => window.print()}>
          {words.print}
        </Button>
      </header>
      <p className="cautions-first">{words.first}</p>
      <RotaForm plan={plan} onChange={setPlan} />
      <h3>{words.result}</h3>
      {answer.ok ? (
        <RotaTable rota={answer.rota} />
      ) : (
        <Notice tone="stops" role="alert">
          {words.refusal(answer.refusal)}
        </Notice>
      )}
      <p className="rota-cautions">
        {words.stopSigns.text} <span className="cautions-by">{words.stopSigns.by}</span>
      </p>
      <p className="cautions-by">{words.assumed}</p>
    </section>
  );
}

/** Things that are known by their place, counted from 1: the number on a robot, the first hours. */
const numbered = <T,>(values: readonly T[]) => values.map((value, i) => ({ number: i + 1, value }));

interface FormProps {
  readonly plan: Plan;
  readonly onChange: (plan: Plan) => void;
}

function RotaForm({ plan, onChange }: FormProps) {
  const { rota: words } = useWholeWords();
  const number = (key: 'capacity' | 'ports' | 'current') => (value: number) =>
    onChange({ ...plan, [key]: value });
  return (
    <form className="rota-form" onSubmit={(event) => event.preventDefault()}>
      <fieldset>
        <legend>{words.robots}</legend>
        <div className="rota-row">
          <NumberField
            label={words.count}
            value={plan.charges.length}
            onChange={(count) => onChange(withRobots(plan, count))}
          />
          <NumberField label={words.capacity} value={plan.capacity} onChange={number('capacity')} />
          <NumberField label={words.ports} value={plan.ports} onChange={number('ports')} />
          <NumberField label={words.current} value={plan.current} onChange={number('current')} />
        </div>
        <Charges plan={plan} onChange={onChange} />
      </fieldset>
      <WatchedHours plan={plan} onChange={onChange} />
      <fieldset>
        <legend>{words.needed}</legend>
        <div className="rota-row">
          <TextField
            label={words.date}
            type="date"
            value={plan.needed.date}
            onChange={(date) => onChange({ ...plan, needed: { ...plan.needed, date } })}
          />
          <TextField
            label={words.neededAt}
            type="time"
            value={plan.needed.time}
            onChange={(time) => onChange({ ...plan, needed: { ...plan.needed, time } })}
          />
        </div>
      </fieldset>
    </form>
  );
}

function Charges({ plan, onChange }: FormProps) {
  const { rota: words } = useWholeWords();
  return (
    <>
      <p>{words.charges}</p>
      <ol className="rota-charges">
        {numbered(plan.charges).map(({ number, value: charge }) => (
          <li key={number}>
            <span aria-hidden="true">{number}</span>
            <input
              type="number"
              min={0}
              max={100}
              step={5}
              value={charge}
              aria-label={words.charge(number)}
              onChange={(event) =>
                onChange({ ...plan, charges: plan.charges.with(number - 1, Number(event.target.value)) })
              }
            />
          </li>
        ))}
      </ol>
    </>
  );
}

function WatchedHours({ plan, onChange }: FormProps) {
  const { rota: words } = useWholeWords();
  const change = (number: number, part: Partial<Plan['watched'][number]>) => {
    const hours = plan.watched[number - 1]!;
    onChange({ ...plan, watched: plan.watched.with(number - 1, { ...hours, ...part }) });
  };
  const add = () => {
    const last = plan.watched.at(-1);
    const date = last?.date ?? localDate(Date.now());
    onChange({ ...plan, watched: [...plan.watched, { date, from: last?.to ?? '13:00', to: '17:00' }] });
  };
  return (
    <fieldset>
      <legend>{words.watched}</legend>
      {numbered(plan.watched).map(({ number, value: hours }) => (
        <fieldset className="rota-row" key={number} aria-label={words.hoursOf(number)}>
          <TextField
            label={words.date}
            type="date"
            value={hours.date}
            onChange={(date) => change(number, { date })}
          />
          <TextField
            label={words.from}
            type="time"
            value={hours.from}
            onChange={(from) => change(number, { from })}
          />
          <TextField
            label={words.to}
            type="time"
            value={hours.to}
            onChange={(to) => change(number, { to })}
          />
          <Button
            look="quiet"
            icon={<Icon of={Minus} />}
            aria-label={words.removeHours(number)}
            title={words.removeHours(number)}
            onClick={() => onChange({ ...plan, watched: plan.watched.toSpliced(number - 1, 1) })}
          />
        </fieldset>
      ))}
      <Button icon={<Icon of={Plus} />} onClick={add}>
        {words.addHours}
      </Button>
    </fieldset>
  );
}

interface FieldProps<T> {
  readonly label: string;
  readonly value: T;
  readonly onChange: (value: T) => void;
}

function NumberField({ label, value, onChange }: FieldProps<number>) {
  return (
    <label className="rota-field">
      {label}
      <input type="number" min={1} value={value} onChange={(event) => onChange(Number(event.target.value))} />
    </label>
  );
}

function TextField({
  label,
  type,
  value,
  onChange,
}: FieldProps<string> & { readonly type: 'date' | 'time' }) {
  return (
    <label className="rota-field">
      {label}
      <input type={type} value={value} onChange={(event) => onChange(event.target.value)} />
    </label>
  );
}

interface Row {
  readonly turn: Turn;
  readonly part: Watched;
  readonly isLast: boolean;
}

/** One row a plugging-in, in the order in which somebody does them. */
const rowsOf = (turns: readonly Turn[]): Row[] =>
  turns
    .flatMap((turn) => turn.parts.map((part, i) => ({ turn, part, isLast: i === turn.parts.length - 1 })))
    .sort(
      (a, b) =>
        a.part.date.localeCompare(b.part.date) || a.part.from - b.part.from || a.turn.port - b.turn.port,
    );

function RotaTable({ rota }: { readonly rota: Rota }) {
  const { rota: words } = useWholeWords();
  const dates = useDates();
  const rows = rowsOf(rota.turns);
  return (
    <>
      <p role="status">{words.summary(rota, dates.dayOf)}</p>
      {rota.notReady.length > 0 && <Notice tone="caution">{words.notReady(rota.notReady)}</Notice>}
      {rota.fullAlready.length > 0 && <p>{words.fullAlready(rota.fullAlready)}</p>}
      {rows.length > 0 && (
        <table className="rota-table">
          <thead>
            <tr>
              <Head>{words.when}</Head>
              <Head>{words.port}</Head>
              <Head>{words.robot}</Head>
              <Head>{words.plugged}</Head>
              <Head>{words.unplugged}</Head>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ turn, part, isLast }) => (
              <tr key={`${turn.robot} ${part.date} ${part.from}`}>
                <td>
                  {dates.dayOf(part.date)}, {words.hours(part)}
                  {!isLast && <span className="cautions-by"> · {words.goesOn}</span>}
                </td>
                <td>{turn.port}</td>
                <td>{turn.robot}</td>
                <td />
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

const Head = ({ children }: { readonly children: ReactNode }) => <th scope="col">{children}</th>;
