import { Camera, Moon, Volume2 } from 'lucide-react';
import { BOARD_SCENES, BOARD_SETTINGS, type BoardScene, type BoardSetting } from '../../shared/room/board.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { Wording } from '../../shared/wording/wording.ts';
import { currentRound } from '../parts/figures.ts';
import { Icon, type IconShape } from '../parts/icon.tsx';
import { Refused } from '../parts/refusal.tsx';
import { useAsk } from '../parts/use-ask.ts';
import { hereOf, useDocument } from '../parts/use-document.ts';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { type Choice, choiceOf } from './scenes-choose.ts';
import { SceneControls } from './scenes-controls.tsx';
import { SCENES_KEY, STILL_KEY, useSceneKeys } from './scenes-keys.ts';
import { useWholeWords } from './whole-words.ts';
import './scenes.css';

const SETTING_ICONS: Readonly<Record<BoardSetting, IconShape>> = {
  dark: Moon,
  sound: Volume2,
  still: Camera,
};

/** What the board shows and how, always at hand: one row of scenes, and above it what the chosen one needs. */
export function Scenes({ room }: { readonly room: RoomState }) {
  const { scenes } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const { ask, refusal } = useAsk();
  const challenge = hereOf(useDocument('challenge', room.rounds[currentRound(room)]?.challenge ?? null));
  const list = [null, ...BOARD_SCENES].map((scene) => ({ scene, choice: choiceOf(room, challenge, scene) }));
  const choose = (choice: Choice | undefined) => {
    if (choice?.kind === 'ask') void ask(choice.ask);
  };
  const { row, open, onKeyDown, onBlur } = useSceneKeys((place) => choose(list[place]?.choice));
  const set = (setting: BoardSetting) => void ask({ kind: 'set-board', setting, on: !room.board[setting] });
  useKeys({ [STILL_KEY.toLowerCase()]: () => set('still') }, keysOn);
  return (
    <section className="scenes" aria-label={scenes.title}>
      <SceneControls room={room} challenge={challenge} />
      <Refused refusal={refusal} />
      <div className="scenes-row">
        <h2>
          {scenes.title}{' '}
          <span className="scenes-key" aria-hidden="true">
            {SCENES_KEY}
          </span>
        </h2>
        <div
          className="scenes-list"
          role="toolbar"
          aria-label={scenes.title}
          aria-keyshortcuts={SCENES_KEY}
          data-open={open}
          ref={row}
          onKeyDown={onKeyDown}
          onBlur={onBlur}
        >
          {list.map(({ scene, choice }, i) => (
            <button
              key={scene ?? 'lesson'}
              type="button"
              aria-pressed={room.board.scene === scene}
              disabled={choice.kind === 'hindered'}
              title={titleOf(scene, choice, scenes)}
              onClick={() => choose(choice)}
            >
              {scene === null ? scenes.lesson : scenes.name(scene)}{' '}
              <span className="scenes-key" aria-hidden="true">
                {i + 1}
              </span>
            </button>
          ))}
        </div>
        <div className="scenes-list">
          {BOARD_SETTINGS.map((setting) => (
            <button
              key={setting}
              type="button"
              aria-pressed={room.board[setting]}
              aria-label={scenes.setting(setting)}
              title={scenes.settingNote(setting)}
              {...(setting === 'still' ? { 'aria-keyshortcuts': STILL_KEY } : {})}
              onClick={() => set(setting)}
            >
              <Icon of={SETTING_ICONS[setting]} size={18} />
              <span className="scenes-setting">{scenes.setting(setting)}</span>
              {setting === 'still' && (
                <span className="scenes-key" aria-hidden="true">
                  {STILL_KEY}
                </span>
              )}
            </button>
          ))}
        </div>
      </div>
    </section>
  );
}

/** Why it can't be chosen, or what it is where its name does not say. */
function titleOf(scene: BoardScene | null, choice: Choice, scenes: Wording['scenes']): string | undefined {
  if (choice.kind === 'hindered') return scenes.hindered(choice.why);
  return scene === null ? scenes.lessonNote : undefined;
}
