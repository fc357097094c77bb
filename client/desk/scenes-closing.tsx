import { useId, useState } from 'react';
import { BOARD_LIMITS, type Counted } from '../../shared/room/board.ts';
import type { RoomState } from '../../shared/room/state.ts';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { useWholeWords } from './whole-words.ts';

/** How many robots are back in their berths, and how many caps on their markers. */
export function ClosingControls({ room }: { readonly room: RoomState }) {
  const { ask, refusal } = useAsk();
  return (
    <div className="scene-controls">
      {(['robots', 'caps'] as const).map((what) => (
        <Count
          key={what}
          what={what}
          counted={room.board[what]}
          onCount={(counted) => void ask({ kind: 'count-back', what, counted })}
        />
      ))}
      <Refused refusal={refusal} />
    </div>
  );
}

interface CountProps {
  readonly what: 'robots' | 'caps';
  readonly counted: Counted | null;
  readonly onCount: (counted: Counted | null) => void;
}

/** A count that is complete is told; an empty one is taken back. */
function Count({ what, counted, onCount }: CountProps) {
  const { scenes } = useWholeWords();
  const id = useId();
  const [typed, setTyped] = useState({ there: String(counted?.there ?? ''), of: String(counted?.of ?? '') });
  const type = (change: Partial<typeof typed>) => {
    const now = { ...typed, ...change };
    setTyped(now);
    const [there, of] = [wholeIn(now.there), wholeIn(now.of)];
    if (there !== null && of !== null) onCount({ there: Math.min(there, of), of });
    else if (now.there === '' && counted) onCount(null);
  };
  const name = scenes.closing.count[what];
  return (
    <span className="scene-count">
      <label htmlFor={id}>{name}</label>
      <NumberField id={id} value={typed.there} onType={(there) => type({ there })} />
      <span aria-hidden="true">{scenes.closing.of}</span>
      <NumberField label={`${name}, ${scenes.closing.of}`} value={typed.of} onType={(of) => type({ of })} />
    </span>
  );
}

interface NumberFieldProps {
  readonly id?: string;
  readonly label?: string;
  readonly value: string;
  readonly onType: (value: string) => void;
}

/** A small whole number. */
function NumberField({ id, label, value, onType }: NumberFieldProps) {
  return (
    <input
      {...(id === undefined ? {} : { id })}
      {...(label === undefined ? {} : { 'aria-label': label })}
      className="scene-number"
      type="number"
      min={0}
      max={BOARD_LIMITS.counted}
      value={value}
      onChange={({ target }) => onType(target.value.replace(/\D/g, ''))}
    />
  );
}

const wholeIn = (text: string): number | null =>
  text === '' ? null : Math.min(BOARD_LIMITS.counted, Number(text));
