import { type ReactNode, useId } from 'react';
import { textIn } from '../../shared/documents/values.ts';
import { PERIOD } from '../../shared/prep/lesson-plan.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { LINE_LOOKS, MARK_LOOKS, PAPERS, type PrintKind } from '../../shared/wire/print.ts';
import { Button } from '../parts/button.tsx';
import { entriesOf } from '../parts/figures.ts';
import { Notice } from '../parts/notice.tsx';
import type { Wanted } from '../parts/paper-file.ts';
import { useLocale } from '../parts/use-words.ts';
import { WholeNumber } from './before/whole-number.tsx';
import { useWishes } from './before/wishes.ts';
import { useOwnChallenges } from './builder/own-cards.tsx';
import { useReadyChallenges } from './kit/room-kit.ts';
import { useWholeWords } from './whole-words.ts';

const GROUPS = [
  ['drive', ['sheet', 'drawing', 'strip']],
  ['fit', ['timed-line', 'timed-circle', 'limits']],
  ['room', ['chart', 'patch', 'gauge']],
  ['write', ['slips', 'predict', 'two-travellers', 'mend', 'closing']],
  ['plan', ['supplies', 'lesson-plan']],
  ['all', ['pack', 'class', 'evidence', 'picture']],
] as const satisfies readonly (readonly [string, readonly PrintKind[]])[];

/** On these a robot may drive, so lines and marks have a look. */
const DRIVEN: readonly PrintKind[] = ['sheet', 'drawing', 'pack', 'class'];
const ASKING: readonly PrintKind[] = ['predict', 'two-travellers', 'mend'];
const WITH_KEY: readonly PrintKind[] = [...ASKING, 'closing'];

/** What is chosen here; language and units are the device's. */
export type PaperChoice = Omit<Wanted, 'language' | 'units'>;

export interface PaperFormProps {
  readonly room: RoomState;
  readonly choice: PaperChoice;
  readonly onChange: (part: Partial<PaperChoice>) => void;
}

/** What to print and how; only what matters for the kind is asked. */
export function PaperForm({ room, choice, onChange }: PaperFormProps) {
  const { print } = useWholeWords();
  const { page } = print;
  const { kind } = choice;
  return (
    <>
      <fieldset className="paper-kinds">
        <legend>{page.what}</legend>
        {GROUPS.map(([group, kinds]) => (
          <div key={group} className="paper-group">
            <p className="paper-group-name">{page.groups[group]}</p>
            {kinds.map((each) => (
              <Choice
                key={each}
                name="paper-kind"
                said={page.kind(each)}
                on={each === kind}
                onPick={() => onChange({ kind: each })}
              />
            ))}
          </div>
        ))}
      </fieldset>
      <p className="desk-quiet">{page.note(kind)}</p>
      <div className="paper-options">
        {(kind === 'sheet' || kind === 'lesson-plan' || ASKING.includes(kind)) && (
          <ChallengeSelect {...{ room, choice, onChange }} />
        )}
        {(kind === 'drawing' || kind === 'pack') && <TeamSelects {...{ room, choice, onChange }} />}
        {kind === 'lesson-plan' && <Minutes />}
        <Select
          label={page.paper}
          value={choice.paper ?? 'A4'}
          onPick={(paper) => onChange({ paper })}
          options={PAPERS.map((each) => [each, page.paperName(each)])}
        />
      </div>
      {DRIVEN.includes(kind) && <Looks choice={choice} onChange={onChange} />}
      {WITH_KEY.includes(kind) && (
        <label className="paper-tick">
          <input
            type="checkbox"
            checked={choice.key === 'yes'}
            onChange={(event) => onChange({ key: event.target.checked ? 'yes' : 'no' })}
          />
          {page.key}
        </label>
      )}
      {DRIVEN.includes(kind) && choice.lines !== 'dots' && choice.marks !== 'paint' && (
        <Notice tone="caution">
          <p>{page.colours}</p>
          <Button onClick={() => onChange({ kind: 'strip' })}>{page.toStrip}</Button>
        </Notice>
      )}
    </>
  );
}

