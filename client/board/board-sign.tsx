import { Icon, type IconShape } from '../parts/icon.tsx';

interface BoardSignProps {
  readonly icon: IconShape;
  readonly words: string;
}

/** Says quietly at the foot that what is shown may be old. */
export const BoardSign = ({ icon, words }: BoardSignProps) => (
  <p className="board-sign" role="status">
    <Icon of={icon} size="1em" />
    {words}
  </p>
);
