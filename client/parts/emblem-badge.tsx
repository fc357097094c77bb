import { emblemIcon } from './emblem-icons.ts';
import { Icon } from './icon.tsx';
import { useWords } from './use-words.ts';
import './parts.css';

export interface EmblemBadgeProps {
  readonly emblem: string;
  readonly size?: number | string;
  /** `round`: the picture in a ring, its word only read aloud. */
  readonly look?: 'word' | 'round';
}

/** A team's emblem: the picture, always with its word. */
export function EmblemBadge({ emblem, size = 22, look = 'word' }: EmblemBadgeProps) {
  const name = useWords().emblems.name(emblem);
  if (look === 'word')
    return (
      <span className="emblem">
        <Icon of={emblemIcon(emblem)} size={size} />
        {name}
      </span>
    );
  const ring = typeof size === 'number' ? `${size * 1.6}px` : `calc(${size} * 1.6)`;
  return (
    <span className="emblem-round" style={{ width: ring, height: ring }}>
      <Icon of={emblemIcon(emblem)} size={size} label={name} />
    </span>
  );
}
