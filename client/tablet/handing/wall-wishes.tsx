import { type Team, WALL_WISHES } from '../../../shared/room/state.ts';
import { Refused } from '../../parts/refusal.tsx';
import { useAsk } from '../../parts/use-ask.ts';
import { useWords } from '../../parts/use-words.ts';

/** Whether a team's drawings may be on the wall, and whether with its emblem. It may change its mind at any time. */
export function WallWishes({ team }: { readonly team: Team }) {
  const { together } = useWords();
  const { ask, refusal } = useAsk();
  return (
    <section className="wall-wishes">
      <h3 id="wall-wishes">{together.wall}</h3>
      <div role="radiogroup" aria-labelledby="wall-wishes">
        {WALL_WISHES.map((wish) => (
          <label key={wish} className="choice" data-chosen={team.wall === wish}>
            <input
              type="radio"
              name="wall"
              className="tool-input"
              checked={team.wall === wish}
              onChange={() => void ask({ kind: 'wish-wall', wish })}
            />
            {together.wish(wish)}
          </label>
        ))}
      </div>
      <Refused refusal={refusal} />
    </section>
  );
}
