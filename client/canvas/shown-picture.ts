import { type PictureSource, pictureOf } from '../../shared/picture/picture.ts';
import type { Picture } from '../../shared/picture/shapes.ts';
import type { View } from './view.ts';

/**
 * What a sheet shows with a drawing that stays as it is: names of areas, `textSize` CSS pixels high, keep off
 * its lines and, where they find room, out of the way of the robot that drives on them.
 */
export const shownPicture = (
  source: Omit<PictureSource, 'still' | 'names'>,
  textSize: number,
  view: View | null,
): Picture =>
  pictureOf({
    ...source,
    still: true,
    names: view ? { row: textSize / view.scale, driven: source.kit.robot.width / 2 } : undefined,
  });
