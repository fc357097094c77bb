import '../parts/theme.css';
import './desk.css';
import { createRoot } from 'react-dom/client';
import { connect } from '../link/connect.ts';
import { Announcer } from '../parts/announcer.tsx';
import { eraseWhatIsDue } from '../parts/browser-storage.ts';
import { followDevice } from '../parts/device-settings.ts';
import { DeviceSettingsDialog } from '../parts/device-settings-dialog.tsx';
import { holdLink, LinkProvider } from '../parts/use-link.tsx';
import { Desk } from './desk.tsx';
import { Lobby } from './lobby.tsx';
import { roomInAddress } from './session.ts';
import './large.css';
import './print.css';

const room = roomInAddress();
const page =
  room === null ? (
    <Lobby />
  ) : (
    <LinkProvider held={holdLink(connect({ page: 'desk', room }))}>
      <Desk />
    </LinkProvider>
  );

void eraseWhatIsDue(Date.now())
  .then(followDevice)
  .then(() =>
    createRoot(document.getElementById('root')!).render(
      <Announcer>
        {page}
        <DeviceSettingsDialog />
      </Announcer>,
    ),
  );
