import type { ReactNode } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import { type Mark, wordOf } from '../../shared/documents/design.ts';
import { WEATHERS } from '../../shared/documents/outlook.ts';
import { textIn } from '../../shared/documents/values.ts';
import { OTHER_LIGHTS, type WhatIf } from '../../shared/documents/what-if.ts';
import { supposed } from '../../shared/judge/what-if.ts';
import type { Staged } from '../parts/use-stage.ts';
import { useLocale } from '../parts/use-words.ts';
import type { StageSet } from './stage-set.ts';
import { useWholeWords } from './whole-words.ts';
import './what-if-form.css';

export interface WhatIfFormProps {
  readonly stage: readonly Staged[];
  readonly clock: StageSet;
}

/** One thing that may be otherwise. What is chosen is driven at once, at the desk and on the board. */
export function WhatIfForm({ stage, clock }: WhatIfFormProps) {
  const { stage: words } = useWholeWords();
  const { whatIf } = words;
  const now = clock.look.whatIf;
  const suppose = (next: WhatIf | null) =>
    clock.setLook({ whatIf: next, ways: [] }, { at: 0, playing: true, loop: undefined });
  const choice = (next: WhatIf, name: string) => (
    <Choice
      key={name}
      name={name}
      on={isSame(now, next)}
      onClick={() => suppose(isSame(now, next) ? null : next)}
    />
  );
  const canTurn = stage.some(
    ({ challenge, design }) => supposed({ kind: 'start' }, challenge, design) !== undefined,
  );
  const alone = stage.length === 1 ? stage[0]! : null;
  return (
    <section className="what-if-form" aria-label={words.controls.whatIf}>
      <Group name={whatIf.light}>
        {OTHER_LIGHTS.map((light) => choice({ kind: 'light', light }, whatIf.lights[light]))}
      </Group>
      <Group name={whatIf.weather}>
        {WEATHERS.map((weather) => (
          <Choice
            key={weather}
            name={whatIf.weathers[weather]}
            on={now?.kind === 'weather' && now.weather === weather}
            onClick={() => suppose({ kind: 'weather', weather, robot: robotOf(now) })}
          />
        ))}
        {now?.kind === 'weather' && (
          <Choice
            name={`${whatIf.nextRobot} (${whatIf.robot(now.robot)})`}
            onClick={() => suppose({ ...now, robot: (now.robot % 20) + 1 })}
          />
        )}
      </Group>
      {(canTurn || now?.kind === 'start') && (
        <Group name={whatIf.start}>{choice({ kind: 'start' }, whatIf.otherEnd)}</Group>
      )}
      {alone && <Bands staged={alone} now={now} onSuppose={suppose} />}
      <div className="what-if-foot">
        <Choice name={whatIf.asIs} on={now === null} onClick={() => suppose(null)} />
        <p className="desk-quiet">{whatIf.note}</p>
      </div>
    </section>
  );
}

const robotOf = (now: WhatIf | null): number => (now?.kind === 'weather' ? now.robot : 1);

const isSame = (a: WhatIf | null, b: WhatIf): boolean => JSON.stringify(a) === JSON.stringify(b);

function Group({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <fieldset className="what-if-group">
      <legend>{name}</legend>
      {children}
    </fieldset>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly on?: boolean;
  readonly onClick: () => void;
}

const Choice = ({ name, on = false, onClick }: ChoiceProps) => (
  <button type="button" className="what-if-choice" aria-pressed={on} onClick={onClick}>
    {name}
  </button>
);

interface BandsProps {
  readonly staged: Staged;
  readonly now: WhatIf | null;
  readonly onSuppose: (next: WhatIf) => void;
}

/** Every band of the drawing: a press gives it the next ink of the kit. */
function Bands({ staged: { challenge, design }, now, onSuppose }: BandsProps) {
  const { stage } = useWholeWords();
  const marks = [...challenge.sheet.given.marks, ...design.drawing.marks].map((mark) => ({
    mark,
    bands: mark.bands.map((band, place) => ({ band, place })),
  }));
  if (marks.length === 0) return null;
  return (
    <Group name={stage.whatIf.band}>
      {marks.map(({ mark, bands }) => (
        <span key={mark.id} className="what-if-mark">
          {bands.map(({ band, place }) => (
            <Band
              key={place}
              {...{ challenge, mark, band, place }}
              changed={now?.kind === 'band' && now.mark === mark.id && now.band === place}
              onInk={(ink) => onSuppose({ kind: 'band', mark: mark.id, band: place, ink })}
            />
          ))}
        </span>
      ))}
    </Group>
  );
}

interface BandProps {
  readonly challenge: Challenge;
  readonly mark: Mark;
  readonly band: Mark['bands'][number];
  readonly place: number;
  readonly changed: boolean;
  readonly onInk: (ink: string) => void;
}

function Band({ challenge: { kit }, mark, band, place, changed, onInk }: BandProps) {
  const { stage } = useWholeWords();
  const locale = useLocale();
  const at = kit.inks.findIndex(({ id }) => id === band.ink);
  const ink = kit.inks[at];
  const next = kit.inks[(at + 1) % kit.inks.length];
  if (!ink || !next) return null;
  const name = stage.whatIf.changeBand(wordOf(mark), place + 1, textIn(ink.name, locale));
  return (
    <button
      type="button"
      className="what-if-band"
      aria-pressed={changed}
      aria-label={name}
      title={name}
      onClick={() => onInk(next.id)}
    >
      {ink.id}
    </button>
  );
}
