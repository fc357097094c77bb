/** How drawings hang: so many beside each other, and how wide each sheet is, in the units of the place. */
export interface Hanging {
  readonly columns: number;
  readonly width: number;
}

export interface HangingPlace {
  readonly width: number;
  readonly height: number;
  /** Between sheets, and what a sheet's words take under it. */
  readonly gap: number;
  readonly words: number;
}

/** The number of columns in which `count` sheets of this width over height are largest. */
export function hangingOf(count: number, ratio: number, place: HangingPlace): Hanging {
  let best: Hanging = { columns: 1, width: 0 };
  for (let columns = 1; columns <= Math.max(1, count); columns++) {
    const rows = Math.ceil(count / columns);
    const across = (place.width - (columns - 1) * place.gap) / columns;
    const up = (place.height - (rows - 1) * place.gap) / rows - place.words;
    const width = Math.max(0, Math.min(across, up * ratio));
    if (width > best.width) best = { columns, width };
  }
  return best;
}
