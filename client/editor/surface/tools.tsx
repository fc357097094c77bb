import {
  Eraser,
  Minus,
  Move,
  Paintbrush,
  Pencil,
  Redo2,
  RotateCcw,
  Spline,
  SquareSplitHorizontal,
  Undo2,
} from 'lucide-react';
import type { ReactNode } from 'react';
import { useAnnounce } from '../../parts/announcer.tsx';
import { Icon, type IconShape } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { type Tool, toolsOf } from '../model.ts';
import type { DrawingSession } from './session.ts';
import { useSessionState } from './use-session-state.ts';
import './surface.css';

const ICONS: Readonly<Record<Tool, IconShape>> = {
  straight: Minus,
  curve: Spline,
  freehand: Pencil,
  mark: SquareSplitHorizontal,
  bands: Paintbrush,
  move: Move,
  rub: Eraser,
};

/** The tools of this way to play, and the way back. */
export function Tools({ session }: { readonly session: DrawingSession }) {
  const { building } = useWords().tablet;
  const chosen = useSessionState(session, (state) => state.editor.tool);
  return (
    <div className="tools">
      <div className="tools-group" role="radiogroup" aria-label={building.tools}>
        {toolsOf(session.context.play).map((tool) => (
          <label key={tool} className="tool" data-chosen={tool === chosen}>
            <input
              type="radio"
              name="tool"
              className="tool-input"
              checked={tool === chosen}
              onChange={() => session.tool(tool)}
            />
            <Icon of={ICONS[tool]} size={26} />
            {building.tool(tool)}
          </label>
        ))}
      </div>
      <Way session={session} />
    </div>
  );
}

function Way({ session }: { readonly session: DrawingSession }) {
  const { building } = useWords().tablet;
  const announce = useAnnounce();
  const back = useSessionState(session, ({ editor }) => editor.past !== null || editor.pending !== null);
  const forth = useSessionState(session, ({ editor }) => editor.future !== null);
  const begun = useSessionState(session, ({ editor }) => editor.design === session.context.begin);
  const again = () => {
    session.again();
    announce(building.againDone);
  };
  return (
    <div className="tools-group tools-way">
      <ToolButton icon={Undo2} disabled={!back} onClick={session.undo}>
        {building.undo}
      </ToolButton>
      <ToolButton icon={Redo2} disabled={!forth} onClick={session.redo}>
        {building.redo}
      </ToolButton>
      <ToolButton icon={RotateCcw} disabled={begun} onClick={again}>
        {building.again}
      </ToolButton>
    </div>
  );
}

interface ToolButtonProps {
  readonly icon: IconShape;
  readonly disabled: boolean;
  readonly onClick: () => void;
  readonly children: ReactNode;
}

function ToolButton({ icon, disabled, onClick, children }: ToolButtonProps) {
  return (
    <button type="button" className="tool" disabled={disabled} onClick={onClick}>
      <Icon of={icon} size={26} />
      {children}
    </button>
  );
}
