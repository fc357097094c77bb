import { ChartColumn, Check, MonitorUp, Printer } from 'lucide-react';
import type { RoomState } from '../../shared/room/state.ts';
import type { Step } from '../../shared/wording/en/desk.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { Button } from '../parts/button.tsx';
import { isCheckOnBoard } from '../parts/figures.ts';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import type { Leaf } from './desk-store.ts';
import { boardPath } from './session.ts';
import { reachable, STEPS, standOf } from './steps.ts';
import { useWholeWords } from './whole-words.ts';
import './rail.css';

export interface RailProps {
  readonly room: RoomState | null;
  /** The step that the desk looks at; null while it looks at a leaf beside the steps. */
  readonly step: Step | null;
  readonly leaf?: Leaf | null;
  readonly onStep: (step: Step) => void;
  readonly onLeaf?: (leaf: Leaf) => void;
}

/** The lesson's path: where the class is, what the desk looks at, what the board shows. */
export function Rail({ room, step, leaf = null, onStep, onLeaf }: RailProps) {
  const words = useWholeWords();
  const { desk, print, safety } = words;
  const leaves = [
    { name: 'picture', icon: ChartColumn, words: desk.picture.title, shortcut: 'C' },
    { name: 'paper', icon: Printer, words: print.page.open, shortcut: 'O' },
  ] as const;
  return (
    <nav className="desk-rail" aria-label={desk.path}>
      <ol className="rail-steps">
        {STEPS.map((each, i) => {
          const stand = room ? standOf(each, room.phase) : each === 'prepare' ? 'here' : 'ahead';
          return (
            <li key={each}>
              <button
                type="button"
                className="rail-step"
                data-stand={stand}
                aria-current={step === each ? 'step' : undefined}
                disabled={room ? !reachable(each, room) : each !== 'prepare'}
                onClick={() => onStep(each)}
              >
                <span className="rail-disc">
                  {stand === 'done' ? <Icon of={Check} size={16} label={desk.doneStep} /> : i + 1}
                </span>
                {desk.step(each)}
                {room && stand === 'here' && <span className="only-read-aloud">, {desk.here}</span>}
              </button>
            </li>
          );
        })}
      </ol>
      {room && (
        <div className="rail-foot">
          {onLeaf && (
            <div>
              {leaves.map(({ name, icon, words, shortcut }) => (
                <button
                  key={name}
                  type="button"
                  className="rail-step rail-leaf"
                  aria-current={leaf === name ? 'page' : undefined}
                  aria-keyshortcuts={shortcut}
                  onClick={() => onLeaf(name)}
                >
                  <Icon of={icon} size={22} />
                  {words}
                </button>
              ))}
            </div>
          )}
          <p className="rail-board">
            <span>{desk.board.title}</span>
            <strong>{boardSays(room, words)}</strong>
            <span>{room.standingsShown ? desk.board.standings : desk.board.noStandings}</span>
          </p>
          <Button
            icon={<Icon of={MonitorUp} />}
            shortcut="B"
            title={desk.gathering.boardHereTitle}
            onClick={() => location.assign(boardPath(room.id, 'flip'))}
          >
            {desk.gathering.boardHere}
          </Button>
          {!room.chargerWatched && (
            <Notice tone="caution">
              {safety.nobodyStays} {safety.tickUnderPrepare}
            </Notice>
          )}
        </div>
      )}
    </nav>
  );
}

function boardSays(room: RoomState, { desk, scenes }: Wording): string {
  if (room.paused !== null) return desk.board.paused;
  if (room.lookHere) return desk.board.look;
  if (room.board.scene !== null) return scenes.name(room.board.scene);
  if (room.phase === 'show' && room.stage.length === 0) return desk.board.empty;
  if (room.phase === 'close' && isCheckOnBoard(room)) return desk.board.check;
  return desk.board[room.phase];
}
