import type { Kit } from '../../shared/documents/kit.ts';
import { withScreenInks } from '../../shared/kit/screen-inks.ts';
import { useDevice } from './device-settings.ts';

/** Each made once, so that pictures of it are not made anew. */
const made = new WeakMap<Kit, Kit>();

/** The kit with the colours that this device shows its inks in. Only for pictures and their words. */
export function useKitOnScreen(kit: Kit): Kit {
  const inks = useDevice((device) => device.inks);
  if (inks === 'kit') return kit;
  const shown = made.get(kit) ?? withScreenInks(kit);
  made.set(kit, shown);
  return shown;
}
