import { type ReactNode, useCallback, useMemo, useRef } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { poseAt } from '../../shared/picture/replay.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale } from '../parts/use-words.ts';
import { paintInk } from './paint-ink.ts';
import { paintSheet } from './paint-sheet.ts';
import { type Painter, together } from './painter.ts';
import { Robots, type RobotsHandle } from './robots.tsx';
import { shownPicture } from './shown-picture.ts';
import { StillSheet } from './still-sheet.tsx';
import { useEachFrame } from './use-each-frame.ts';
import { useFitted } from './use-fitted.ts';
import './replay-view.css';

/** One of several drawings that lie on top of each other, with its robots. */
export interface HeatLane {
  readonly drawing: Drawing;
  readonly traces: readonly Trace[];
  /** What its robots carry, to be told apart. */
  readonly flag: ReactNode;
}

export interface HeatViewProps {
  /** All drawings lie on this sheet. */
  readonly challenge: Pick<Challenge, 'sheet' | 'kit'>;
  /** Keep them as one list while they stay the same. */
  readonly lanes: readonly HeatLane[];
  readonly timeAt: () => Seconds;
  readonly textSize: number;
  readonly pad: number;
  readonly label: string;
}

/** So strong is the ink of one drawing: what several share comes out darker. */
const SHARE_OF_INK = 0.45;

const faint =
  (painter: Painter): Painter =>
  (ctx, pixel) => {
    ctx.globalAlpha = SHARE_OF_INK;
    painter(ctx, pixel);
  };

/** Several runs on top of each other, on one sheet and one clock. Fills the element that it stands in. */
export function HeatView({ challenge, lanes, timeAt, textSize, pad, label }: HeatViewProps) {
  const { sheet } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, pad);
  const paint = useMemo(() => {
    const picture = (drawing: Drawing) =>
      shownPicture({ sheet, layout: layOut(sheet, drawing), kit, language }, textSize, view);
    // Names keep off the lines of all.
    const all = { lines: lanes.flatMap(({ drawing }) => drawing.lines), marks: [] };
    return together(
      paintSheet(picture(all), textSize),
      ...lanes.map(({ drawing }) => faint(paintInk(picture(drawing)))),
    );
  }, [sheet, lanes, kit, language, textSize, view]);
  const runs = useMemo(
    () => lanes.flatMap(({ traces, flag }) => traces.map((trace) => ({ trace, flag }))),
    [lanes],
  );
  const robots = useRef<RobotsHandle>(null);
  const show = useCallback(
    (t: Seconds) => {
      if (!view) return;
      const poses = runs.map(({ trace }) => poseAt(trace, t));
      robots.current?.move(view, poses);
    },
    [runs, view],
  );
  useEachFrame(timeAt, show);
  return (
    <div className="replay-view" ref={frame} style={{ fontSize: textSize }}>
      {box && view && (
        <StillSheet paint={paint} sheet={sheet} box={box} view={view} label={label}>
          <Robots
            robot={kit.robot}
            count={runs.length}
            view={view}
            handle={robots}
            flags={runs.map(({ flag }) => flag)}
          />
        </StillSheet>
      )}
    </div>
  );
}
