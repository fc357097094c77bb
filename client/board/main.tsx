import '../parts/theme.css';
import './board.css';
import './dark.css';
import { createRoot } from 'react-dom/client';
import { connect } from '../link/connect.ts';
import { Announcer } from '../parts/announcer.tsx';
import { followDevice } from '../parts/device-settings.ts';
import { DeviceSettingsDialog } from '../parts/device-settings-dialog.tsx';
import { holdLink, LinkProvider } from '../parts/use-link.tsx';
import { Board } from './board.tsx';

const room = new URLSearchParams(location.search).get('room');

void followDevice().then(() =>
  createRoot(document.getElementById('root')!).render(
    <Announcer>
      <LinkProvider held={holdLink(connect(room === null ? { page: 'board' } : { page: 'board', room }))}>
        <Board />
      </LinkProvider>
      <DeviceSettingsDialog />
    </Announcer>,
  ),
);
