import '../parts/theme.css';
import './tablet.css';
import { createRoot } from 'react-dom/client';
import { connect } from '../link/connect.ts';
import { Announcer } from '../parts/announcer.tsx';
import { followDevice } from '../parts/device-settings.ts';
import { DeviceSettingsDialog } from '../parts/device-settings-dialog.tsx';
import { holdLink, LinkProvider } from '../parts/use-link.tsx';
import { App } from './app.tsx';
import { workOffline } from './offline.ts';

const link = connect({ page: 'tablet' });
workOffline(link);
void followDevice().then(() =>
  createRoot(document.getElementById('root')!).render(
    <Announcer>
      <LinkProvider held={holdLink(link)}>
        <App />
      </LinkProvider>
      <DeviceSettingsDialog />
    </Announcer>,
  ),
);
