import '../parts/theme.css';
import './check.css';
import { createRoot } from 'react-dom/client';
import { Announcer } from '../parts/announcer.tsx';
import { followDevice } from '../parts/device-settings.ts';
import { DeviceSettingsDialog } from '../parts/device-settings-dialog.tsx';
import { CheckPage } from './check.tsx';

void followDevice().then(() =>
  createRoot(document.getElementById('root')!).render(
    <Announcer>
      <CheckPage />
      <DeviceSettingsDialog />
    </Announcer>,
  ),
);
