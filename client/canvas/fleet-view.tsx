import { type RefObject, useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Drawing } from '../../shared/documents/design.ts';
import type { Robot } from '../../shared/documents/kit.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import type { FleetRobot } from '../../shared/judge/fleet.ts';
import { pictureOf } from '../../shared/picture/picture.ts';
import { poseAt } from '../../shared/picture/replay.ts';
import { layOut } from '../../shared/track/layout.ts';
import { useKitOnScreen } from '../parts/kit-on-screen.ts';
import { useLocale } from '../parts/use-words.ts';
import { paintStrays } from './paint-frayed.ts';
import type { Painter } from './painter.ts';
import { moveSprite, paintSprite } from './robot-sprite.ts';
import { type SheetHandle, SheetView } from './sheet-view.tsx';
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
  const picture = useMemo(
    () => pictureOf({ sheet, layout: layOut(sheet, drawing), kit, language }),
    [sheet, drawing, kit, language],
  );
  const handle = useRef<SheetHandle>(null);
  const { sprites, draw } = useSprites(handle, { robots, robot: kit.robot, view });
  useEachFrame(props.timeAt, draw);
  useLayoutEffect(() => {
    if (result) handle.current?.over(null);
  }, [result]);
  return (
    <div className="replay-view" ref={frame}>
      {box && view && (
        <SheetView
          picture={picture}
          box={box}
          view={view}
          textSize={textSize}
          handle={handle}
          over={result}
          label={props.label}
        >
          {robots.map(({ trace, stray }, i) => (
            <canvas
              key={trace.seed}
              className="robot-sprite"
              data-gone={result !== null && stray !== null}
              ref={(canvas) => {
                sprites.current[i] = canvas;
              }}
            />
          ))}
        </SheetView>
      )}
    </div>
  );
}

interface Sprites {
  readonly robots: readonly FleetRobot[];
  readonly robot: Robot;
  readonly view: View | null;
}

const hasStrayed = ({ straysAt }: FleetRobot, t: Seconds): boolean => straysAt !== null && straysAt <= t;

/** Moves every robot at each frame; paints one anew, and the crosses, only when it strays. */
function useSprites(handle: RefObject<SheetHandle | null>, { robots, robot, view }: Sprites) {
  const sprites = useRef<(HTMLCanvasElement | null)[]>([]);
  const faint = useRef<readonly boolean[]>([]);
  useLayoutEffect(() => {
    if (!view) return;
    faint.current = robots.map(() => false);
    for (const sprite of sprites.current.slice(0, robots.length))
      if (sprite) paintSprite(sprite, robot, view.scale, {});
  }, [robots, robot, view]);
  const draw = useCallback(
    (t: Seconds) => {
      if (!view) return;
      const now = robots.map((one) => hasStrayed(one, t));
      robots.forEach(({ trace }, i) => {
        const sprite = sprites.current[i];
        if (!sprite) return;
        if (now[i] !== faint.current[i]) paintSprite(sprite, robot, view.scale, { faint: now[i] === true });
        moveSprite(sprite, view, poseAt(trace, t));
      });
      if (now.join() !== faint.current.join())
        handle.current?.over(
          paintStrays(robots.flatMap(({ stray }, i) => (stray && now[i] ? [stray.at] : []))),
        );
      faint.current = now;
    },
    [handle, robots, robot, view],
  );
  return { sprites, draw };
}
