import {
  Activity,
  CircleHelp,
  Image,
  Layers,
  Pause,
  Play,
  Repeat,
  RotateCcw,
  StepBack,
  StepForward,
  X,
} from 'lucide-react';
import { useMemo, useState } from 'react';
import { STAGE_SPEEDS, type StageLoop } from '../../shared/wire/stage.ts';
import { Button } from '../parts/button.tsx';
import { Icon, type IconShape } from '../parts/icon.tsx';
import { readingAfter, readingBefore, readingTimes, stretchAt } from '../parts/stage-clock.ts';
import { useAsk } from '../parts/use-ask.ts';
import { canLieOnTop, type Staged, stageDuration } from '../parts/use-stage.ts';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { type StageSet, useStageSet } from './stage-set.ts';
import { WhatIfForm } from './what-if-form.tsx';
import { useWholeWords } from './whole-words.ts';
import './stage-controls.css';

interface ControlsProps {
  readonly stage: readonly Staged[];
  readonly clock: StageSet;
}

/** The clock that board and desk follow, and how the board shows the stage. */
export function StageControls({ stage }: Pick<ControlsProps, 'stage'>) {
  const clock = useStageSet(stageDuration(stage));
  const [asking, setAsking] = useState(false);
  return (
    <div className="stage-controls">
      <Transport stage={stage} clock={clock} />
      {clock.clock.loop && <LoopEnds clock={clock} />}
      <Looks stage={stage} clock={clock} asking={asking} onAsk={() => setAsking(!asking)} />
      {(asking || clock.look.whatIf) && <WhatIfForm stage={stage} clock={clock} />}
    </div>
  );
}

/** Play, steps from reading to reading, and the slider. */
function Transport({ stage, clock }: ControlsProps) {
  const { desk, stage: words } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const { ask } = useAsk();
  const { at, duration, playing, ended, set } = clock;
  const times = useMemo(() => readingTimes(stage.flatMap(({ traces }) => traces)), [stage]);
  const toggle = () => set(playing ? { playing: false } : { playing: true, ...(ended ? { at: 0 } : {}) });
  const stand = (there: number) => set({ at: Math.min(duration, Math.max(0, there)), playing: false });
  const before = () => stand(readingBefore(times, at));
  const after = () => stand(readingAfter(times, at, duration));
  const slower = () => {
    const next = STAGE_SPEEDS.indexOf(clock.clock.speed) + 1;
    set({ speed: STAGE_SPEEDS[next % STAGE_SPEEDS.length]! });
  };
  const jump = (by: number) => set({ at: Math.min(duration, Math.max(0, at + by)) });
  useKeys({ p: toggle, ',': () => jump(-1), '.': () => jump(1), v: slower, j: before, k: after }, keysOn);
  return (
    <div className="stage-row">
      <Button
        className="stage-play"
        icon={<Icon of={playing ? Pause : Play} />}
        shortcut="P"
        onClick={toggle}
      >
        {playing ? desk.showing.pause : desk.showing.play}
      </Button>
      <Small of={RotateCcw} name={desk.showing.again} onClick={() => set({ at: 0 })} />
      <Small of={StepBack} name={words.controls.before} onClick={before} />
      <Small of={StepForward} name={words.controls.after} onClick={after} />
      <input
        type="range"
        className="stage-scrub"
        min={0}
        max={Math.max(duration, 0.1)}
        step={0.1}
        value={at}
        aria-label={desk.showing.scrub}
        aria-valuetext={desk.showing.at(at, duration)}
        onChange={(event) => set({ at: Number(event.target.value) })}
      />
      <span className="stage-at">{desk.showing.at(at, duration)}</span>
      <Small of={X} name={desk.showing.clear} onClick={() => void ask({ kind: 'stage', entries: [] })} />
    </div>
  );
}

interface SmallProps {
  readonly of: IconShape;
  readonly name: string;
  readonly onClick: () => void;
}

