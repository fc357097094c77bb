import type { MarkBox } from '../documents/sheet.ts';
import type { Texts } from '../documents/values.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { boxCorners } from '../track/mark-boxes.ts';
import { boxLabel, type Paper } from './labels.ts';
import type { PictureBox, PictureLabel } from './shapes.ts';

/** How long the whole part of a side is beside each corner; of a short side a quarter. */
const ARM: Mm = 5;

/** The frames of boxes, each with its name beside a corner where that keeps off lines and the names before it. */
export function pictureBoxes(
  boxes: readonly MarkBox[],
  name: (texts: Texts) => string,
  paper: Paper,
  names: readonly PictureLabel[],
): PictureBox[] {
  const done: PictureBox[] = [];
  for (const box of boxes) {
    const before = [...names, ...done.map(({ label }) => label)];
    done.push(pictureBox(box, name(box.name), paper, before));
  }
  return done;
}

function pictureBox(box: MarkBox, text: string, paper: Paper, names: readonly PictureLabel[]): PictureBox {
  const polygon = boxCorners(box);
  const [across, down] = [Math.min(ARM, box.w / 4), Math.min(ARM, box.h / 4)];
  // Clockwise from the top left corner: which way each side leaves.
  const inwards = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ] as const;
  const angles = polygon.map((p, i): PaperPoint[] => {
    const [right, low] = inwards[i]!;
    return [{ x: p.x + right * across, y: p.y }, p, { x: p.x, y: p.y + low * down }];
  });
  return { id: box.id, polygon, angles, label: boxLabel(text, polygon, paper, names) };
}
