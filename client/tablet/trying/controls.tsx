import { Pause, Play, RotateCcw } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Seconds } from '../../../shared/geometry/units.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useWords } from '../../parts/use-words.ts';
import { changed, type ReplayClock, SPEEDS, timeOf } from './clock.ts';

export interface ControlsProps {
  readonly clock: ReplayClock;
  readonly duration: Seconds;
  readonly onClock: (clock: ReplayClock) => void;
}

/** How often the slider follows the robot, ms. */
const FOLLOW_MS = 100;

/** Play, pause, speed, and a slider through the run. */
export function Controls({ clock, duration, onClock }: ControlsProps) {
  const { trying } = useWords().tablet;
  const t = useShownTime(clock, duration);
  const over = t >= duration;
  const set = (change: Partial<ReplayClock>) => onClock(changed(clock, change, performance.now(), duration));
  const playing = clock.playing && !over;
  return (
    <div className="controls">
      <Button
        look="primary"
        className="controls-play"
        icon={<Icon of={playing ? Pause : over ? RotateCcw : Play} size={26} />}
        onClick={() => (over ? set({ at: 0, playing: true }) : set({ playing: !playing }))}
      >
        {playing ? trying.pause : over ? trying.restart : trying.play}
      </Button>
      <label className="controls-time">
        <span className="only-read-aloud">{trying.at}</span>
        <input
          type="range"
          min={0}
          max={duration}
          step={0.05}
          value={t}
          aria-valuetext={trying.seconds(t, duration)}
          onChange={(event) => set({ at: Number(event.target.value), playing: false })}
        />
        <output>{trying.seconds(t, duration)}</output>
      </label>
      <div className="controls-speed" role="radiogroup" aria-label={trying.speed}>
        {SPEEDS.map((speed) => (
          <label key={speed} className="choice" data-chosen={clock.speed === speed}>
            <input
              type="radio"
              name="speed"
              className="tool-input"
              checked={clock.speed === speed}
              onChange={() => set({ speed })}
            />
            {trying.times(speed)}
          </label>
        ))}
      </div>
    </div>
  );
}

/** Run time a few times a second, for what is said about it. */
export function useShownTime(clock: ReplayClock, duration: Seconds): Seconds {
  const [t, setT] = useState(() => timeOf(clock, performance.now(), duration));
  useEffect(() => {
    const show = () => setT(timeOf(clock, performance.now(), duration));
    show();
    if (!clock.playing) return;
    const timer = setInterval(show, FOLLOW_MS);
    return () => clearInterval(timer);
  }, [clock, duration]);
  return t;
}
