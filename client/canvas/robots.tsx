import { type ReactNode, type RefObject, useImperativeHandle, useLayoutEffect, useRef } from 'react';
import type { Robot } from '../../shared/documents/kit.ts';
import type { Pose } from '../../shared/picture/replay.ts';
import { COLOUR } from './colours.ts';
import { moveSprite, paintSprite } from './robot-sprite.ts';
import { toScreen, type View } from './view.ts';

export interface RobotsHandle {
  /** Puts the robots where they stand, in their order. */
  move(view: View, poses: readonly Pose[]): void;
}

export interface RobotsProps {
  readonly robot: Robot;
  readonly count: number;
  readonly view: View;
  readonly handle: RefObject<RobotsHandle | null>;
  /** What each robot carries upright, so that several can be told apart. */
  readonly flags?: readonly ReactNode[];
}

const PLATES = [COLOUR.paper, COLOUR.accentWash, COLOUR.cautionWash, COLOUR.rule] as const;

/** Robots over a sheet, painted once each and then only moved. */
export function Robots({ robot, count, view, handle, flags }: RobotsProps) {
  const sprites = useRef<(SVGSVGElement | null)[]>([]);
  const carried = useRef<(HTMLElement | null)[]>([]);
  useLayoutEffect(() => {
    sprites.current.slice(0, count).forEach((sprite, i) => {
      if (sprite) paintSprite(sprite, robot, view.scale, [{ plate: PLATES[i % PLATES.length]! }]);
    });
  }, [robot, count, view.scale]);
  useImperativeHandle(
    handle,
    () => ({
      move: (now, poses) =>
        poses.forEach((pose, i) => {
          const [sprite, flag] = [sprites.current[i], carried.current[i]];
          if (sprite) moveSprite(sprite, now, pose);
          if (!flag) return;
          const { px, py } = toScreen(now, pose.at);
          flag.style.transform = `translate(${px.toFixed(2)}px, ${py.toFixed(2)}px) translate(-50%, -50%)`;
        }),
    }),
    [],
  );
  const places = Array.from({ length: count }, (_, place) => place);
  return (
    <>
      {places.map((place) => (
        <svg
          key={place}
          className="robot-sprite"
          aria-hidden="true"
          focusable="false"
          ref={(sprite) => {
            sprites.current[place] = sprite;
          }}
        />
      ))}
      {flags &&
        places.map((place) => (
          <span
            key={place}
            className="robot-flag"
            ref={(element) => {
              carried.current[place] = element;
            }}
          >
            {flags[place]}
          </span>
        ))}
    </>
  );
}
