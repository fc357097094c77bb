import { type RefObject, useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Robot } from '../../shared/documents/kit.ts';
import type { Mm, Seconds } from '../../shared/geometry/units.ts';
import type { FleetRobot } from '../../shared/judge/fleet.ts';
import { poseAt } from '../../shared/picture/replay.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale } from '../parts/use-words.ts';
import { COLOUR } from './colours.ts';
import { paintInk } from './paint-ink.ts';
import { paintSheet } from './paint-sheet.ts';
import { type Painter, together } from './painter.ts';
import type { RobotLook } from './robot-shapes.ts';
import { moveSprite, paintSprite, showLook } from './robot-sprite.ts';
import { shownPicture } from './shown-picture.ts';
import { StillSheet } from './still-sheet.tsx';
import { useEachFrame } from './use-each-frame.ts';
import { useFitted } from './use-fitted.ts';
import type { View } from './view.ts';
import './replay-view.css';
import './fleet-view.css';

export interface FleetViewProps {
  readonly challenge: Pick<Challenge, 'sheet' | 'kit'>;
  readonly drawing: Drawing;
  readonly robots: readonly FleetRobot[];
  readonly timeAt: () => Seconds;
  /** Over the ink once all is over: then those that strayed make room for it. */
  readonly result: Painter | null;
  readonly textSize: number;
  readonly label: string;
}

/** Many robots on one drawing. One that strays turns faint, and leaves a cross where it did. */
export function FleetView({ challenge, drawing, robots, textSize, result, ...props }: FleetViewProps) {
  const { sheet } = challenge;
  const kit = useKitOnScreen(challenge.kit);
  const language = useLocale();
  const { frame, box, view } = useFitted(sheet, 6);
  const paint = useMemo(() => {
    const layout = layOut(sheet, drawing);
    const picture = shownPicture({ sheet, layout, kit, language }, textSize, view);
    return together(paintSheet(picture, textSize), paintInk(picture), result);
  }, [sheet, drawing, kit, language, textSize, view, result]);
  const { sprites, crosses, draw } = useSprites({ robots, robot: kit.robot, view });
  useEachFrame(props.timeAt, draw);
  return (
    <div className="replay-view" ref={frame}>
      {box && view && (
        <StillSheet paint={paint} sheet={sheet} box={box} view={view} label={props.label}>
          {!result && <Crosses robots={robots} sheet={sheet} view={view} held={crosses} />}
          {robots.map(({ trace, stray }, i) => (
            <svg
              key={trace.seed}
              className="robot-sprite"
              aria-hidden="true"
              focusable="false"
              data-gone={result !== null && stray !== null}
              ref={(sprite) => {
                sprites.current[i] = sprite;
              }}
            />
          ))}
        </StillSheet>
      )}
    </div>
  );
}

/** A cross where a robot strayed, mm from its middle to its ends. */
const CROSS = 4;

interface CrossesProps {
  readonly robots: readonly FleetRobot[];
  readonly sheet: { readonly w: Mm; readonly h: Mm };
  readonly view: View;
  readonly held: RefObject<(SVGGElement | null)[]>;
}

/** Where robots leave the line; each is shown once its robot has. */
function Crosses({ robots, sheet: { w, h }, view, held }: CrossesProps) {
  const pixel = 1 / view.scale;
  const paper = { left: view.left, top: view.top, width: w * view.scale, height: h * view.scale };
  return (
    <svg
      className="run-marks"
      viewBox={`0 0 ${w} ${h}`}
      style={paper}
      strokeLinecap="round"
      aria-hidden="true"
      focusable="false"
    >
      {robots.map(({ trace, stray }, i) => {
        if (!stray) return null;
        const { x, y } = stray.at;
        const cross = [-1, 1].map(
          (side) => `M${x - CROSS} ${y - CROSS * side}l${2 * CROSS} ${2 * CROSS * side}`,
        );
        return (
          <g
            key={trace.seed}
            visibility="hidden"
            ref={(group) => {
              held.current[i] = group;
            }}
          >
            <path d={cross.join('')} stroke={COLOUR.sheet} strokeWidth={7 * pixel} />
            <path d={cross.join('')} stroke={COLOUR.caution} strokeWidth={3.5 * pixel} />
          </g>
        );
      })}
    </svg>
  );
}

interface Sprites {
  readonly robots: readonly FleetRobot[];
  readonly robot: Robot;
  readonly view: View | null;
}

const hasStrayed = ({ straysAt }: FleetRobot, t: Seconds): boolean => straysAt !== null && straysAt <= t;

/** As it drives, and once it has strayed. */
const LOOKS: readonly RobotLook[] = [{}, { faint: true }];

/** Moves the robots at each frame; one that strays gets its other look, and its cross is shown. */
function useSprites({ robots, robot, view }: Sprites) {
  const crosses = useRef<(SVGGElement | null)[]>([]);
  const sprites = useRef<(SVGSVGElement | null)[]>([]);
  const faint = useRef<readonly boolean[]>([]);
  useLayoutEffect(() => {
    if (!view) return;
    faint.current = robots.map(() => false);
    for (const sprite of sprites.current.slice(0, robots.length))
      if (sprite) paintSprite(sprite, robot, view.scale, LOOKS);
  }, [robots, robot, view]);
  const draw = useCallback(
    (t: Seconds) => {
      if (!view) return;
      const now = robots.map((one) => hasStrayed(one, t));
      robots.forEach(({ trace }, i) => {
        const sprite = sprites.current[i];
        if (!sprite) return;
        const gone = now[i] === true;
        if (gone !== faint.current[i]) {
          showLook(sprite, gone ? 1 : 0);
          crosses.current[i]?.setAttribute('visibility', gone ? 'visible' : 'hidden');
        }
        moveSprite(sprite, view, poseAt(trace, t));
      });
      faint.current = now;
    },
    [robots, view],
  );
  return { sprites, crosses, draw };
}