const Small = ({ of, name, onClick }: SmallProps) => (
  <Button look="quiet" icon={<Icon of={of} />} aria-label={name} title={name} onClick={onClick} />
);

/** A stretch is no shorter than this, s. */
const LEAST = 0.2;

/** Where the stretch begins and ends that is shown again and again. */
function LoopEnds({ clock: { clock, duration, set } }: Pick<ControlsProps, 'clock'>) {
  const { desk, stage } = useWholeWords();
  const { loop } = clock;
  if (!loop) return null;
  const end = (name: string, value: number, moved: (at: number) => StageLoop) => (
    <label className="stage-loop-end">
      <span>{name}</span>
      <input
        type="range"
        min={0}
        max={duration}
        step={0.1}
        value={value}
        aria-valuetext={desk.showing.at(value, duration)}
        onChange={(event) => {
          const next = moved(Number(event.target.value));
          set({ loop: next, at: next.from });
        }}
      />
    </label>
  );
  return (
    <div className="stage-row">
      {end(stage.controls.loopFrom, loop.from, (at) => ({ ...loop, from: Math.min(at, loop.to - LEAST) }))}
      {end(stage.controls.loopTo, loop.to, (at) => ({ ...loop, to: Math.max(at, loop.from + LEAST) }))}
    </div>
  );
}

interface LooksProps extends ControlsProps {
  readonly asking: boolean;
  readonly onAsk: () => void;
}

/** Speed, and what the board shows besides. */
function Looks({ stage, clock, asking, onAsk }: LooksProps) {
  const { desk, stage: words } = useWholeWords();
  const keysOn = useDesk((state) => state.keysOn);
  const { look, setLook, set, at, duration } = clock;
  const times = useMemo(() => readingTimes(stage.flatMap(({ traces }) => traces)), [stage]);
  const alone = stage.length === 1;
  const flat = stage.length > 1 && canLieOnTop(stage);
  const sensors = () => setLook({ sensors: !look.sensors });
  const whole = () => setLook({ whole: !look.whole });
  const onTop = () => setLook({ onTop: !look.onTop });
  const loop = () => set({ loop: clock.clock.loop ? undefined : stretchAt(times, at, duration) });
  useKeys(
    { r: loop, e: alone ? sensors : undefined, i: whole, w: onAsk, f: flat ? onTop : undefined },
    keysOn,
  );
  const speed = clock.clock.speed;
  return (
    <div className="stage-row stage-looks">
      <fieldset className="stage-speeds" aria-label={desk.showing.speedWord}>
        {STAGE_SPEEDS.map((each) => (
          <button key={each} type="button" aria-pressed={speed === each} onClick={() => set({ speed: each })}>
            {words.speed(each)}
          </button>
        ))}
      </fieldset>
      <Toggle of={Repeat} name={words.controls.loop} on={clock.clock.loop !== undefined} onClick={loop} />
      {alone && <Toggle of={Activity} name={words.controls.sensors} on={look.sensors} onClick={sensors} />}
      <Toggle of={Image} name={words.controls.whole} on={look.whole} onClick={whole} />
      {!alone && (
        <Toggle
          of={Layers}
          name={words.controls.onTop}
          on={look.onTop && flat}
          onClick={onTop}
          {...(flat ? {} : { why: words.controls.notOnTop })}
        />
      )}
      <Toggle
        of={CircleHelp}
        name={words.controls.whatIf}
        on={asking || look.whatIf !== null}
        onClick={onAsk}
      />
    </div>
  );
}

interface ToggleProps extends SmallProps {
  readonly on: boolean;
  /** Why it can't be chosen. */
  readonly why?: string;
}

const Toggle = ({ of, name, on, why, onClick }: ToggleProps) => (
  <Button
    icon={<Icon of={of} />}
    aria-pressed={on}
    disabled={why !== undefined}
    title={why}
    onClick={onClick}
  >
    {name}
  </Button>
);
