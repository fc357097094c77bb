import { type ReactNode, useMemo } from 'react';
import { LinkProvider, stillLink, useHeldLink, useLinkState } from '../parts/use-link.tsx';

/** While the desk wants a still picture, what is inside sees the room and the time as they were then. */
export function StillPicture({ children }: { readonly children: ReactNode }) {
  const held = useHeldLink();
  const still = useLinkState(({ room }) => room?.board.still ?? false);
  const shown = useMemo(() => (still ? stillLink(held.link) : held), [still, held]);
  return <LinkProvider held={shown}>{children}</LinkProvider>;
}
