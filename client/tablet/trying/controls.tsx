import { Pause, Play, RotateCcw } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
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
  const over = useShown(clock, duration, (t) => t >= duration);
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
      <TimeSlider clock={clock} duration={duration} onGo={(at) => set({ at, playing: false })} />
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

interface TimeSliderProps extends Pick<ControlsProps, 'clock' | 'duration'> {
  readonly onGo: (t: Seconds) => void;
}

/** Apart from the buttons: it alone is drawn anew as the robot goes on. */
function TimeSlider({ clock, duration, onGo }: TimeSliderProps) {
  const { trying } = useWords().tablet;
  const t = useShown(clock, duration, theTime);
  return (
    <label className="controls-time">
      <span className="only-read-aloud">{trying.at}</span>
      <input
        type="range"
        min={0}
        max={duration}
        step={0.05}
        value={t}
        aria-valuetext={trying.seconds(t, duration)}
        onChange={(event) => onGo(Number(event.target.value))}
      />
      <output>{trying.seconds(t, duration)}</output>
    </label>
  );
}

const theTime = (t: Seconds): Seconds => t;

/** What is said of the run time, found a few times a second and drawn anew only when it is another. */
export function useShown<T extends number | boolean>(
  clock: ReplayClock,
  duration: Seconds,
  saidOf: (t: Seconds) => T,
): T {
  const [said, setSaid] = useState(() => saidOf(timeOf(clock, performance.now(), duration)));
  const now = useRef(saidOf);
  now.current = saidOf;
  useEffect(() => {
    const show = () => setSaid(now.current(timeOf(clock, performance.now(), duration)));
    show();
    if (!clock.playing) return;
    const timer = setInterval(show, FOLLOW_MS);
    return () => clearInterval(timer);
  }, [clock, duration]);
  return said;
}
