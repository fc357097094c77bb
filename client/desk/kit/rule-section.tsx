import { useWholeWords } from '../whole-words.ts';
import { KitNumber } from './fields.tsx';
import { RULE_ROWS, type RuleRow } from './numbers.ts';

const GROUPS = Object.keys(RULE_ROWS) as (keyof typeof RULE_ROWS)[];

/** Every drawing rule with its numbers and the reason for them. */
export function RuleSection() {
  const { rules } = useWholeWords().kit;
  return (
    <div className="kit-rules">
      <p>{rules.how}</p>
      {GROUPS.map((group) => (
        <table key={group} className="kit-table">
          <caption>{rules.groups[group]}</caption>
          <thead>
            <tr>
              <th scope="col">{rules.rule}</th>
              <th scope="col">{rules.number}</th>
              <th scope="col">{rules.reason}</th>
            </tr>
          </thead>
          <tbody>
            {RULE_ROWS[group].map((row) => (
              <Rule key={row.rule} row={row} />
            ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}

function Rule({ row: { rule, unit, numbers } }: { readonly row: RuleRow }) {
  const { rules } = useWholeWords().kit;
  const { name, why } = rules.of[rule];
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <div className="kit-rule-numbers">
          {numbers.map(({ part, path }) => (
            <KitNumber
              key={path.join('.')}
              label={part === null ? name : rules.parts[part]}
              labelHidden={part === null}
              unit={unit}
              path={path}
            />
          ))}
        </div>
      </td>
      <td className="kit-why">{why}</td>
    </tr>
  );
}
