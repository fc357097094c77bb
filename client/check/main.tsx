import '../parts/theme.css';
import './check.css';
import { createRoot } from 'react-dom/client';
import { Announcer } from '../parts/announcer.tsx';
import { CheckPage } from './check.tsx';

createRoot(document.getElementById('root')!).render(
  <Announcer>
    <CheckPage />
  </Announcer>,
);
