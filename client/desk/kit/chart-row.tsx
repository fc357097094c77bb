import { Trash2 } from 'lucide-react';
import { type KeyboardEvent, useId, useState } from 'react';
import type { Action } from '../../../shared/documents/kit.ts';
import type { MarkRow } from '../../../shared/kit/marks.ts';
import { isTwoWay } from '../../../shared/kit/words.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWholeWords } from '../whole-words.ts';
import { NumberField, ProblemsAt, useEditing } from './fields.tsx';
import { MeaningPick } from './meaning-pick.tsx';
import { lasting, timeOf } from './meanings.ts';

export interface ChartRowProps {
  /** From 1. */
  readonly number: number;
  /** null: the empty row at the end. */
  readonly mark: MarkRow | null;
  /** Where its first word stands in the chart. */
  readonly at: number;
  /** The line that asks for no names. */
  readonly noNames: string;
  /** null takes the row away. */
  readonly onChange: (mark: MarkRow | null) => void;
  /** Goes on to the next row. */
  readonly onNext: () => void;
}

/** One mark: its word, its bands, and what it means from each of its ends. */
export function ChartRowFields({ number, mark, at, noNames, onChange, onNext }: ChartRowProps) {
  const { chart: words } = useWholeWords().kit;
  const { kit } = useEditing();
  const enter = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || (event.target as Element).closest('button')) return;
    event.preventDefault();
    onNext();
  };
  const set = (part: Partial<MarkRow>) => mark && onChange({ ...mark, ...part });
  return (
    <tr onKeyDown={enter}>
      <WordCell number={number} mark={mark} at={at} noNames={noNames} onChange={onChange} />
      <td>{mark && <MarkPicture kit={kit} word={mark.word} onPaper />}</td>
      <td>
        {mark && (
          <Meaning
            label={words.meaningOf(number)}
            seconds={words.secondsOf(number)}
            action={mark.action}
            onPick={(action) => set({ action: action ?? mark.action })}
          />
        )}
      </td>
      <td>{mark && <BackCell number={number} mark={mark} at={at} onChange={(back) => set({ back })} />}</td>
      <td>
        {mark && (
          <Button
            look="quiet"
            icon={<Icon of={Trash2} />}
            aria-label={words.removeThis(mark.word)}
            title={words.removeThis(mark.word)}
            onClick={() => onChange(null)}
          />
        )}
      </td>
    </tr>
  );
}

const MEANS_NOTHING: Action = { kind: 'nothing' };

type WordCellProps = Pick<ChartRowProps, 'number' | 'mark' | 'at' | 'noNames' | 'onChange'>;

/** What is wrong with a word is said once it has been left: a word that is being typed is not finished. */
function WordCell({ number, mark, at, noNames, onChange }: WordCellProps) {
  const { chart: words } = useWholeWords().kit;
  const [typed, setTyped] = useState<string | null>(null);
  const saidId = useId();
  const problems = useWordProblems(at, mark);
  const said = typed === null ? problems : [];
  // After undo the row shows what came back.
  const shown = (typed === '' || typed === mark?.word ? typed : mark?.word) ?? '';
  const type = (text: string) => {
    const word = text
      .toUpperCase()
      .replace(/[^A-Z]/g, '')
      .slice(0, 8);
    setTyped(word);
    if (word !== '') onChange(mark ? { ...mark, word } : { word, action: MEANS_NOTHING, back: null });
  };
  const leave = () => {
    setTyped(null);
    if (typed === '' && mark) onChange(null);
  };
  return (
    <td>
      <input
        type="text"
        className="kit-word"
        autoComplete="off"
        spellCheck={false}
        value={shown}
        aria-label={words.markOf(number)}
        aria-invalid={said.length > 0}
        aria-describedby={said.length > 0 ? saidId : noNames}
        onFocus={() => setTyped(mark?.word ?? '')}
        onChange={(event) => type(event.target.value)}
        onBlur={leave}
      />
      <ProblemsAt id={saidId} said={said} />
    </td>
  );
}

const BACK_MISSING = 'reverse-without-meaning';

/** Of both words of a mark, but for the missing meaning from the other side, which is said at that cell. */
function useWordProblems(at: number, mark: MarkRow | null): string[] {
  const { judging } = useWholeWords();
  const { problems } = useEditing();
  if (mark === null) return [];
  const last = mark.back === null || isTwoWay(mark.word) ? at : at + 1;
  const codes = problems
    .filter(({ path: [part, row] }) => part === 'chart' && Number(row) >= at && Number(row) <= last)
    .map(({ code }) => code)
    .filter((code) => code !== BACK_MISSING);
  return [...new Set(codes)].map(judging.challengeProblem);
}

interface BackCellProps extends Pick<ChartRowProps, 'number' | 'at'> {
  readonly mark: MarkRow;
  readonly onChange: (back: Action | null) => void;
}

function BackCell({ number, mark, at, onChange }: BackCellProps) {
  const { kit, judging } = useWholeWords();
  const { problems } = useEditing();
  const words = kit.chart;
  const missing = problems.some(({ code, path }) => code === BACK_MISSING && path[1] === at);
  const saidId = useId();
  if (isTwoWay(mark.word)) return <span className="kit-same">{words.same}</span>;
  return (
    <>
      <Meaning
        label={words.backOf(number)}
        seconds={words.secondsBackOf(number)}
        action={mark.back}
        saidId={missing ? saidId : undefined}
        onPick={onChange}
      />
      {missing && <ProblemsAt id={saidId} said={[judging.challengeProblem(BACK_MISSING)]} />}
    </>
  );
}

interface MeaningProps {
  readonly label: string;
  /** What its time is called. */
  readonly seconds: string;
  readonly action: Action | null;
  readonly saidId?: string | undefined;
  readonly onPick: (action: Action | null) => void;
}

function Meaning({ label, seconds, action, saidId, onPick }: MeaningProps) {
  const time = action && timeOf(action);
  return (
    <span className="kit-meaning">
      <MeaningPick label={label} action={action} saidId={saidId} onPick={onPick} />
      {action && time !== null && (
        <NumberField
          label={seconds}
          labelHidden
          unit="s"
          value={time}
          said={[]}
          onChange={(wanted) => onPick(lasting(action, wanted))}
        />
      )}
    </span>
  );
}
