import type { ReactNode } from 'react';
import type { IconShape, IconShapeProps } from './icon.tsx';

type DrawingProps = IconShapeProps & { readonly shape: ReactNode };

function Drawing({ shape, size = 24, strokeWidth = 1.8, ...rest }: DrawingProps) {
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: Icon names it or hides it, as with the library's icons
    <svg
      width={size}
      height={size}
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth={strokeWidth}
      strokeLinecap="round"
      strokeLinejoin="round"
      {...rest}
    >
      {shape}
    </svg>
  );
}

/** Emblems that the icon library lacks, on its grid of 24 units. */
const SHAPES = {
  kite: (
    <>
      <path d="M14 2 21 9l-10 6-3-6z" />
      <path d="M21 9 8 9M14 2l-3 13" />
      <path d="M11 15c-1 2-3 1-4 3s-3 1-4 4" />
    </>
  ),
  lantern: (
    <>
      <path d="M9 6a3 3 0 0 1 6 0" />
      <path d="M7 9 8.5 6h7L17 9z" />
      <path d="M8 9v9M16 9v9" />
      <path d="M6.5 18h11v3h-11z" />
      <path d="M12 16.2c-1.5-.7-1.7-2.2 0-4.2 1.7 2 1.5 3.5 0 4.200z" />
    </>
  ),
  candle: (
    <>
      <path d="M12 8c-1.7-.8-2-2.8 0-5.5 2 2.7 1.7 4.7 0 5.500z" />
      <path d="M12 8v2.5" />
      <path d="M9 10.500h6V19H9z" />
      <path d="M5 19h14l-1.5 2.500h-11z" />
    </>
  ),
  ladder: <path d="M8 2v20M16 2v20M8 6h8M8 10.500h8M8 15h8M8 19.500h8" />,
  bucket: (
    <>
      <path d="M4.5 9 7 21h10l2.5-12" />
      <ellipse cx="12" cy="9" rx="7.5" ry="2.2" />
      <path d="M4.5 9a7.5 7 0 0 1 15 0" />
    </>
  ),
  teapot: (
    <>
      <path d="M6.5 10h11v5a5 5 0 0 1-5 5h-1a5 5 0 0 1-5-5z" />
      <path d="M8.5 10a3.5 3 0 0 1 7 0M12 7V5.5" />
      <path d="M6.5 16.500C4 16 4 12.5 2 11.5" />
      <path d="M17.5 11.500h1.500a2.5 2.5 0 0 1 0 5h-1.7" />
    </>
  ),
} as const;

export const Kite: IconShape = (props) => <Drawing {...props} shape={SHAPES.kite} />;
export const Lantern: IconShape = (props) => <Drawing {...props} shape={SHAPES.lantern} />;
export const Candle: IconShape = (props) => <Drawing {...props} shape={SHAPES.candle} />;
export const Ladder: IconShape = (props) => <Drawing {...props} shape={SHAPES.ladder} />;
export const Bucket: IconShape = (props) => <Drawing {...props} shape={SHAPES.bucket} />;
export const Teapot: IconShape = (props) => <Drawing {...props} shape={SHAPES.teapot} />;
