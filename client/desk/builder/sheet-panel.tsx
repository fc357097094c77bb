import { Plus, Trash2 } from 'lucide-react';
import type { Area, Sheet } from '../../../shared/documents/sheet.ts';
import { textIn } from '../../../shared/documents/values.ts';
import type { PaperPoint } from '../../../shared/geometry/units.ts';
import { PLACE_TEXTS } from '../../../shared/wording/fresh.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { Choose, LengthField, NumberField, TextField, Tick } from './inputs.tsx';
import {
  CORNERS,
  cornersOf,
  MOST_OF_A_KIND,
  type PlaceKind,
  type PlaceRef,
  placeIn,
  placesOf,
  samePlaceRef,
  withCorners,
  withMoreCorners,
  withNewPlace,
  withoutPlace,
  withPlace,
} from './places.ts';
import { useChallenge, type Work } from './work.ts';

/** The longest name of a place that the board has room for. */
const LONGEST_NAME = 24;

const PAPERS = {
  A4: { w: 297, h: 210 },
  A3: { w: 420, h: 297 },
  Letter: { w: 279.4, h: 215.9 },
  Tabloid: { w: 431.8, h: 279.4 },
} as const;
type PaperName = keyof typeof PAPERS;
const LARGEST = { w: 4000, h: 2000 } as const;
const LEAST_SIDE = 100;

export interface SheetPanelProps {
  readonly work: Work;
  readonly chosen: PlaceRef | null;
  readonly onChoose: (place: PlaceRef | null) => void;
}

/** Paper, berths, gates and areas: each with its name and its place in numbers. */
export function SheetPanel({ work, chosen, onChoose }: SheetPanelProps) {
  const { places } = useWholeWords().builder;
  const challenge = useChallenge(work);
  const { sheet } = challenge;
  const put = (now: Sheet, what: string | null = null) => work.change({ ...challenge, sheet: now }, what);
  return (
    <div className="builder-panel">
      <h2>{places.title}</h2>
      <PaperForm sheet={sheet} onChange={put} />
      <h3>{places.listed}</h3>
      <p className="desk-quiet">{places.how}</p>
      <PlaceList sheet={sheet} chosen={chosen} onChoose={onChoose} />
      {chosen && placeIn(sheet, chosen) && (
        <PlaceForm
          key={`${chosen.kind} ${chosen.id}`}
          sheet={sheet}
          place={chosen}
          onChange={put}
          onDone={work.settle}
          onRemove={() => [put(withoutPlace(sheet, chosen)), onChoose(null)]}
        />
      )}
      <AddPlaces sheet={sheet} onAdd={(now, place) => [put(now), onChoose(place)]} />
    </div>
  );
}

interface SheetFormProps {
  readonly sheet: Sheet;
  readonly onChange: (sheet: Sheet, what?: string) => void;
}

function PaperForm({ sheet, onChange }: SheetFormProps) {
  const { places } = useWholeWords().builder;
  const names = Object.keys(PAPERS) as PaperName[];
  const known = names.find((name) => PAPERS[name].w === sheet.w && PAPERS[name].h === sheet.h);
  const side = (key: 'w' | 'h') => (value: number | undefined) =>
    value !== undefined && onChange({ ...sheet, [key]: value }, `sheet ${key}`);
  return (
    <div className="formula-fields">
      <Choose
        label={places.paper}
        value={known ?? 'other'}
        options={[
          ...names.map((name) => [name, name] as const),
          ...(known ? [] : [['other', places.otherPaper] as const]),
        ]}
        onChange={(name) => name !== 'other' && onChange({ ...sheet, ...PAPERS[name as PaperName] })}
      />
      <LengthField
        label={places.width}
        value={sheet.w}
        least={LEAST_SIDE}
        most={LARGEST.w}
        onChange={side('w')}
      />
      <LengthField
        label={places.height}
        value={sheet.h}
        least={LEAST_SIDE}
        most={LARGEST.h}
        onChange={side('h')}
      />
    </div>
  );
}

interface PlaceListProps extends Omit<SheetPanelProps, 'work'> {
  readonly sheet: Sheet;
}

