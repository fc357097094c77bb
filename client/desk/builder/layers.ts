import type { Challenge, Play } from '../../../shared/documents/challenge.ts';
import {
  type Design,
  type Drawing,
  EMPTY_DESIGN,
  EMPTY_DRAWING,
  lengthOfBands,
} from '../../../shared/documents/design.ts';
import { pathOf } from '../../../shared/geometry/path.ts';
import type { EditContext } from '../../editor/model.ts';

/** What is drawn on a sheet: what it gives, the fault that a mend begins with, and the maker's own solution. */
const LAYERS = ['given', 'begin', 'own'] as const;
export type Layer = (typeof LAYERS)[number];

/** The layers of a way to play: a mend begins with a fault, and where all is given nothing is solved. */
export function layersOf(play: Play): readonly Layer[] {
  if (play === 'predict') return ['given'];
  return play === 'mend' ? LAYERS : ['given', 'own'];
}

export function designIn({ sheet, begin, model }: Challenge, layer: Layer): Design {
  if (layer === 'given') return { version: 1, drawing: sheet.given };
  return (layer === 'begin' ? begin : model) ?? EMPTY_DESIGN;
}

/** What may be drawn in a layer, and on what. What is given is drawn as if it were one's own. */
export function contextIn(challenge: Challenge, layer: Layer): EditContext {
  const { sheet, kit, play, begin, limits } = challenge;
  if (layer === 'given') {
    const bare = { ...sheet, given: EMPTY_DRAWING };
    return { sheet: bare, kit, play: 'draw', mostMarks: null, begin: EMPTY_DESIGN };
  }
  if (layer === 'begin') return { sheet, kit, play: 'draw', mostMarks: null, begin: EMPTY_DESIGN };
  return { sheet, kit, play, mostMarks: limits.marks ?? null, begin: begin ?? EMPTY_DESIGN };
}

const isEmpty = ({ drawing }: Design): boolean => drawing.lines.length + drawing.marks.length === 0;

/** The challenge with another drawing in a layer; what is drawn upon what is given keeps to it. */
export function withDesign(challenge: Challenge, layer: Layer, design: Design): Challenge {
  const { begin, model, ...rest } = challenge;
  if (layer === 'given') {
    const given = design.drawing;
    return {
      ...rest,
      sheet: { ...rest.sheet, given },
      ...(begin ? { begin: keptOn(begin, given) } : {}),
      ...(model ? { model: keptOn(model, given) } : {}),
    };
  }
  const drawn = isEmpty(design) ? undefined : design;
  const [first, own] = layer === 'begin' ? [drawn, model] : [begin, drawn];
  return { ...rest, ...(first ? { begin: first } : {}), ...(own ? { model: own } : {}) };
}

/** Without marks whose line has gone or become too short; lines and marks whose ids are given now get others. */
function keptOn(design: Design, given: Drawing): Design {
  const { lines, marks } = design.drawing;
  const taken = new Set([...given.lines, ...given.marks, ...lines, ...marks].map(({ id }) => id));
  const renamed = new Map<string, string>();
  const isGiven = (id: string) => [...given.lines, ...given.marks].some((thing) => thing.id === id);
  for (const { id } of [...lines, ...marks].filter((thing) => isGiven(thing.id))) {
    let n = 1;
    while (taken.has(`own-${n}`)) n++;
    taken.add(`own-${n}`);
    renamed.set(id, `own-${n}`);
  }
  const now = (id: string) => renamed.get(id) ?? id;
  const named = lines.map((line) => ({ ...line, id: now(line.id) }));
  const lengths = new Map([...given.lines, ...named].map((line) => [line.id, pathOf(line).length]));
  const own = marks.map((mark) => ({ ...mark, id: now(mark.id), line: now(mark.line) }));
  const kept = own.filter(({ line, at, bands }) => at + lengthOfBands(bands) <= (lengths.get(line) ?? -1));
  return { version: 1, drawing: { lines: named, marks: kept } };
}
