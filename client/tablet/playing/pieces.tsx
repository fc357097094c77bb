import type { ReactNode } from 'react';

/** What the pictures are put together from, in units of their own: a sheet is 160 wide and 110 high. */

export function Sheet({ children }: { readonly children: ReactNode }) {
  return (
    <svg className="how-sheet" viewBox="0 0 160 110" aria-hidden="true" focusable="false">
      <rect x="1" y="1" width="158" height="108" rx="4" className="how-paper" />
      <path
        className="how-grid"
        d="M27 2V108M53 2V108M80 2V108M106 2V108M133 2V108M2 28H158M2 55H158M2 82H158"
      />
      {children}
    </svg>
  );
}

interface PlacedProps {
  readonly x: number;
  readonly y: number;
}

/** Two wheels, a castor, a bar of sensors on an arm; it heads to the right. */
export function Robot({ x, y }: PlacedProps) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <g className="how-robot">
        <path className="how-thick" d="M-12 -15H2M-12 15H2" />
        <rect x="-15" y="-10" width="22" height="20" rx="3" className="how-body" />
        <circle cx="-9" cy="0" r="2.6" className="how-fine" />
        <path className="how-fine" d="M7 0H17" />
        <path className="how-thick" d="M18 -10V10" />
      </g>
    </g>
  );
}

/** A dashed U that is open to the right. */
export const Berth = ({ x, y }: PlacedProps) => (
  <path className="how-berth" d={`M${x} ${y - 13}h-18v26h18`} />
);

/** A pencil whose tip is at the place. */
export const Pencil = ({ x, y }: PlacedProps) => (
  <path
    className="how-body"
    transform={`translate(${x} ${y})`}
    d="M0 0L4 -12L28 -36L36 -28L12 -4ZM4 -12L12 -4M23 -31L31 -23"
  />
);

/** Up and away from the tray: handed in. */
export const HandedIn = ({ x, y }: PlacedProps) => (
  <path
    className="how-away"
    transform={`translate(${x} ${y})`}
    d="M0 8V-22M-10 -12L0 -22L10 -12M-20 2V14H20V2"
  />
);

/** A large question mark. */
export const Asked = ({ x, y }: PlacedProps) => (
  <path
    className="how-away"
    transform={`translate(${x} ${y})`}
    d="M-9 -12a9 9 0 1 1 13 8c-3 2 -4 4 -4 8M0 13v.5"
  />
);