function PlaceList({ sheet, chosen, onChoose }: PlaceListProps) {
  const { places } = useWholeWords().builder;
  const locale = useLocale();
  return (
    <ul className="builder-places">
      {placesOf(sheet).map((place) => (
        <li key={`${place.kind} ${place.id}`}>
          <button
            type="button"
            className="builder-place"
            aria-pressed={samePlaceRef(place, chosen)}
            onClick={() => onChoose(samePlaceRef(place, chosen) ? null : place)}
          >
            <strong>{textIn(placeIn(sheet, place)!.name, locale)}</strong>
            <span className="desk-quiet">{places.kind(place.kind)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

interface PlaceFormProps {
  readonly sheet: Sheet;
  readonly place: PlaceRef;
  readonly onChange: (sheet: Sheet, what: string) => void;
  readonly onDone: () => void;
  readonly onRemove: () => void;
}

const DEGREES = 180 / Math.PI;

function PlaceForm({ sheet, place, onChange, onDone, onRemove }: PlaceFormProps) {
  const { places } = useWholeWords().builder;
  const locale = useLocale();
  const found = placeIn(sheet, place)!;
  const put = (now: typeof found, what: string) =>
    onChange(withPlace(sheet, place, now), `${place.kind} ${place.id} ${what}`);
  const corners = cornersOf(found);
  const numbered = corners.map((at, corner) => ({ at, corner }));
  const move = (corner: number, to: PaperPoint) =>
    put(
      withCorners(
        found,
        corners.map((p, i) => (i === corner ? to : p)),
      ),
      `corner ${corner}`,
    );
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
            most={sheet.w}
            onChange={(x = at.x) => move(corner, { ...at, x })}
          />
          <LengthField
            label={places.down(place.kind, corner + 1)}
            value={at.y}
            most={sheet.h}
            onChange={(y = at.y) => move(corner, { ...at, y })}
          />
        </div>
      ))}
      {'heading' in found && (
        <div className="formula-fields">
          <NumberField
            label={places.heading}
            value={Math.round(found.heading * DEGREES)}
            least={-180}
            most={180}
            step={5}
            unit="°"
            onChange={(degrees) =>
              degrees !== undefined &&
              put({ ...found, heading: (Math.round(degrees) * Math.PI) / 180 }, 'heading')
            }
          />
          <LengthField
            label={places.reach}
            value={found.r}
            least={5}
            most={100}
            onChange={(r = found.r) => put({ ...found, r }, 'r')}
          />
        </div>
      )}
      {place.kind === 'start' && 'heading' in found && (
        <Tick
          label={places.startOnly}
          checked={found.startOnly === true}
          onChange={(on) => {
            const { startOnly: _, ...rest } = found;
            put(on ? { ...rest, startOnly: true } : rest, 'start only');
          }}
        />
      )}
      {'polygon' in found && <CornerButtons area={found} onChange={(now) => put(now, 'corners')} />}
      {place.kind !== 'start' && (
        <Button icon={<Icon of={Trash2} />} onClick={onRemove}>
          {places.remove}
        </Button>
      )}
    </div>
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

interface AddPlacesProps {
  readonly sheet: Sheet;
  readonly onAdd: (sheet: Sheet, place: PlaceRef) => void;
}

const isFull = (sheet: Sheet, kind: PlaceKind): boolean => {
  if (kind === 'start') return true;
  if (kind === 'finish') return sheet.finish !== undefined;
  const list = { gate: sheet.gates, area: sheet.areas, 'keep-out': sheet.keepOut }[kind];
  return list.length >= MOST_OF_A_KIND;
};

function AddPlaces({ sheet, onAdd }: AddPlacesProps) {
  const { places } = useWholeWords().builder;
  return (
    <div className="builder-adds">
      {(['finish', 'gate', 'area', 'keep-out'] as const).map((kind) => (
        <Button
          key={kind}
          icon={<Icon of={Plus} />}
          disabled={isFull(sheet, kind)}
          onClick={() => {
            const added = withNewPlace(sheet, kind, PLACE_TEXTS);
            onAdd(added.sheet, added.place);
          }}
        >
          {places.kind(kind)}
        </Button>
      ))}
    </div>
  );
}
