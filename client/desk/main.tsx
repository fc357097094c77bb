import '../parts/theme.css';
import './desk.css';
import type { ReactNode } from 'react';
import { createRoot } from 'react-dom/client';
import { connect } from '../link/connect.ts';
import { Announcer } from '../parts/announcer.tsx';
import { eraseWhatIsDue } from '../parts/browser-storage.ts';
import { followDevice } from '../parts/device-settings.ts';
import { DeviceSettingsDialog } from '../parts/device-settings-dialog.tsx';
import { speakFrom } from '../parts/languages.ts';
import { holdLink, LinkProvider } from '../parts/use-link.tsx';
import { Desk } from './desk.tsx';
import { Lobby } from './lobby.tsx';
import { builtInAddress, roomInAddress } from './session.ts';
import { WHOLE } from './whole-words.ts';
import './large.css';
import './narrow.css';
import './print.css';

speakFrom(WHOLE);
const room = roomInAddress();
const built = builtInAddress();

/** What is built is fetched where it is wanted: a lesson does without. */
async function page(): Promise<ReactNode> {
  if (built !== null) {
    const { BuilderPage } = await import('./builder/builder-page.tsx');
    return <BuilderPage id={built} room={room} />;
  }
  if (room === null) return <Lobby />;
  return (
    <LinkProvider held={holdLink(connect({ page: 'desk', room }))}>
      <Desk />
    </LinkProvider>
  );
}

void eraseWhatIsDue(Date.now())
  .then(() => Promise.all([page(), followDevice()]))
  .then(([shown]) =>
    createRoot(document.getElementById('root')!).render(
      <Announcer>
        {shown}
        <DeviceSettingsDialog />
      </Announcer>,
    ),
  );
