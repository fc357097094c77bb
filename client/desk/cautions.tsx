import { OctagonAlert, Printer } from 'lucide-react';
import type { CautionGroup } from '../../shared/wording/en/safety.ts';
import { Button } from '../parts/button.tsx';
import { Icon } from '../parts/icon.tsx';
import { useWholeWords } from './whole-words.ts';
import './cautions.css';

/** What to heed before robots are charged and handed out. Prints alone on one page. */
export function Cautions() {
  const { safety } = useWholeWords();
  return (
    <section className="cautions" aria-labelledby="cautions-title">
      <header className="cautions-head">
        <h2 id="cautions-title">{safety.title}</h2>
        <Button look="quiet" icon={<Icon of={Printer} />} onClick={() => window.print()}>
          {safety.print}
        </Button>
      </header>
      <p className="cautions-first">{safety.first}</p>
      <div className="cautions-stop">
        <Icon of={OctagonAlert} size={26} />
        <div>
          <strong>{safety.stop.title}</strong>
          <ul className="cautions-signs">
            {safety.stop.signs.map((sign) => (
              <li key={sign}>{sign}</li>
            ))}
          </ul>
          <p>{safety.stop.whatThen}</p>
          <p className="cautions-by">{safety.stop.by}</p>
        </div>
      </div>
      <div className="cautions-groups">
        {safety.groups.map((group) => (
          <Group key={group.key} group={group} />
        ))}
      </div>
      <p className="cautions-by">{safety.sources}</p>
    </section>
  );
}

function Group({ group }: { readonly group: CautionGroup }) {
  return (
    <section className="cautions-group" data-group={group.key}>
      <h3>{group.title}</h3>
      <ul>
        {group.cautions.map((caution) => (
          <li key={caution.text}>
            {caution.text} <span className="cautions-by">{caution.by}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
