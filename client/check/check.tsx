import { RefreshCw } from 'lucide-react';
import { useCallback, useEffect, useState } from 'react';
import { type CheckReport, ROUTES } from '../../shared/wire/protocol.ts';
import { useAnnounce } from '../parts/announcer.tsx';
import { Button } from '../parts/button.tsx';
import { DeviceSettingsButton } from '../parts/device-settings-dialog.tsx';
import { postJson } from '../parts/http.ts';
import { Icon } from '../parts/icon.tsx';
import { Notice } from '../parts/notice.tsx';
import { useWords } from '../parts/use-words.ts';
import { measure } from './measure.ts';

type Stand =
  | { readonly kind: 'measuring'; readonly done: number }
  | { readonly kind: 'measured'; readonly report: CheckReport; readonly told: boolean }
  | { readonly kind: 'gone' };

/** Opened on one tablet before the lesson: does it get through to the laptop, and how fast? */
export function CheckPage() {
  const { check } = useWords();
  const announce = useAnnounce();
  const [stand, setStand] = useState<Stand>({ kind: 'measuring', done: 0 });
  const run = useCallback(async () => {
    setStand({ kind: 'measuring', done: 0 });
    try {
      const report = await measure((done) => setStand({ kind: 'measuring', done }));
      const told = (await postJson(ROUTES.check, report)).ok;
      setStand({ kind: 'measured', report, told });
      announce(check.verdict(report).title);
    } catch {
      setStand({ kind: 'gone' });
    }
  }, [announce, check]);
  useEffect(() => void run(), [run]);
  return (
    <main className="check">
      <div className="check-card">
        <img src="/mark.svg" alt="" width="72" height="72" />
        <h1>{check.title}</h1>
        <Found stand={stand} />
        <DeviceSettingsButton className="device-corner" />
        {stand.kind !== 'measuring' && (
          <Button icon={<Icon of={RefreshCw} />} onClick={() => void run()}>
            {check.again}
          </Button>
        )}
      </div>
    </main>
  );
}

function Found({ stand }: { readonly stand: Stand }) {
  const { check } = useWords();
  if (stand.kind === 'gone')
    return (
      <Notice tone="stops" role="alert" title={check.gone.title}>
        {check.gone.text}
      </Notice>
    );
  if (stand.kind === 'measuring')
    return (
      <>
        <p>{check.measuring}</p>
        <progress value={stand.done} aria-label={check.measuring} />
      </>
    );
  const { title, text, tone } = check.verdict(stand.report);
  return (
    <>
      <Notice tone={tone} title={title}>
        {text}
      </Notice>
      <dl className="check-figures">
        {check.figures(stand.report).map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {stand.told && <p className="check-quiet">{check.told}</p>}
    </>
  );
}
