import { textIn } from '../../../shared/documents/values.ts';
import { LOOKS, leastOf, type SeenDifference } from '../../../shared/kit/colour.ts';
import { COLOURS_APART, PAPER_COLOUR, pairDifferences } from '../../../shared/kit/differences.ts';
import type { ColourPlace } from '../../../shared/kit/kit-problem.ts';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { useEditing } from './fields.tsx';

/** CIEDE2000 of every two colours, for normal and colour-deficient sight; the smallest is named. */
export function DifferenceTable() {
  const { inks: words } = useWholeWords().kit;
  const { kit } = useEditing();
  const nameOf = useNames();
  const pairs = pairDifferences(kit);
  const nearest = leastOf(pairs.map((pair) => ({ ...pair, difference: pair.least.difference })));
  const { difference, sight, convention } = nearest.least;
  return (
    <section className="kit-differences" aria-labelledby="kit-differences">
      <h2 id="kit-differences">{words.table}</h2>
      <p role="status">
        <strong>
          {words.least(nameOf(nearest.one), nameOf(nearest.two), difference, sight, convention)}
        </strong>
      </p>
      <div className="kit-wide">
        <table className="kit-table">
          <thead>
            <tr>
              <th scope="col">{words.pair}</th>
              {LOOKS.map((look) => (
                <th key={`${look.sight} ${look.convention}`} scope="col">
                  {words.sight(look.sight)}
                  {look.sight !== 'normal' && (
                    <span className="desk-quiet"> {words.convention(look.convention)}</span>
                  )}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {pairs.map(({ one, two, seen, least }) => (
              <tr key={`${keyOf(one)} ${keyOf(two)}`}>
                <th scope="row">
                  <Colours places={[one, two]} /> {nameOf(one)}, {nameOf(two)}
                </th>
                {seen.map((each) => (
                  <Difference
                    key={`${each.sight} ${each.convention}`}
                    of={each}
                    isLeast={each === least && least === nearest.least}
                  />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="desk-quiet">{words.how}</p>
    </section>
  );
}

function Difference({ of, isLeast }: { readonly of: SeenDifference; readonly isLeast: boolean }) {
  const { numbers, kit } = useWholeWords();
  const close = of.difference < COLOURS_APART;
  return (
    <td data-close={close} data-least={isLeast}>
      <span className="kit-difference-of" aria-hidden="true">
        {kit.inks.look(of.sight, of.convention)}{' '}
      </span>
      {numbers.fixed(of.difference, 1)}
      {close && <span className="only-read-aloud"> {kit.inks.close}</span>}
    </td>
  );
}

const keyOf = (place: ColourPlace): string => (typeof place === 'string' ? place : place.ink);

function useNames(): (place: ColourPlace) => string {
  const { inks: words } = useWholeWords().kit;
  const { kit } = useEditing();
  const locale = useLocale();
  return (place) => {
    if (typeof place === 'string') return words[place];
    const ink = kit.inks.find(({ id }) => id === place.ink);
    return ink ? textIn(ink.name, locale) : place.ink;
  };
}

function Colours({ places }: { readonly places: readonly ColourPlace[] }) {
  const { kit } = useEditing();
  const colorOf = (place: ColourPlace): string => {
    if (place === 'paper') return PAPER_COLOUR;
    return place === 'line'
      ? kit.line.color
      : (kit.inks.find(({ id }) => id === place.ink)?.color ?? PAPER_COLOUR);
  };
  return (
    <svg className="kit-swatches" viewBox="0 0 34 16" aria-hidden="true" focusable="false">
      {places.map((place, i) => (
        <rect
          key={keyOf(place)}
          x={1 + 16 * i}
          y="1"
          width="14"
          height="14"
          style={{ fill: colorOf(place) }}
        />
      ))}
    </svg>
  );
}
