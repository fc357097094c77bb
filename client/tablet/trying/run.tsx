import { Activity, TriangleAlert } from 'lucide-react';
import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Trace } from '../../../shared/documents/trace.ts';
import type { Seconds } from '../../../shared/geometry/units.ts';
import type { Study } from '../../../shared/judge/study.ts';
import { durationOf } from '../../../shared/picture/replay.ts';
import { paintForkArms, paintFrayed } from '../../canvas/paint-frayed.ts';
import type { ReplayMoment } from '../../canvas/replay-moments.ts';
import { ReplayView } from '../../canvas/replay-view.tsx';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { SensorBar } from '../../parts/sensor-bar.tsx';
import { useStudy } from '../../parts/studying.ts';
import { useWords } from '../../parts/use-words.ts';
import { Back } from './back.tsx';
import { changed, type ReplayClock, timeOf } from './clock.ts';
import { Controls } from './controls.tsx';
import { type Fork, forksOf } from './forks.ts';
import { type RunProps, Side } from './side.tsx';

const BEGINNING: Omit<ReplayClock, 'since'> = { playing: true, speed: 1, at: 0 };
/** A trouble, and another way, are shown from so much before them on. */
const BEFORE: Seconds = 1.5;

/** Where the run stands that is shown, from its beginning on. */
function useClock(duration: Seconds) {
  const [clock, setClock] = useState<ReplayClock>(() => ({ ...BEGINNING, since: performance.now() }));
  const timeAt = useCallback(() => timeOf(clock, performance.now(), duration), [clock, duration]);
  const set = useCallback(
    (change: Partial<ReplayClock>) => setClock((now) => changed(now, change, performance.now(), duration)),
    [duration],
  );
  return { clock, setClock, timeAt, set };
}

/** The run of a drawing, with all that is known of it. */
export function Run(props: RunProps) {
  const { challenge, design, judged } = props;
  const ways = useMemo(() => [...judged.traces].sort((a, b) => b.probability - a.probability), [judged]);
  const [trace, setTrace] = useState<Trace>(ways[0]!);
  const study = useStudy(challenge, design);
  const duration = durationOf(trace);
  const { clock, setClock, timeAt, set } = useClock(duration);
  const [moment, setMoment] = useState<ReplayMoment | null>(null);
  const onMoment = useCallback((moments: readonly ReplayMoment[]) => setMoment(moments[0] ?? null), []);
  const [withBar, setWithBar] = useState(false);
  const forks = useMemo(() => forksOf(judged.traces, trace), [judged, trace]);
  const over = moment?.over ?? false;
  useEffect(() => {
    if (over) set({ playing: false });
  }, [over, set]);
  const nth = judged.traces.indexOf(trace);
  const trouble = study.troubles?.[nth];
  const show = (at: Seconds) => set({ at: Math.max(0, at - BEFORE), playing: true, speed: 1 });
  // The other way is the same up to the junction: it goes on from there.
  const choose = (other: Trace, since: Seconds) => {
    setTrace(other);
    show(since);
  };
  return (
    <>
      <div className="trying-sheet">
        <Sheet {...{ challenge, design, study, trace, forks, timeAt, onMoment }} />
      </div>
      <Side
        {...props}
        {...{ study, ways, trace, forks, moment, clock, duration, trouble }}
        sensors={
          withBar && study.bars ? (
            <SensorBar kit={challenge.kit} bar={study.bars[nth]!} timeAt={timeAt} />
          ) : null
        }
        onTrouble={trouble ? () => show(trouble.t) : null}
        onGo={(at) => set({ at, playing: false })}
        onWay={choose}
      />
      <div className="trying-foot">
        <Back onBack={props.onBack} words={props.back} />
        <Controls clock={clock} duration={duration} onClock={setClock} />
        <Extras
          withBar={withBar}
          onBar={() => setWithBar(!withBar)}
          onTrouble={trouble ? () => show(trouble.t) : null}
        />
      </div>
    </>
  );
}

interface SheetProps extends Pick<RunProps, 'challenge' | 'design'> {
  readonly study: Partial<Study>;
  readonly trace: Trace;
  readonly forks: readonly Fork[];
  readonly timeAt: () => Seconds;
  readonly onMoment: (moments: readonly ReplayMoment[]) => void;
}

/** The robot over the drawing, frayed where others left it, with the ways of each junction left to luck. */
function Sheet({ challenge, design, study, trace, forks, timeAt, onMoment }: SheetProps) {
  const { tablet, foretelling } = useWords();
  const { trying } = tablet;
  const traces = useMemo(() => [trace], [trace]);
  const width = challenge.kit.rules.lineWidth.nominal;
  const frayed = useMemo(
    () => (study.frayed ? paintFrayed(study.frayed.stretches, study.frayed.of, width) : null),
    [study.frayed, width],
  );
  const arms = useMemo(() => {
    const all = forks.flatMap(({ at, took, ways }) =>
      ways.map(({ way, chance, heading }) => ({
        at,
        heading,
        chosen: way === took,
        text: foretelling.chance(chance),
      })),
    );
    return all.length > 0 ? paintForkArms(all) : null;
  }, [forks, foretelling]);
  return (
    <ReplayView
      challenge={challenge}
      drawing={design.drawing}
      traces={traces}
      timeAt={timeAt}
      onMoment={onMoment}
      under={frayed}
      over={arms}
      label={trying.robot(trying.title)}
    />
  );
}

interface ExtrasProps {
  readonly withBar: boolean;
  readonly onBar: () => void;
  readonly onTrouble: (() => void) | null;
}

/** What is there on demand: the sensors, and the place where it goes wrong. */
function Extras({ withBar, onBar, onTrouble }: ExtrasProps) {
  const { foretelling } = useWords();
  return (
    <div className="trying-extras">
      <Button icon={<Icon of={Activity} size={22} />} aria-pressed={withBar} onClick={onBar}>
        {foretelling.bar}
      </Button>
      {onTrouble && (
        <Button icon={<Icon of={TriangleAlert} size={22} />} onClick={onTrouble}>
          {foretelling.trouble}
        </Button>
      )}
    </div>
  );
}
