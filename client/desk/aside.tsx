import type { ReactNode } from 'react';

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
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <div className="desk-aside-scroll" tabIndex={0}>
        {children}
      </div>
      {foot}
    </aside>
  );
}
