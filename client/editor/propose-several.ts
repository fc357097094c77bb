import { boxOf } from '../../shared/geometry/box.ts';
import { atan2 } from '../../shared/geometry/exact-math.ts';
import type { PaperPoint, Rad } from '../../shared/geometry/units.ts';
import { type Gesture, hasPulled, type Touch } from './gesture.ts';
import { endOf, lineIn } from './lines.ts';
import type { EditContext, Editor } from './model.ts';
import { type Proposal, plain, unchanged } from './proposal.ts';
import { caughtIn, moveSeveral, type Several, selectionOf, severalOf, toggled } from './several.ts';
import { onGrid, type SnapQuery, snapShift } from './snap.ts';

const TURN_STEP: Rad = Math.PI / 36;

/** What a box round things would choose; a tap on nothing lets go of what is chosen. */
export function proposeBox(
  gesture: Gesture & { kind: 'box' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  if (!hasPulled(gesture, touch)) return plain(unchanged(editor, touch.adds ? editor.selection : null));
  const caught = caughtIn(boxOf([gesture.down, touch.at]), editor.design, context);
  const before = touch.adds ? severalOf(editor.selection) : null;
  const all = before ? together(before, caught) : caught;
  return plain(unchanged(editor, selectionOf(all)));
}

const together = (a: Several, b: Several): Several => ({
  lines: [...new Set([...a.lines, ...b.lines])],
  marks: [...new Set([...a.marks, ...b.marks])],
});

export function proposeSeveral(
  gesture: Gesture & { kind: 'several' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const { several, hit } = gesture;
  if (!hasPulled(gesture, touch)) {
    if (!hit) return plain(unchanged(editor, selectionOf(several)));
    const thing = hit.kind === 'mark' ? { mark: hit.mark } : { line: hit.line };
    return plain(unchanged(editor, selectionOf(toggled(several, thing))));
  }
  return proposeShift(several, gesture.down, editor, context, touch);
}

/** Shifts lines in steps of the grid, or so that an end meets another one. */
export function proposeShift(
  several: Several,
  down: PaperPoint,
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const { design } = editor;
  const raw = { x: touch.at.x - down.x, y: touch.at.y - down.y };
  const ends = several.lines.flatMap((id) => {
    const line = lineIn(design, id);
    return line ? [line.from, endOf(line)].map((p) => ({ x: p.x + raw.x, y: p.y + raw.y })) : [];
  });
  const query: SnapQuery = {
    design,
    context,
    reach: touch.reach * 0.7,
    withoutLines: several.lines,
    free: touch.free,
  };
  const caught = snapShift(ends, query);
  const loose = touch.free ? raw : onGrid(raw);
  const by = caught ? { x: raw.x + caught.by.x, y: raw.y + caught.by.y } : loose;
  return plain(moveSeveral(design, context, several, { about: down, by }), caught?.snap ?? null);
}

/** Turns about the middle in steps of five degrees. */
export function proposeTurn(
  gesture: Gesture & { kind: 'turn' },
  editor: Editor,
  context: EditContext,
  touch: Touch,
): Proposal {
  const { about, down, several } = gesture;
  const angle = (p: PaperPoint): Rad => atan2(p.y - about.y, p.x - about.x);
  const raw = angle(touch.at) - angle(down);
  const turned = touch.free ? raw : Math.round(raw / TURN_STEP) * TURN_STEP;
  return plain(moveSeveral(editor.design, context, several, { about, turned }));
}
