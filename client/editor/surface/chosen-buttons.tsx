import { ArrowLeftRight, Copy, FlipHorizontal2, RotateCw, Trash2 } from 'lucide-react';
import { useMemo } from 'react';
import { wordOf } from '../../../shared/documents/design.ts';
import { actionOf, reversed } from '../../../shared/documents/kit.ts';
import type { PaperPoint, ScreenPoint } from '../../../shared/geometry/units.ts';
import { middleOf } from '../../../shared/picture/replay.ts';
import type { Layout } from '../../../shared/track/layout.ts';
import { PlacedBox } from '../../canvas/placed-box.tsx';
import type { Place } from '../../canvas/placement.ts';
import { type Box, isSeen, toScreen, type View } from '../../canvas/view.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { useWords } from '../../parts/use-words.ts';
import { bandHandles } from '../bands.ts';
import type { Editor } from '../model.ts';
import { boundsOf, severalOf } from '../several.ts';
import type { DrawingSession } from './session.ts';

export interface ChosenButtonsProps {
  readonly session: DrawingSession;
  readonly editor: Editor;
  readonly layout: Layout;
  readonly view: View;
  readonly within: Box;
  readonly clear: readonly ScreenPoint[];
  readonly onPlace: (place: Place) => void;
}

/** What can be done with the chosen mark, or with all chosen lines, beside it. */
export function ChosenButtons(props: ChosenButtonsProps) {
  const { editor, layout, view, within, clear, session } = props;
  const { selection, design, tool } = editor;
  const pixel = 1 / view.scale;
  const about = useMemo((): { at: PaperPoint; keep: readonly PaperPoint[] } | null => {
    if (selection?.kind === 'mark') {
      const at = middleOf(selection.mark, layout);
      const handles = bandHandles(design, session.context, selection.mark, pixel);
      return at ? { at, keep: handles.map((handle) => handle.at) } : null;
    }
    const several = tool === 'move' ? severalOf(selection) : null;
    const box = several && boundsOf(several, design);
    return box ? { at: { x: (box.minX + box.maxX) / 2, y: box.maxY }, keep: [] } : null;
  }, [selection, design, layout, tool, session, pixel]);
  if (!about || !selection || !isSeen(view, within, about.at)) return null;
  return (
    <PlacedBox
      className="chosen-buttons"
      about={toScreen(view, about.at)}
      within={within}
      clear={[...clear, ...about.keep.map((p) => toScreen(view, p))]}
      gap={26}
      onPlace={props.onPlace}
    >
      {selection.kind === 'mark' ? (
        <OfMark session={session} editor={editor} mark={selection.mark} />
      ) : (
        <OfSeveral session={session} />
      )}
    </PlacedBox>
  );
}

interface OfMarkProps {
  readonly session: DrawingSession;
  readonly editor: Editor;
  readonly mark: string;
}

function OfMark({ session, editor, mark }: OfMarkProps) {
  const words = useWords();
  const { building } = words.tablet;
  const { kit } = session.context;
  const found = editor.design.drawing.marks.find((each) => each.id === mark);
  if (!found) return null;
  const word = wordOf(found);
  const back = reversed(word);
  const name = (of: string) => {
    const action = actionOf(kit, of);
    return action ? words.actions.name(action) : building.unknownWord;
  };
  return (
    <>
      <p className="mark-reads">
        {name(word)}
        {name(back) !== name(word) && ' ▸'} <MarkPicture kit={kit} word={word} />{' '}
        {name(back) !== name(word) && `◂ ${name(back)}`}
      </p>
      <Button icon={<Icon of={ArrowLeftRight} />} onClick={session.flip}>
        {building.flip}
      </Button>
      <Button icon={<Icon of={Trash2} />} onClick={session.rubChosen}>
        {building.rubOut}
      </Button>
    </>
  );
}

const EIGHTH = Math.PI / 4;

function OfSeveral({ session }: { readonly session: DrawingSession }) {
  const { building } = useWords().tablet;
  return (
    <>
      <Button icon={<Icon of={RotateCw} />} onClick={() => session.turn(EIGHTH)}>
        {building.turn}
      </Button>
      <Button icon={<Icon of={FlipHorizontal2} />} onClick={session.mirror}>
        {building.mirror}
      </Button>
      <Button icon={<Icon of={Copy} />} onClick={session.copy}>
        {building.copy}
      </Button>
      <Button icon={<Icon of={Trash2} />} onClick={session.rubChosen}>
        {building.rubOut}
      </Button>
    </>
  );
}
