import type { Design, Line } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import { type ActionName, markFor } from '../../../shared/library/chart-words.ts';
import { ahead, bend, drawLine, type Step, turn } from '../../../shared/library/pen.ts';

/**
 * Ways that a class finds from the boathouse to the lighthouse of the demo's sheet, all from (42, 160)
 * to the right and back to the left at y = 50.
 */
const SHAPES: readonly (readonly Step[])[] = [
  [ahead(180), bend(-90, 35), ahead(40), bend(-90, 35), ahead(170)],
  [ahead(198), turn(-90), ahead(110), turn(-90), ahead(183)],
  [ahead(150), bend(-180, 55), ahead(135)],
  [ahead(150), turn(-45), ahead(77.78), turn(-90), ahead(77.78), turn(-45), ahead(135)],
  [ahead(120), bend(-45, 40), bend(45, 40), bend(-90, 30), ahead(26.86), bend(-90, 30), ahead(161)],
  [ahead(90), bend(-90, 25), bend(90, 25), ahead(40), bend(-90, 30), bend(-90, 30), ahead(165)],
];

/** Ways along the line for the marks: two that make it fast, and one, from the end, that ends that. */
const PLACES = [
  [40, 90, 85],
  [35, 80, 80],
  [45, 100, 95],
  [40, 75, 110],
] as const;

/** Every shape with every set of places; most of them are sound. */
export function tracksFor(kit: Kit): Design[] {
  return SHAPES.flatMap((shape) => {
    const from = { x: 42, y: 160 };
    const width = kit.rules.lineWidth.nominal;
    const line = drawLine({ id: 'way', from, heading: 0, width }, shape);
    return PLACES.map((places) => marked(kit, line, places));
  });
}

function marked(kit: Kit, line: Line, [first, second, fromEnd]: readonly [number, number, number]): Design {
  const place = (id: string, at: number, action: ActionName) =>
    markFor(kit, { id, line: line.id, at, action }) ?? [];
  const marks = [
    place('first', first, 'faster'),
    place('second', second, 'faster'),
    place('steady', Math.floor(pathOf(line).length) - fromEnd, 'steady'),
  ].flat();
  return { version: 1, drawing: { lines: [line], marks } };
}
