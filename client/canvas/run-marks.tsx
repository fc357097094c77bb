import { type RefObject, useImperativeHandle, useMemo, useRef } from 'react';
import type { Mm, Seconds } from '../../shared/geometry/units.ts';
import type { Replay } from '../../shared/picture/replay.ts';
import { runMarks } from '../../shared/picture/run-marks.ts';
import type { View } from './view.ts';

export interface RunMarksHandle {
  /** Shows what runs have left on the sheet by time `t`. */
  show(t: Seconds): void;
}

export interface RunMarksProps {
  readonly replays: readonly Replay[];
  readonly sheet: { readonly w: Mm; readonly h: Mm };
  readonly view: View;
  readonly handle: RefObject<RunMarksHandle | null>;
}

/** Dashes beside fast stretches and ticks where marks act: made once, and then only shown and hidden. */
export function RunMarks({ replays, sheet: { w, h }, view, handle }: RunMarksProps) {
  const marks = useMemo(
    () =>
      replays
        .flatMap(runMarks)
        .sort((a, b) => a.t - b.t)
        .map((mark, place) => ({ ...mark, place })),
    [replays],
  );
  const svg = useRef<SVGSVGElement>(null);
  useImperativeHandle(handle, () => {
    let before: number | undefined;
    return {
      show: (t) => {
        const now = marks.filter((mark) => mark.t <= t).length;
        if (now === before) return;
        const [from, to] =
          before === undefined ? [0, marks.length] : [Math.min(now, before), Math.max(now, before)];
        for (let i = from; i < to; i++)
          svg.current?.children[i]?.setAttribute('visibility', i < now ? 'visible' : 'hidden');
        before = now;
      },
    };
  }, [marks]);
  const pixel = 1 / view.scale;
  const width = { dash: Math.max(0.9, 2 * pixel), tick: Math.max(1, 2.2 * pixel) };
  const paper = { left: view.left, top: view.top, width: w * view.scale, height: h * view.scale };
  return (
    <svg
      ref={svg}
      className="run-marks"
      viewBox={`0 0 ${w} ${h}`}
      style={paper}
      aria-hidden="true"
      focusable="false"
    >
      {marks.map(({ kind, d, place }) => (
        <path key={place} className={`run-${kind}`} d={d} strokeWidth={width[kind]} visibility="hidden" />
      ))}
    </svg>
  );
}