/** How long the planned lesson is; the same as on the leaf about it. */
function Minutes() {
  const { lessonPlan } = useWholeWords();
  const minutes = useWishes((wishes) => wishes.minutes);
  return (
    <div className="paper-select">
      <WholeNumber
        label={lessonPlan.minutes}
        value={minutes}
        least={PERIOD.least}
        most={PERIOD.most}
        onChange={(typed) => useWishes.setState({ minutes: typed })}
      />
    </div>
  );
}

type PartProps = Pick<PaperFormProps, 'choice' | 'onChange'>;

function Looks({ choice, onChange }: PartProps) {
  const { page } = useWholeWords().print;
  const dots = choice.lines === 'dots';
  return (
    <>
      <fieldset className="paper-looks">
        <legend>{page.lines}</legend>
        {LINE_LOOKS.map((look) => (
          <Choice
            key={look}
            name="paper-lines"
            said={page.line(look)}
            on={choice.lines === look}
            onPick={() => onChange({ lines: look })}
          />
        ))}
      </fieldset>
      {dots ? (
        <p className="desk-quiet">{page.dotsNote}</p>
      ) : (
        <fieldset className="paper-looks">
          <legend>{page.marks}</legend>
          {MARK_LOOKS.map((look) => (
            <Choice
              key={look}
              name="paper-marks"
              said={page.mark(look)}
              on={choice.marks === look}
              onPick={() => onChange({ marks: look })}
            />
          ))}
        </fieldset>
      )}
    </>
  );
}

/** The one being played stands first; any ready one may be printed, and those that this desk has made. */
function ChallengeSelect({ room, choice, onChange }: PaperFormProps) {
  const { page } = useWholeWords().print;
  const locale = useLocale();
  const { yours } = useWholeWords().builder.own;
  const own = useOwnChallenges(room.id).playable;
  const ready = [...useReadyChallenges(room).filter((each) => each.playable), ...own];
  const current = ready.find(({ key }) => key === room.rounds.at(-1)?.key);
  const options = [
    ...(room.rounds.length > 0
      ? [['', page.playing(current ? textIn(current.title, locale) : room.rounds.at(-1)!.key)] as const]
      : []),
    ...ready.map((each) => {
      const { key, title, topic } = each;
      return [key, `${own.includes(each) ? yours : topic} · ${textIn(title, locale)}`] as const;
    }),
  ];
  return (
    <Select
      label={page.challenge}
      value={choice.challenge ?? (room.rounds.length > 0 ? '' : (ready[0]?.key ?? ''))}
      options={options}
      onPick={(key) => onChange({ challenge: key === '' ? undefined : key })}
    />
  );
}

function TeamSelects({ room, choice, onChange }: PaperFormProps) {
  const { emblems, print, desk } = useWholeWords();
  const { page } = print;
  if (room.teams.length === 0) return <p className="desk-quiet">{page.noTeams}</p>;
  const team = room.teams.find(({ id }) => id === choice.team) ?? room.teams[0]!;
  const entries = entriesOf(room, team.id).filter((entry) => entry.design !== null);
  return (
    <>
      <Select
        label={page.team}
        value={team.id}
        options={room.teams.map(({ id, emblem }) => [id, emblems.name(emblem)])}
        onPick={(id) => onChange({ team: id, entry: undefined })}
      />
      {choice.kind === 'drawing' && (
        <Select
          label={page.drawing}
          value={choice.entry ?? ''}
          options={[
            ['', page.newest],
            ...entries.map(({ id, number }) => [id, desk.team.entry(number)] as const),
          ]}
          onPick={(entry) => onChange({ team: team.id, entry: entry === '' ? undefined : entry })}
        />
      )}
    </>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly said: ReactNode;
  readonly on: boolean;
  readonly onPick: () => void;
}

const Choice = ({ name, said, on, onPick }: ChoiceProps) => (
  <label className="paper-pick" data-on={on}>
    <input type="radio" name={name} checked={on} onChange={onPick} />
    {said}
  </label>
);

interface SelectProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [T, string])[];
  readonly onPick: (value: T) => void;
}

function Select<T extends string>({ label, value, options, onPick }: SelectProps<T>) {
  const id = useId();
  return (
    <p className="paper-select">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.target.value as T)}>
        {options.map(([key, said]) => (
          <option key={key} value={key}>
            {said}
          </option>
        ))}
      </select>
    </p>
  );
}
