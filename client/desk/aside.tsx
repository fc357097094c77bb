import type { ReactNode } from 'react';
import { REACHED_BY_KEYS } from '../parts/scrolls.ts';

export interface AsideProps {
  readonly label: string;
  /** Stays at the bottom while the rest scrolls. */
  readonly foot?: ReactNode;
  readonly children: ReactNode;
}

/** What is chosen, in full, at the right. It scrolls by keys too, so it takes the focus. */
export function Aside({ label, foot, children }: AsideProps) {
  return (
    <aside className="desk-aside" aria-label={label}>
      <div className="desk-aside-scroll" {...REACHED_BY_KEYS}>
        {children}
      </div>
      {foot}
    </aside>
  );
}
