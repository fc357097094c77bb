import type { Kit } from '../../../shared/documents/kit.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { HEEDED_CAUTIONS, suppliesFor, USUAL_TEAMS } from '../../../shared/prep/supplies.ts';
import { ROOM_LIMITS } from '../../../shared/room/decision.ts';
import type { RoomState } from '../../../shared/room/state.ts';
import { useDevice } from '../../parts/device-settings.ts';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { SavePrint } from './save-print.tsx';
import { WholeNumber } from './whole-number.tsx';
import { useWishes } from './wishes.ts';
import './before.css';

export interface SuppliesProps {
  readonly room: RoomState | null;
  /** null: until it is here, the demo kit’s line and inks. */
  readonly kit: Kit | null;
}

/** What the tables need, counted for the class. */
export function Supplies({ room, kit }: SuppliesProps) {
  const { supplies: words, safety, numbers } = useWholeWords();
  const locale = useLocale();
  const { language, units } = useDevice();
  const wished = useWishes((wishes) => wishes.teams);
  const teams = wished ?? (room?.teams.length || USUAL_TEAMS);
  const { rules, inks } = kit ?? DEMO_KIT;
  const of = {
    line: numbers.length(rules.lineWidth.nominal),
    inks: inks.map(({ name }) => textIn(name, locale)),
  };
  return (
    <section className="before" aria-labelledby="supplies-title">
      <h2 id="supplies-title">{words.title}</h2>
      <div className="before-form">
        <WholeNumber
          key={room?.teams.length}
          label={words.teams}
          value={teams}
          least={1}
          most={ROOM_LIMITS.teams}
          onChange={(typed) => useWishes.setState({ teams: typed })}
        />
        <SavePrint
          wanted={{
            kind: 'supplies',
            language,
            units,
            teams: String(teams),
            ...(room && { room: room.word }),
          }}
          label={words.save}
        />
      </div>
      <p className="desk-quiet">{words.how}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.countHead}</th>
            <th scope="col">{words.whatHead}</th>
          </tr>
        </thead>
        <tbody>
          {suppliesFor(teams).map(({ supply, count, spare }) => (
            <tr key={supply}>
              <td className="before-number">{count}</td>
              <td>
                <span>
                  <strong>{words.what(supply, of)}</strong>
                  {spare > 0 && ` (${words.spare(spare)})`}
                </span>
                <span className="desk-quiet">{words.note(supply)}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{words.careful}</h3>
      <ul className="before-cautions">
        {safety.groups
          .filter(({ key }) => HEEDED_CAUTIONS.includes(key))
          .flatMap(({ cautions }) => cautions)
          .map(({ text, by }) => (
            <li key={text}>
              {text} <span className="cautions-by">{by}</span>
            </li>
          ))}
      </ul>
      <p className="cautions-first">{safety.first}</p>
    </section>
  );
}
