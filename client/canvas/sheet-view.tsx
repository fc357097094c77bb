import Konva from 'konva/lib/Core.js';
import { type ReactNode, type Ref, useEffect, useImperativeHandle, useMemo, useRef } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js';
import type { ScreenPoint } from '../../shared/geometry/units.ts';
import type { Picture } from '../../shared/picture/shapes.ts';
import { FACE } from './colours.ts';
import { drawLoupe } from './loupe.ts';
import { paintInk } from './paint-ink.ts';
import { paintSheet } from './paint-sheet.ts';
import { type Painter, paintIn, together } from './painter.ts';
import { type Box, sharpness, type View } from './view.ts';
import './sheet-view.css';

Konva.pixelRatio = sharpness();

/**
 * For what changes every frame: drawn without React and at once, until taken back with null. Asked for in
 * a frame's callback, so that what a finger does is seen in that frame and not in the next one.
 */
export interface SheetHandle {
  /** The ink of this picture in the place of the one given as a prop. */
  preview(picture: Picture | null): void;
  /** Between paper and ink. */
  under(painter: Painter | null): void;
  /** Over everything. */
  over(painter: Painter | null): void;
  /** Beside a finger at this place of the box: what is under it. */
  loupe(finger: ScreenPoint | null): void;
}

export interface SheetViewProps {
  readonly picture: Picture;
  readonly box: Box;
  readonly view: View;
  /** Names on the sheet, CSS pixels. */
  readonly textSize?: number;
  /** What is written on the paper under all ink. */
  readonly notes?: Painter | null;
  /** What stands under the ink and over it while the page stays as it is. */
  readonly under?: Painter | null;
  readonly over?: Painter | null;
  readonly handle?: Ref<SheetHandle>;
  /** Said aloud in the place of the picture. */
  readonly label: string;
  /** Stands over the canvas, in CSS pixels of the box. */
  readonly children?: ReactNode;
}

/** Names on the sheet, where nobody says otherwise, CSS pixels. */
const TEXT_SIZE = 16;

/** A sheet of paper with its drawing, on three layers: paper, ink, and what moves over it. */
export function SheetView(props: SheetViewProps) {
  const { picture, box, view, textSize = TEXT_SIZE, notes, under, over } = props;
  const ink = useRef<Konva.Shape>(null);
  const top = useRef<Konva.Shape>(null);
  const loupe = useRef<HTMLCanvasElement>(null);
  const live = useLive(props.handle, ink, top, { canvas: loupe, props });
  useFaceLoaded(ink);
  const paperScene = useMemo(
    () => scene(view, () => [paintSheet(picture, textSize), notes]),
    [view, picture, textSize, notes],
  );
  const inkScene = useMemo(
    () => scene(view, () => [live.current.under, under, paintInk(live.current.preview ?? picture)]),
    [view, picture, under, live],
  );
  const topScene = useMemo(() => scene(view, () => [over, live.current.over]), [view, over, live]);
  return (
    <div className="sheet-view" style={{ width: box.width, height: box.height }}>
      <div
        className="sheet-view-paper"
        style={{
          left: view.left,
          top: view.top,
          width: picture.w * view.scale,
          height: picture.h * view.scale,
        }}
      />
      <div role="img" aria-label={props.label} className="sheet-view-stage">
        <Stage width={box.width} height={box.height} listening={false}>
          <Layer listening={false}>
            <Shape sceneFunc={paperScene} />
          </Layer>
          <Layer listening={false}>
            <Shape ref={ink} sceneFunc={inkScene} />
          </Layer>
          <Layer listening={false}>
            <Shape ref={top} sceneFunc={topScene} />
          </Layer>
        </Stage>
      </div>
      {props.children}
      <canvas className="loupe" ref={loupe} hidden />
    </div>
  );
}

interface LoupeUse {
  readonly canvas: React.RefObject<HTMLCanvasElement | null>;
  readonly props: SheetViewProps;
}

interface Live {
  preview: Picture | null;
  under: Painter | null;
  over: Painter | null;
}

type ShapeRef = React.RefObject<Konva.Shape | null>;

function useLive(handle: Ref<SheetHandle> | undefined, ink: ShapeRef, top: ShapeRef, loupe: LoupeUse) {
  const live = useRef<Live>({ preview: null, under: null, over: null });
  const now = useRef(loupe);
  now.current = loupe;
  useImperativeHandle(handle, () => {
    const set = <K extends keyof Live>(key: K, value: Live[K], shape: ShapeRef) => {
      if (live.current[key] === value) return;
      live.current[key] = value;
      shape.current?.getLayer()?.draw();
    };
    return {
      preview: (picture) => set('preview', picture, ink),
      under: (painter) => set('under', painter, ink),
      over: (painter) => set('over', painter, top),
      loupe: (finger) => {
        const { canvas, props } = now.current;
        if (!canvas.current) return;
        canvas.current.hidden = finger === null;
        if (!finger) return;
        const { picture, box, view } = props;
        const { preview, under, over } = live.current;
        drawLoupe(canvas.current, finger, {
          box,
          view,
          ratio: Konva.pixelRatio,
          picture: preview ?? picture,
          paint: (inked) =>
            together(
              paintSheet(inked, props.textSize ?? TEXT_SIZE),
              props.notes,
              under,
              props.under,
              paintInk(inked),
              props.over,
              over,
            ),
        });
      },
    };
  }, [ink, top]);
  return live;
}

/** Letters drawn before the face has come are drawn again. */
function useFaceLoaded(shape: ShapeRef): void {
  useEffect(() => {
    let here = true;
    document.fonts.load(`650 16px ${FACE}`).then(
      () => here && shape.current?.getStage()?.batchDraw(),
      () => {},
    );
    return () => {
      here = false;
    };
  }, [shape]);
}

/** A scene in millimetres, from painters that are asked for anew at each drawing. */
const scene =
  (view: View, painters: () => readonly (Painter | null | undefined)[]) => (context: Konva.Context) =>
    paintIn(context._context, view, together(...painters()));
