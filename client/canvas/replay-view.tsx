import { type RefObject, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Pace, Robot } from '../../shared/documents/kit.ts';
import type { Trace } from '../../shared/documents/trace.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { coveredAt, poseAt, type Replay, type ReplayReading, replayOf } from '../../shared/picture/replay.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale, useWords } from '../parts/use-words.ts';
import { clearPoints } from './clear-points.ts';
import { COLOUR } from './colours.ts';
import { FAST_STEP, paintActs, paintFastEdges } from './paint-replay.ts';
import type { Painter } from './painter.ts';
import { PlacedBox } from './placed-box.tsx';
import { moveSprite, paintSprite } from './robot-sprite.ts';
import { type SheetHandle, SheetView } from './sheet-view.tsx';
import { useEachFrame } from './use-each-frame.ts';
import { useFitted } from './use-fitted.ts';
import { toScreen, type View } from './view.ts';
import './replay-view.css';

/** What can be said of a run at one moment, one a robot. */
export interface ReplayMoment {
  readonly pace: Pace;
  /** The mark read last, while it is news: until a while after it acted. */
  readonly reading: ReplayReading | null;
  readonly acted: boolean;
  readonly over: boolean;
}

export interface ReplayViewProps {
  readonly challenge: Challenge;
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
  /** Called when something that words are said about has changed. */
  readonly onMoment?: (moments: readonly ReplayMoment[]) => void;
}

/** A run shown again over its drawing. Fills the element that it stands in. */
export function ReplayView({
  challenge,
  drawing,
  traces,
  textSize = 17,
  pad = 12,
  ...props
}: ReplayViewProps) {
  const { sheet } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, pad);
  const layout = useMemo(() => layOut(sheet, drawing), [sheet, drawing]);
  const picture = useMemo(() => pictureOf({ sheet, layout, kit, language }), [sheet, layout, kit, language]);
  const replays = useMemo(() => traces.map((trace) => replayOf(trace, layout)), [traces, layout]);
  const handle = useRef<SheetHandle>(null);
  const { moments, tell } = useMoments(replays, props.onMoment);
  const { sprites, draw } = useDrawn(handle, { replays, robot: kit.robot, view });
  const show = useCallback(
    (t: Seconds) => {
      draw(t);
      tell(t);
    },
    [draw, tell],
  );
  useEachFrame(props.timeAt, show);
  const clear = useMemo(
    () => (view ? clearPoints(layout, picture, view, textSize) : []),
    [layout, picture, view, textSize],
  );
  const robots = moments.map((moment, place) => ({ place, ...moment }));
  return (
    <div className="replay-view" ref={frame} style={{ fontSize: textSize }}>
      {box && view && (
        <SheetView
          picture={picture}
          box={box}
          view={view}
          textSize={textSize}
          handle={handle}
          under={props.under ?? null}
          over={props.over ?? null}
          label={props.label}
        >
          {PLATES.slice(0, replays.length).map((plate, i) => (
            <canvas
              key={plate}
              className="robot-sprite"
              ref={(canvas) => {
                sprites.current[i] = canvas;
              }}
            />
          ))}
          {robots.map(
            ({ place, reading, acted }) =>
              reading && (
                <PlacedBox
                  key={`${place} ${reading.t}`}
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
        </SheetView>
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

const PLATES = [COLOUR.paper, COLOUR.accentWash] as const;

/** What was driven fast by time `t`, by steps of a dash: all ink is drawn anew when that changes. */
const fastUntil = (replays: readonly Replay[], t: Seconds): string =>
  replays
    .flatMap((replay) => replay.fast)
    .map((part) => {
      const covered = coveredAt(part, t);
      // The last step is hidden under the robot as long as it drives there.
      if (!covered || t >= part.t.at(-1)!) return String(covered !== undefined);
      return `${Math.floor(covered.from / FAST_STEP)} ${Math.floor(covered.to / FAST_STEP)}`;
    })
    .join();

interface Painted {
  readonly replays: readonly Replay[];
  readonly robot: Robot;
  readonly view: View | null;
}

/**
 * Moves the robots at each frame, and paints on the sheet what has come newly since the one before: on a
 * slow tablet a canvas as large as the sheet takes most of a frame.
 */
function useDrawn(handle: RefObject<SheetHandle | null>, { replays, robot, view }: Painted) {
  const sprites = useRef<(HTMLCanvasElement | null)[]>([]);
  useLayoutEffect(() => {
    if (!view) return;
    PLATES.slice(0, replays.length).forEach((plate, i) => {
      const sprite = sprites.current[i];
      if (sprite) paintSprite(sprite, robot, view.scale, { plate });
    });
  }, [replays, robot, view]);
  const draw = useMemo(() => {
    let edged: string | undefined;
    let acted: number | undefined;
    return (t: Seconds) => {
      if (!view) return;
      replays.forEach((replay, i) => {
        const sprite = sprites.current[i];
        if (sprite) moveSprite(sprite, view, poseAt(replay.trace, t));
      });
      const acts = replays.flatMap((replay) => replay.acts.filter((act) => act.t <= t));
      if (acts.length !== acted) handle.current?.over(paintActs(acts));
      acted = acts.length;
      const edges = fastUntil(replays, t);
      if (edges !== edged) handle.current?.under(paintFastEdges(replays, t));
      edged = edges;
    };
  }, [handle, replays, view]);
  return { sprites, draw };
}

/** A reading stays beside its mark for so long after it acted, s of run time. */
const NEWS = 1.6;

export function momentAt(replay: Replay, t: Seconds): ReplayMoment {
  const { pace } = poseAt(replay.trace, t);
  const reading = replay.readings.filter((candidate) => candidate.t <= t).at(-1) ?? null;
  const until = reading ? (reading.actedAt ?? reading.t) + NEWS : 0;
  const acted = reading?.actedAt !== undefined && reading.actedAt <= t;
  return { pace, reading: t <= until ? reading : null, acted, over: t >= replay.duration };
}

const sameMoment = (a: ReplayMoment | undefined, b: ReplayMoment) =>
  a?.pace === b.pace && a.reading === b.reading && a.acted === b.acted && a.over === b.over;

/** What is said at the moment, told anew when it changes. */
function useMoments(replays: readonly Replay[], onMoment: ReplayViewProps['onMoment']) {
  const [moments, setMoments] = useState<readonly ReplayMoment[]>([]);
  const tell = useMemo(() => {
    let before: readonly ReplayMoment[] = [];
    return (t: Seconds) => {
      const now = replays.map((replay) => momentAt(replay, t));
      if (before.length === now.length && now.every((moment, i) => sameMoment(before[i], moment))) return;
      before = now;
      setMoments(now);
    };
  }, [replays]);
  useEffect(() => onMoment?.(moments), [moments, onMoment]);
  return { moments, tell };
}
