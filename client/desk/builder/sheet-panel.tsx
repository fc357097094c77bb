import { Plus } from 'lucide-react';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { PLACE_TEXTS } from '../../../shared/wording/fresh.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { Choose, LengthField } from './inputs.tsx';
import { PlaceForm } from './place-form.tsx';
import {
  isFull,
  type PlaceRef,
  placeIn,
  placesOf,
  samePlaceRef,
  withNewPlace,
  withoutPlace,
} from './places.ts';
import { useChallenge, type Work } from './work.ts';

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

/** Paper, berths, gates, areas and boxes: each with its name and its place in numbers. */
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

interface AddPlacesProps {
  readonly sheet: Sheet;
  readonly onAdd: (sheet: Sheet, place: PlaceRef) => void;
}

function AddPlaces({ sheet, onAdd }: AddPlacesProps) {
  const { places } = useWholeWords().builder;
  return (
    <div className="builder-adds">
      {(['finish', 'gate', 'area', 'keep-out', 'box'] as const).map((kind) => (
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
