import type { ComponentType, SVGProps } from 'react';

/** What lucide's icons and our own emblem drawings have in common. */
export type IconShapeProps = Omit<SVGProps<SVGSVGElement>, 'ref' | 'children'> & {
  readonly size?: number | string;
  readonly strokeWidth?: number | string;
};
export type IconShape = ComponentType<IconShapeProps>;

export interface IconProps {
  readonly of: IconShape;
  /** CSS pixels, or any CSS length. */
  readonly size?: number | string;
  /** Said aloud in the place of the picture; without it the icon is decoration beside a word. */
  readonly label?: string;
}

/** An icon with the stroke of the look. Import the icon from lucide-react by name, so only used ones ship. */
export function Icon({ of: Shape, size = 20, label }: IconProps) {
  return label === undefined ? (
    <Shape size={size} strokeWidth={1.8} aria-hidden="true" focusable="false" />
  ) : (
    <Shape size={size} strokeWidth={1.8} role="img" aria-label={label} focusable="false" />
  );
}
