import { useCallback, useRef, useState } from 'react';
import type { Kit } from '../../shared/documents/kit.ts';
import { TRACE_RATE } from '../../shared/documents/trace.ts';
import { textIn } from '../../shared/documents/values.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { type BarReadings, SEEN } from '../../shared/run/bar.ts';
import { useEachFrame } from '../canvas/use-each-frame.ts';
import { useKitOnScreen } from './kit-on-screen.ts';
import { useLocale, useWords } from './use-words.ts';
import './sensor-bar.css';

export interface SensorBarProps {
  readonly kit: Kit;
  readonly bar: BarReadings;
  readonly timeAt: () => Seconds;
}

const FIVE = [0, 1, 2, 3, 4] as const;
const COLUMN = { width: 30, apart: 38, height: 64 } as const;

/** What the five sensors read, as dark columns, and what the middle one sees. Drawn past React, each frame. */
export function SensorBar({ bar, timeAt, ...props }: SensorBarProps) {
  const kit = useKitOnScreen(props.kit);
  const { foretelling } = useWords();
  const columns = useRef<(SVGRectElement | null)[]>([]);
  const [seen, setSeen] = useState<string>(SEEN.line);
  const draw = useCallback(
    (t: Seconds) => {
      const i = Math.max(0, Math.min(bar.middle.length - 1, Math.floor(t * TRACE_RATE)));
      for (const k of FIVE) {
        const height = ((bar.dark[5 * i + k] ?? 0) / 255) * COLUMN.height;
        columns.current[k]?.setAttribute('height', String(height));
        columns.current[k]?.setAttribute('y', String(COLUMN.height - height));
      }
      setSeen(bar.middle[i] ?? SEEN.line);
    },
    [bar],
  );
  useEachFrame(timeAt, draw);
  const name = useNameOf(kit, seen);
  const ink = kit.inks.find(({ id }) => id === seen);
  return (
    <figure className="sensor-bar">
      <svg viewBox={`-2 -2 ${4 * COLUMN.apart + COLUMN.width + 4} ${COLUMN.height + 4}`} aria-hidden="true">
        {FIVE.map((k) => (
          <g key={k} transform={`translate(${k * COLUMN.apart} 0)`}>
            <rect className="sensor-frame" width={COLUMN.width} height={COLUMN.height} rx="4" />
            <rect
              ref={(element) => {
                columns.current[k] = element;
              }}
              className="sensor-dark"
              width={COLUMN.width}
              height="0"
              rx="4"
              {...(k === 2 && ink ? { fill: ink.color } : {})}
            />
          </g>
        ))}
      </svg>
      <figcaption>{foretelling.barSees(name)}</figcaption>
    </figure>
  );
}

function useNameOf(kit: Kit, seen: string): string {
  const { foretelling } = useWords();
  const locale = useLocale();
  const ink = kit.inks.find(({ id }) => id === seen);
  if (ink) return textIn(ink.name, locale);
  if (seen === SEEN.line) return foretelling.seenLine;
  return seen === SEEN.paper ? foretelling.seenPaper : foretelling.seenOther;
}
