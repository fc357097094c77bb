import { Trash2 } from 'lucide-react';
import type { Area, Berth, MarkBox, Sheet } from '../../../shared/documents/sheet.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { LengthField, NumberField, TextField, Tick } from './inputs.tsx';
import {
  CORNERS,
  cornersOf,
  LEAST_BOX,
  type PlaceRef,
  placeIn,
  withCorners,
  withMoreCorners,
  withPlace,
} from './places.ts';

/** The longest name of a place that the board has room for. */
const LONGEST_NAME = 24;

export interface PlaceFormProps {
  readonly sheet: Sheet;
  readonly place: PlaceRef;
  readonly onChange: (sheet: Sheet, what: string) => void;
  readonly onDone: () => void;
  readonly onRemove: () => void;
}

/** One place in numbers, with its name. */
export function PlaceForm({ sheet, place, onChange, onDone, onRemove }: PlaceFormProps) {
  const { places } = useWholeWords().builder;
  const locale = useLocale();
  const found = placeIn(sheet, place)!;
  const put = (now: typeof found, what: string) =>
    onChange(withPlace(sheet, place, now), `${place.kind} ${place.id} ${what}`);
  const corners = cornersOf(found);
  const move = (corner: number, to: PaperPoint) =>
    put(
      withCorners(
        found,
        corners.map((p, i) => (i === corner ? to : p)),
      ),
      `corner ${corner}`,
    );
  const isBox = 'w' in found;
  // A box is told by its top left corner and its size.
  const most = isBox ? { x: sheet.w - found.w, y: sheet.h - found.h } : { x: sheet.w, y: sheet.h };
  const numbered = corners.slice(0, isBox ? 1 : corners.length).map((at, corner) => ({ at, corner }));
  return (
    <div className="builder-place-form">
      <TextField
        label={places.name}
        value={textIn(found.name, locale)}
        most={LONGEST_NAME}
        onChange={(name) => put({ ...found, name: { en: name } }, 'name')}
        onDone={onDone}
      />
      {numbered.map(({ at, corner }) => (
        <div key={corner} className="formula-fields">
          <LengthField
            label={places.across(place.kind, corner + 1)}
            value={at.x}
            most={most.x}
            onChange={(x = at.x) => move(corner, { ...at, x })}
          />
          <LengthField
            label={places.down(place.kind, corner + 1)}
            value={at.y}
            most={most.y}
            onChange={(y = at.y) => move(corner, { ...at, y })}
          />
        </div>
      ))}
      {isBox && <BoxFields box={found} sheet={sheet} onChange={put} />}
      {'heading' in found && <BerthFields berth={found} isStart={place.kind === 'start'} onChange={put} />}
      {'polygon' in found && <CornerButtons area={found} onChange={(now) => put(now, 'corners')} />}
      {place.kind !== 'start' && (
        <Button icon={<Icon of={Trash2} />} onClick={onRemove}>
          {places.remove}
        </Button>
      )}
    </div>
  );
}

interface BoxFieldsProps {
  readonly box: MarkBox;
  readonly sheet: Sheet;
  readonly onChange: (box: MarkBox, what: string) => void;
}

function BoxFields({ box, sheet, onChange }: BoxFieldsProps) {
  const { places } = useWholeWords().builder;
  return (
    <>
      <div className="formula-fields">
        <LengthField
          label={places.boxWidth}
          value={box.w}
          least={LEAST_BOX}
          most={sheet.w - box.at.x}
          onChange={(w = box.w) => onChange({ ...box, w }, 'w')}
        />
        <LengthField
          label={places.boxHeight}
          value={box.h}
          least={LEAST_BOX}
          most={sheet.h - box.at.y}
          onChange={(h = box.h) => onChange({ ...box, h }, 'h')}
        />
      </div>
      <p className="desk-quiet">{places.boxes}</p>
    </>
  );
}

const DEGREES = 180 / Math.PI;

interface BerthFieldsProps {
  readonly berth: Berth;
  readonly isStart: boolean;
  readonly onChange: (berth: Berth, what: string) => void;
}

function BerthFields({ berth, isStart, onChange }: BerthFieldsProps) {
  const { places } = useWholeWords().builder;
  const { startOnly = false, ...rest } = berth;
  return (
    <>
      <div className="formula-fields">
        <NumberField
          label={places.heading}
          value={Math.round(berth.heading * DEGREES)}
          least={-180}
          most={180}
          step={5}
          unit="°"
          onChange={(degrees) =>
            degrees !== undefined &&
            onChange({ ...berth, heading: (Math.round(degrees) * Math.PI) / 180 }, 'heading')
          }
        />
        <LengthField
          label={places.reach}
          value={berth.r}
          least={5}
          most={100}
          onChange={(r = berth.r) => onChange({ ...berth, r }, 'r')}
        />
      </div>
      {isStart && (
        <Tick
          label={places.startOnly}
          checked={startOnly}
          onChange={(on) => onChange(on ? { ...rest, startOnly: true } : rest, 'start only')}
        />
      )}
    </>
  );
}

interface CornerButtonsProps {
  readonly area: Area;
  readonly onChange: (area: Area) => void;
}

function CornerButtons({ area, onChange }: CornerButtonsProps) {
  const { places } = useWholeWords().builder;
  const { length } = area.polygon;
  return (
    <div className="formula-fields">
      <Button disabled={length >= CORNERS.most} onClick={() => onChange(withMoreCorners(area))}>
        {places.moreCorners}
      </Button>
      <Button
        disabled={length <= CORNERS.least}
        onClick={() => onChange({ ...area, polygon: area.polygon.slice(0, -1) })}
      >
        {places.lessCorners}
      </Button>
    </div>
  );
}
