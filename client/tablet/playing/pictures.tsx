import type { ReactNode } from 'react';
import type { Play } from '../../../shared/documents/challenge.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { trayRows } from '../../editor/surface/tray-rows.ts';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { Asked, Berth, HandedIn, Pencil, Robot, Sheet } from './pieces.tsx';

/** Three pictures tell a way to play: what there is, what to do, how it ends. */
export type Told = readonly [ReactNode, ReactNode, ReactNode];

const LINE = 'M24 66C50 66 56 30 84 30H138';

function Mark({ kit, x, y }: { readonly kit: Kit; readonly x: number; readonly y: number }) {
  const word = trayRows(kit)[0]?.word ?? '';
  return (
    <g transform={`translate(${x} ${y - 8})`}>
      <MarkPicture kit={kit} word={word} size={15} />
    </g>
  );
}

const tried = (
  <Sheet>
    <path className="how-line" d="M12 40H104" />
    <Robot x={58} y={40} />
    <HandedIn x={130} y={76} />
  </Sheet>
);

const marked = (kit: Kit) => (
  <Sheet>
    <Berth x={30} y={66} />
    <path className="how-line" d={LINE} />
    <Mark kit={kit} x={92} y={30} />
    <Pencil x={112} y={84} />
    <path className="how-ghost" d="M110 80V46" />
  </Sheet>
);

/** A line with a piece missing, ringed as a finding is. */
const broken = (
  <Sheet>
    <Berth x={30} y={55} />
    <path className="how-line" d="M24 55H66M98 55H140" />
    <circle cx="82" cy="55" r="26" className="how-ring" />
  </Sheet>
);

const mended = (
  <Sheet>
    <Berth x={30} y={55} />
    <path className="how-line" d="M24 55H66M98 55H140" />
    <path className="how-ghost" d="M66 55H98" />
    <Pencil x={98} y={52} />
  </Sheet>
);

const drawn = (
  <Sheet>
    <Berth x={30} y={66} />
    <path className="how-line" d="M24 66C50 66 56 46 84 46H106" />
    <Pencil x={107} y={44} />
  </Sheet>
);

const given = (
  <Sheet>
    <Berth x={30} y={66} />
    <path className="how-line" d={LINE} />
    <path className="how-line" d="M84 30C112 30 112 84 138 84" />
  </Sheet>
);

const allGiven = (kit: Kit) => (
  <Sheet>
    <Berth x={30} y={66} />
    <path className="how-line" d={LINE} />
    <Mark kit={kit} x={96} y={30} />
    <path className="how-line" d="M64 44C84 60 100 84 138 84" />
  </Sheet>
);

const foretold = (
  <Sheet>
    <path className="how-line" d="M10 55H84" />
    <Robot x={40} y={55} />
    <path className="how-ghost" d="M84 55C104 55 104 24 128 24M84 55C104 55 104 86 128 86" />
    <Asked x={136} y={55} />
  </Sheet>
);

const answered = (
  <Sheet>
    <path className="how-fine" d="M34 24H92M34 52H92M34 80H92" />
    <circle cx="20" cy="24" r="7" className="how-fine" />
    <circle cx="20" cy="52" r="7" className="how-dot" />
    <circle cx="20" cy="80" r="7" className="how-fine" />
    <HandedIn x={130} y={58} />
  </Sheet>
);

/** The pictures of a way to play, with a mark of the class's own kit. */
export function picturesOf(play: Play, kit: Kit): Told {
  switch (play) {
    case 'draw':
      return [drawn, marked(kit), tried];
    case 'fill-in':
      return [given, marked(kit), tried];
    case 'mend':
      return [broken, mended, tried];
    case 'predict':
      return [allGiven(kit), foretold, answered];
  }
}
