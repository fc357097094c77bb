import { useEffect } from 'react';
import { textIn } from '../../../shared/documents/values.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';
import { NEW_CHALLENGE } from '../../../shared/wording/fresh.ts';
import { Refused } from '../../parts/refusal.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { MakeOwn, OwnActs } from './own-acts.tsx';
import { loadOwn, useOwn } from './own-challenges.ts';

/** The challenges of this desk, before it has a room. */
export function OwnBox() {
  const { own } = useWholeWords().builder;
  const locale = useLocale();
  const { list, refusal } = useOwn();
  useEffect(() => void loadOwn(null), []);
  return (
    <section className="prepare-box" aria-labelledby="own-title">
      <h2 id="own-title">{own.title}</h2>
      <p className="prepare-quiet">{own.note}</p>
      <Refused refusal={refusal} />
      {list === null && refusal === null && <p className="prepare-quiet">{own.loading}</p>}
      {list?.length === 0 && <p className="prepare-quiet">{own.none}</p>}
      {list && list.length > 0 && (
        <ul className="own-list">
          {list.map((challenge) => {
            const title = challenge.title ?? NEW_CHALLENGE.title;
            return (
              <li key={challenge.id}>
                <details>
                  <summary>{textIn(title, locale)}</summary>
                  <OwnActs challenge={challenge} title={title} isOwn room={null} />
                </details>
              </li>
            );
          })}
        </ul>
      )}
      <MakeOwn room={null} kit={DEMO_KIT} />
    </section>
  );
}
