import { useCallback, useMemo, useRef, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { poseAt, type Replay, type ReplayReading, replayOf } from '../../shared/picture/replay.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale, useWords } from '../parts/use-words.ts';
import { clearPoints } from './clear-points.ts';
import { paintInk } from './paint-ink.ts';
import { paintSheet } from './paint-sheet.ts';
import { paintWay } from './paint-way.ts';
import { type Painter, together } from './painter.ts';
import { PlacedBox, type PlacedBoxProps } from './placed-box.tsx';
import { type Place, pointsOf } from './placement.ts';
import { type OnMoment, type ReplayMoment, useMoments } from './replay-moments.ts';
import { Robots, type RobotsHandle } from './robots.tsx';
import { RunMarks, type RunMarksHandle } from './run-marks.tsx';
import { shownPicture } from './shown-picture.ts';
import { StillSheet } from './still-sheet.tsx';
import { useEachFrame } from './use-each-frame.ts';
import { useFitted } from './use-fitted.ts';
import { toScreen, type View } from './view.ts';
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
  const picture = useMemo(
    () => shownPicture({ sheet, layout, kit, language }, textSize, view),
    [sheet, layout, kit, language, textSize, view],
  );
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
  return (
    <div className="replay-view" ref={frame} style={{ fontSize: textSize }}>
      {box && view && (
        <StillSheet paint={paint} sheet={sheet} box={box} view={view} label={label}>
          <RunMarks replays={replays} sheet={sheet} view={view} handle={marks} />
          <Robots robot={kit.robot} count={replays.length} view={view} handle={robots} />
          {!(whole || plain) && (
            <Readings
              moments={moments}
              view={view}
              within={box}
              clear={clear}
              gap={(kit.robot.width / 2 + BESIDE_ROBOT) * view.scale}
            />
          )}
        </StillSheet>
      )}
    </div>
  );
}

/** So far, mm, a reading stands off the robot that has just read it. */
const BESIDE_ROBOT = 4;

interface ReadingsProps extends Pick<PlacedBoxProps, 'within' | 'clear' | 'gap'> {
  /** One a robot. */
  readonly moments: readonly ReplayMoment[];
  readonly view: View;
}

/** What the robots have just read, called out beside them; the second one keeps clear of what the first was told. */
function Readings({ moments, view, within, clear, gap }: ReadingsProps) {
  const [first, setFirst] = useState<Place | null>(null);
  const besideFirst = useMemo(() => (first ? [...clear, ...pointsOf(first)] : clear), [clear, first]);
  const called = moments.map((moment, robot) => ({ robot, ...moment }));
  const several = called.filter(({ reading }) => reading).length > 1;
  return called.map(
    ({ reading, acted, robot }) =>
      reading && (
        <PlacedBox
          key={`${robot} ${reading.t}`}
          className="reading"
          leader="reading-leader"
          about={toScreen(view, reading.at)}
          within={within}
          clear={several && robot > 0 ? besideFirst : clear}
          gap={gap}
          {...(robot === 0 ? { onPlace: setFirst } : {})}
        >
          <ReadingWords reading={reading} acted={acted} />
        </PlacedBox>
      ),
  );
}

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
