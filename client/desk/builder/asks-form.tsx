import { Plus, Trash2 } from 'lucide-react';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Ask, StandingPlace } from '../../../shared/documents/question.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { Choose, NumberField } from './inputs.tsx';
import { useChallenge, type Work } from './work.ts';

const MOST_ASKS = 12;

/** The questions of a challenge in which all is given. */
export function AsksForm({ work }: { readonly work: Work }) {
  const { asking } = useWholeWords().builder;
  const challenge = useChallenge(work);
  const asks = challenge.asks ?? [];
  const put = (now: readonly Ask[], what: string | null = null) => {
    const { asks: _, ...rest } = challenge;
    work.change(now.length === 0 ? rest : { ...rest, asks: [...now] }, what);
  };
  const numbered = asks.map((ask, at) => ({ ask, at }));
  return (
    <div className="builder-panel">
      <h2>{asking.title}</h2>
      {asks.length === 0 && <p className="desk-quiet">{asking.none}</p>}
      <ol className="builder-goals">
        {numbered.map(({ ask, at }) => (
          <li key={at} className="builder-goal">
            <AskForm
              ask={ask}
              challenge={challenge}
              onChange={(now) =>
                put(
                  asks.map((each, i) => (i === at ? now : each)),
                  `ask ${at}`,
                )
              }
            />
            <Button
              look="quiet"
              icon={<Icon of={Trash2} />}
              aria-label={asking.removeThis(at + 1)}
              title={asking.remove}
              onClick={() => put(asks.filter((_, i) => i !== at))}
            />
          </li>
        ))}
      </ol>
      <Button
        icon={<Icon of={Plus} />}
        disabled={asks.length >= MOST_ASKS}
        onClick={() => put([...asks, { kind: 'end', start: challenge.starts[0]! }])}
      >
        {asking.add}
      </Button>
    </div>
  );
}

interface AskFormProps {
  readonly ask: Ask;
  readonly challenge: Challenge;
  readonly onChange: (ask: Ask) => void;
}

function AskForm({ ask, challenge, onChange }: AskFormProps) {
  const { asking, goals } = useWholeWords().builder;
  const locale = useLocale();
  const { sheet, starts } = challenge;
  // One that does not set out any more stands there until another one is chosen.
  const travellers = starts.includes(ask.start) ? starts : [ask.start, ...starts];
  const areas = sheet.areas.map(({ id, name }) => [id, textIn(name, locale)] as const);
  const kinds = (['end', 'marks', 'pace', 'how-many'] as const).filter(
    (kind) => kind !== 'pace' || areas.length > 0,
  );
  const asKind = (kind: Ask['kind']): Ask => {
    const { start } = ask;
    if (kind === 'pace') return { kind, start, area: areas[0]![0] };
    if (kind === 'how-many') return { kind, start, place: { kind: 'berth', berth: 'start' }, of: 20 };
    return { kind, start };
  };
  return (
    <div className="formula-fields">
      <Choose
        label={asking.what}
        value={ask.kind}
        options={kinds.map((kind) => [kind, asking.kind(kind)] as const)}
        onChange={(kind) => onChange(asKind(kind))}
      />
      {travellers.length > 1 && (
        <Choose
          label={goals.whose}
          value={ask.start}
          options={travellers.map((start) => [start, goals.who(start)] as const)}
          onChange={(start) => onChange({ ...ask, start })}
        />
      )}
      {ask.kind === 'pace' && (
        <Choose
          label={asking.where}
          value={ask.area}
          options={areas}
          onChange={(area) => onChange({ ...ask, area })}
        />
      )}
      {ask.kind === 'how-many' && <HowMany ask={ask} challenge={challenge} onChange={onChange} />}
    </div>
  );
}

interface HowManyProps extends AskFormProps {
  readonly ask: Extract<Ask, { kind: 'how-many' }>;
}

const keyOf = (place: StandingPlace): string => (place.kind === 'berth' ? ` ${place.berth}` : place.area);
const placeOf = (key: string): StandingPlace =>
  key.startsWith(' ')
    ? { kind: 'berth', berth: key === ' finish' ? 'finish' : 'start' }
    : { kind: 'area', area: key };

function HowMany({ ask, challenge, onChange }: HowManyProps) {
  const { asking } = useWholeWords().builder;
  const locale = useLocale();
  const { start, finish, areas } = challenge.sheet;
  const places = [
    [' start', textIn(start.name, locale)] as const,
    ...(finish ? [[' finish', textIn(finish.name, locale)] as const] : []),
    ...areas.map(({ id, name }) => [id, textIn(name, locale)] as const),
  ];
  return (
    <>
      <Choose
        label={asking.where}
        value={keyOf(ask.place)}
        options={places}
        onChange={(key) => onChange({ ...ask, place: placeOf(key) })}
      />
      <NumberField
        label={asking.robots}
        value={ask.of}
        least={2}
        most={100}
        onChange={(of) => of !== undefined && onChange({ ...ask, of: Math.round(of) })}
      />
    </>
  );
}
