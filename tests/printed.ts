import { createCanvas } from '@napi-rs/canvas';
import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Printed files seen through a PDF library that is not the one that wrote them. */

/** PDF's unit is 1/72 in (ISO 32000-1, 8.3.2); an inch is 25.4 mm. */
const POINTS_A_MM = 72 / 25.4;

export interface SeenPage {
  /** Size of the page in points, as its media box says. */
  readonly points: { readonly w: number; readonly h: number };
  /** ISO 32000-1: how many 1/72 in a unit of this page is. */
  readonly userUnit: number;
  readonly page: PDFPageProxy;
}

/** Opens a PDF and hands its pages to `look`; what it holds is freed at the end. */
export async function lookAt<T>(
  bytes: Uint8Array,
  look: (pages: readonly SeenPage[]) => Promise<T>,
): Promise<T> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, isEvalSupported: false });
  const pdf = await task.promise;
  try {
    const pages: SeenPage[] = [];
    for (let number = 1; number <= pdf.numPages; number++) {
      const page = await pdf.getPage(number);
      const [x0, y0, x1, y1] = page.view as [number, number, number, number];
      pages.push({ page, userUnit: page.userUnit, points: { w: x1 - x0, h: y1 - y0 } });
    }
    return await look(pages);
  } finally {
    await task.destroy();
  }
}

/** A page as pixels. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
  readonly pixelsAMm: number;
  /** Red, green and blue of the pixel at a place in mm. */
  readonly at: (x: number, y: number) => readonly [number, number, number];
}

export async function rasterOf({ page }: SeenPage, dpi: number): Promise<Raster> {
  const viewport = page.getViewport({ scale: dpi / 72 });
  const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
  const canvas = createCanvas(width, height);
  await page.render({ canvas: canvas as unknown as HTMLCanvasElement, viewport }).promise;
  const { data } = canvas.getContext('2d').getImageData(0, 0, width, height);
  const pixelsAMm = dpi / 25.4;
  const at = (x: number, y: number): readonly [number, number, number] => {
    const i = (Math.floor(y * pixelsAMm) * width + Math.floor(x * pixelsAMm)) * 4;
    return [data[i]!, data[i + 1]!, data[i + 2]!];
  };
  return { width, height, data, pixelsAMm, at };
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A path as it lies on the page, in mm from the top left corner; curves are followed in small steps. */
export interface SeenPath {
  readonly painted: 'stroke' | 'fill' | 'clip';
  readonly color: string;
  readonly width: number;
  readonly dash: readonly number[];
  readonly points: readonly Spot[];
}

type Matrix = readonly [number, number, number, number, number, number];
const STEPS_A_CURVE = 24;

const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  A * a + B * c,
  A * b + B * d,
  C * a + D * c,
  C * b + D * d,
  E * a + F * c + e,
  E * b + F * d + f,
];

/** Every path of a page, read out of what the library makes of the file. */
export async function pathsOf({ page, points }: SeenPage): Promise<SeenPath[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  let now = {
    matrix: [1, 0, 0, 1, 0, 0] as Matrix,
    stroke: '#000000',
    fill: '#000000',
    width: 1,
    dash: [] as number[],
  };
  const kept: (typeof now)[] = [];
  const found: SeenPath[] = [];
  const place = (x: number, y: number): Spot => {
    const [a, b, c, d, e, f] = now.matrix;
    return { x: (a * x + c * y + e) / POINTS_A_MM, y: (points.h - (b * x + d * y + f)) / POINTS_A_MM };
  };
  fnArray.forEach((name, i) => {
    const args = argsArray[i] as unknown[];
    if (name === OPS.save) kept.push(now);
    else if (name === OPS.restore) now = kept.pop()!;
    else if (name === OPS.transform) now = { ...now, matrix: times(now.matrix, args as unknown as Matrix) };
    else if (name === OPS.setStrokeRGBColor) now = { ...now, stroke: String(args[0]) };
    else if (name === OPS.setFillRGBColor) now = { ...now, fill: String(args[0]) };
    else if (name === OPS.setLineWidth) now = { ...now, width: Number(args[0]) };
    else if (name === OPS.setDash) now = { ...now, dash: args[0] as number[] };
    else if (name === OPS.constructPath) {
      const [paint, [data]] = args as [number, [Float32Array | null]];
      const painted = paint === OPS.stroke ? 'stroke' : paint === OPS.fill ? 'fill' : 'clip';
      const scale = Math.hypot(now.matrix[0], now.matrix[1]) / POINTS_A_MM;
      found.push({
        painted,
        color: (painted === 'stroke' ? now.stroke : now.fill).toUpperCase(),
        width: now.width * scale,
        dash: now.dash,
        points: data ? followed(data).map(({ x, y }) => place(x, y)) : [],
      });
    }
  });
  return found;
}

/** The library's own form of a path: 0 move, 1 line, 2 cubic curve, 4 close, each with its coordinates. */
function followed(data: Float32Array): Spot[] {
  const spots: Spot[] = [];
  for (let i = 0; i < data.length; ) {
    const kind = data[i++];
    const [x, y] = [data[i]!, data[i + 1]!];
    if (kind === 0 || kind === 1) {
      spots.push({ x, y });
      i += 2;
    } else if (kind === 2) {
      spots.push(...curve(spots.at(-1)!, [...data.subarray(i, i + 6)]));
      i += 6;
    } else if (kind !== 4) throw new RangeError(`unknown kind ${kind} in a path`);
  }
  return spots;
}

function curve(from: Spot, [x1, y1, x2, y2, x3, y3]: readonly number[]): Spot[] {
  return Array.from({ length: STEPS_A_CURVE }, (_, i) => {
    const t = (i + 1) / STEPS_A_CURVE;
    const u = 1 - t;
    const mixed = (a: number, b: number, c: number, d: number) =>
      u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
    return { x: mixed(from.x, x1!, x2!, x3!), y: mixed(from.y, y1!, y2!, y3!) };
  });
}
