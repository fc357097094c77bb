import { type KeyboardEvent, useRef } from 'react';
import type { Action } from '../../../shared/documents/kit.ts';
import type { Wording } from '../../../shared/wording/wording.ts';
import { useWholeWords } from '../whole-words.ts';
import { lasting, MEANINGS, matching, meaningKey, meaningOf, timeOf } from './meanings.ts';

export interface MeaningPickProps {
  readonly label: string;
  /** null: no meaning yet. */
  readonly action: Action | null;
  /** What describes a problem, where there is one. */
  readonly saidId?: string | undefined;
  readonly onPick: (action: Action | null) => void;
}

/** As a list names it: a time is typed beside it. */
export function nameOfMeaning(action: Action, { actions, kit }: Wording): string {
  if (action.kind !== 'pace-for') return actions.name(action);
  return kit.chart.lasting(actions.name({ kind: 'pace-to', pace: action.pace }));
}

/** A list of meanings in which letters find one by any of its words: `l` is "take left". */
export function MeaningPick({ label, action, saidId, onPick }: MeaningPickProps) {
  const words = useWholeWords();
  const typed = useRef('');
  const names = MEANINGS.map((each) => nameOfMeaning(each, words));
  const key = action === null ? '' : meaningKey(action);
  const pick = (wanted: Action | undefined) => {
    if (!wanted) return;
    const time = action && timeOf(action);
    onPick(time === null ? wanted : lasting(wanted, time));
  };
  /** Letters go on with what was typed before; one that fits nothing any more begins anew, and again goes on. */
  const find = (event: KeyboardEvent) => {
    if (event.key.length !== 1 || event.key === ' ' || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const more = typed.current + event.key;
    typed.current = matching(names, more).length > 0 ? more : event.key;
    const found = matching(names, typed.current);
    const now = MEANINGS.findIndex((each) => meaningKey(each) === key);
    const again = typed.current === event.key && found.includes(now);
    pick(MEANINGS[(again ? found.find((place) => place > now) : undefined) ?? found[0]!]);
  };
  return (
    <select
      value={key}
      aria-label={label}
      aria-invalid={saidId !== undefined}
      aria-describedby={saidId}
      onKeyDown={find}
      onBlur={() => {
        typed.current = '';
      }}
      onChange={(event) => pick(meaningOf(event.target.value))}
    >
      {action === null && <option value="">{words.kit.chart.noMeaning}</option>}
      {MEANINGS.map((each, i) => (
        <option key={meaningKey(each)} value={meaningKey(each)}>
          {names[i]}
        </option>
      ))}
    </select>
  );
}
