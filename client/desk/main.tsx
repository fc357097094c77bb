import '../parts/theme.css';
import { createRoot } from 'react-dom/client';

createRoot(document.getElementById('root')!).render(<h1>Harbour Lines</h1>);
