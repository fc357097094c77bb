import { useCallback, useMemo, useRef } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { poseAt, type Replay, type ReplayReading, replayOf } from '../../shared/picture/replay.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale, useWords } from '../parts/use-words.ts';
import { clearPoints } from './clear-points.ts';
import { paintInk } from './paint-ink.ts';
import { paintSheet } from './paint-sheet.ts';
import { paintWay } from './paint-way.ts';
import { type Painter, together } from './painter.ts';
import { PlacedBox } from './placed-box.tsx';
import { type OnMoment, useMoments } from './replay-moments.ts';
import { Robots, type RobotsHandle } from './robots.tsx';
import { RunMarks, type RunMarksHandle } from './run-marks.tsx';
import { StillSheet } from './still-sheet.tsx';
import { useEachFrame } from './use-each-frame.ts';
import { useFitted } from './use-fitted.ts';
import { toScreen } from './view.ts';
import './replay-view.css';

export interface ReplayViewProps {
  readonly challenge: Pick<Challenge, 'sheet' | 'kit'>;
  readonly drawing: Drawing;
  /** One robot, or two on the same sheet. */
  readonly traces: readonly Trace[];
  /** The run time to show; asked for before every frame, so it may come from any clock. */
  readonly timeAt: () => Seconds;
  /** Names and readings, CSS pixels. */
  readonly textSize?: number;
  /** Pixels of table around the sheet. */
  readonly pad?: number;
  readonly label: string;
  /** What stands under the ink and over it for the whole run. */
  readonly under?: Painter | null;
  readonly over?: Painter | null;
  /** The whole run as one picture: its way, and its readings by number instead of called out. */
  readonly whole?: boolean;
  /** Without names, and without readings called out: for a sheet that is too small for them. */
  readonly plain?: boolean;
  /** Called when something that words are said about has changed. */
  readonly onMoment?: OnMoment;
}

const NO_REPLAYS: readonly Replay[] = [];

/** A run shown again over its drawing. Fills the element that it stands in. */
export function ReplayView({
  challenge,
  traces,
  textSize = 17,
  pad = 12,
  whole = false,
  plain = false,
  ...props
}: ReplayViewProps) {
  const { drawing, under, over, timeAt, onMoment, label } = props;
  const { sheet } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, pad);
  const layout = useMemo(() => layOut(sheet, drawing), [sheet, drawing]);
  const picture = useMemo(() => pictureOf({ sheet, layout, kit, language }), [sheet, layout, kit, language]);
  const replays = useMemo(() => traces.map((trace) => replayOf(trace, layout)), [traces, layout]);
  const paint = useMemo(
    () =>
      together(
        paintSheet(picture, plain ? 0 : textSize),
        under,
        paintInk(picture),
        over,
        whole ? paintWay(replays, textSize) : null,
      ),
    [picture, textSize, plain, under, over, whole, replays],
  );
  const robots = useRef<RobotsHandle>(null);
  const marks = useRef<RunMarksHandle>(null);
  const { moments, tell } = useMoments(plain ? NO_REPLAYS : replays, onMoment);
  const show = useCallback(
    (t: Seconds) => {
      if (!view) return;
      const poses = replays.map(({ trace }) => poseAt(trace, t));
      robots.current?.move(view, poses);
      marks.current?.show(t);
      tell(t);
    },
    [replays, view, tell],
  );
  useEachFrame(timeAt, show);
  const clear = useMemo(
    () => (view ? clearPoints(layout, picture, view, textSize) : []),
    [layout, picture, view, textSize],
  );
  const called = moments.map((moment, robot) => ({ robot, ...moment }));
  return (
    <div className="replay-view" ref={frame} style={{ fontSize: textSize }}>
      {box && view && (
        <StillSheet paint={paint} sheet={sheet} box={box} view={view} label={label}>
          <RunMarks replays={replays} sheet={sheet} view={view} handle={marks} />
          <Robots robot={kit.robot} count={replays.length} view={view} handle={robots} />
          {!(whole || plain) &&
            called.map(
              ({ reading, acted, robot }) =>
                reading && (
                  <PlacedBox
                    key={`${robot} ${reading.t}`}
                    className="reading"
                    leader="reading-leader"
                    about={toScreen(view, reading.at)}
                    within={box}
                    clear={clear}
                    gap={(kit.robot.width / 2 + BESIDE_ROBOT) * view.scale}
                  >
                    <ReadingWords reading={reading} acted={acted} />
                  </PlacedBox>
                ),
            )}
        </StillSheet>
      )}
    </div>
  );
}

/** So far, mm, a reading stands off the robot that has just read it. */
const BESIDE_ROBOT = 4;

/** First what was read, then what it does. */
function ReadingWords({ reading, acted }: { readonly reading: ReplayReading; readonly acted: boolean }) {
  const words = useWords();
  const does = reading.already
    ? words.actions.already(reading.pace)
    : words.replay.does(reading.action ? words.actions.name(reading.action) : null, acted);
  return (
    <>
      <span className="reading-word">{words.replay.read(reading.word)}</span>
      <strong className="reading-does">{does}</strong>
    </>
  );
}
