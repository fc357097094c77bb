import { useStageLook } from '../parts/stage-clock.ts';
import { type Staged, stageDuration } from '../parts/use-stage.ts';
import { useStageSet } from './stage-set.ts';
import { useWholeWords } from './whole-words.ts';

/** The ways that the robot can go by itself, each with its chance; the board shows the one that is chosen. */
export function StageWays({ staged }: { readonly staged: Staged }) {
  const { stage } = useWholeWords();
  const { ways } = useStageLook();
  const { setLook } = useStageSet(stageDuration([staged]));
  const { judged, traces, entry } = staged;
  const several = judged.traces.flatMap((trace, run) => (trace.probability < 1 ? [{ trace, run }] : []));
  if (several.length < 2) return null;
  const startOf = (run: number) => judged.traces[run]?.start;
  const choose = (run: number) => {
    const others = ways.filter((way) => way.entry !== entry.id || startOf(way.run) !== startOf(run));
    setLook({ ways: [...others, { entry: entry.id, run }] }, { at: 0 });
  };
  return (
    <fieldset className="stage-ways" aria-label={stage.controls.ways}>
      {several.map(({ trace, run }, i) => (
        <button key={run} type="button" aria-pressed={traces.includes(trace)} onClick={() => choose(run)}>
          {stage.controls.way(i + 1, trace.probability)}
        </button>
      ))}
    </fieldset>
  );
}
