import { Plus, Trash2 } from 'lucide-react';
import { useId } from 'react';
import { HATCHES, type Ink } from '../../../shared/documents/kit.ts';
import { textIn } from '../../../shared/documents/values.ts';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { MarkPicture } from '../../parts/mark-picture.tsx';
import { NoNames } from '../../parts/no-names.tsx';
import { useLocale } from '../../parts/use-words.ts';
import { useWholeWords } from '../whole-words.ts';
import { MOST_INKS, withAnotherInk, withInkLetter, withValue } from './changes.ts';
import { DifferenceTable } from './difference-table.tsx';
import { KitText, ProblemsAt, Select, useEditing, useProblemsAt, useTyped } from './fields.tsx';

/** The line's colour, the inks, and how far apart all of them are. */
export function InkSection() {
  const { inks: words } = useWholeWords().kit;
  const { kit, change } = useEditing();
  const noNames = useId();
  return (
    <div className="kit-inks">
      <div className="kit-ink">
        <strong>{words.line}</strong>
        <ColourField
          what={words.line}
          color={kit.line.color}
          path={['line', 'color']}
          onChange={(color) => change('line.color', withValue(kit, ['line', 'color'], color))}
        />
      </div>
      <ol>
        {kit.inks
          .map((ink, i) => ({ ink, number: i + 1 }))
          .map(({ ink, number }) => (
            <InkRow key={number} ink={ink} place={number - 1} noNames={noNames} />
          ))}
      </ol>
      <NoNames id={noNames} />
      <Button
        icon={<Icon of={Plus} />}
        disabled={kit.inks.length >= MOST_INKS}
        onClick={() => change(`inks ${kit.inks.length + 1}`, withAnotherInk(kit, { en: words.newName }))}
      >
        {words.add}
      </Button>
      <label className="kit-tick">
        <input
          type="checkbox"
          checked={kit.equalNeighbours}
          onChange={(event) => change('equalNeighbours', { ...kit, equalNeighbours: event.target.checked })}
        />
        <span>
          {words.equal}
          <span className="desk-quiet"> {words.equalNote}</span>
        </span>
      </label>
      <DifferenceTable />
    </div>
  );
}

interface InkRowProps {
  readonly ink: Ink;
  readonly place: number;
  readonly noNames: string;
}

function InkRow({ ink, place, noNames }: InkRowProps) {
  const { inks: words } = useWholeWords().kit;
  const { kit, change } = useEditing();
  const locale = useLocale();
  const saidId = useId();
  const said = useProblemsAt(['inks', place, 'id']);
  const set = (part: keyof Ink, value: Ink[keyof Ink]) =>
    change(`inks.${place}.${part}`, withValue(kit, ['inks', place, part], value));
  const letter = (text: string) => {
    const typed = text
      .toUpperCase()
      .replace(/[^A-Z]/g, '')
      .at(-1);
    if (typed !== undefined) change(`inks.${place}.id`, withInkLetter(kit, place, typed));
  };
  return (
    <li className="kit-ink">
      <MarkPicture kit={kit} word={ink.id} onPaper size={30} />
      <label className="kit-letter">
        <span aria-hidden="true">{words.letter}</span>
        <input
          type="text"
          value={ink.id}
          aria-label={words.letterOf(place + 1)}
          aria-invalid={said.length > 0}
          aria-describedby={said.length > 0 ? saidId : undefined}
          onFocus={(event) => event.target.select()}
          onChange={(event) => letter(event.target.value)}
        />
      </label>
      <KitText
        label={words.name}
        value={textIn(ink.name, locale)}
        noNames={noNames}
        onChange={(name) => set('name', { en: name })}
      />
      <ColourField
        what={textIn(ink.name, locale)}
        color={ink.color}
        path={['inks', place, 'color']}
        onChange={(color) => set('color', color)}
      />
      <Select
        label={words.hatch}
        value={ink.hatch}
        options={HATCHES.map((hatch) => [hatch, words.hatches[hatch]])}
        onPick={(hatch) => set('hatch', hatch)}
      />
      {kit.inks.length > 1 && (
        <Button
          look="quiet"
          icon={<Icon of={Trash2} />}
          aria-label={words.removeThis(ink.id)}
          title={words.removeThis(ink.id)}
          onClick={() =>
            change(`inks ${kit.inks.length - 1}`, { ...kit, inks: kit.inks.toSpliced(place, 1) })
          }
        />
      )}
      <ProblemsAt id={saidId} said={said} />
    </li>
  );
}

interface ColourFieldProps {
  readonly what: string;
  readonly color: string;
  readonly path: readonly (string | number)[];
  readonly onChange: (color: string) => void;
}

/** A colour by its picker or by its code. */
function ColourField({ what, color, path, onChange }: ColourFieldProps) {
  const { inks: words } = useWholeWords().kit;
  const [typed, setTyped, leave] = useTyped(color);
  const saidId = useId();
  const problems = useProblemsAt(path);
  const code = (text: string) =>
    text
      .trim()
      .toUpperCase()
      .replace(/^(?!#)/, '#');
  const isCode = (text: string) => /^#[0-9A-F]{6}$/.test(code(text));
  const said = typed !== null && !isCode(typed) ? [words.codeHow] : problems;
  const type = (text: string) => {
    setTyped(text, isCode(text) ? code(text) : color);
    if (isCode(text)) onChange(code(text));
  };
  return (
    <div className="kit-colour">
      <span aria-hidden="true">{words.colour}</span>
      <span className="kit-number-in">
        <input
          type="color"
          aria-label={words.colourOf(what)}
          value={color.toLowerCase()}
          onChange={(event) => onChange(event.target.value.toUpperCase())}
        />
        <input
          type="text"
          maxLength={9}
          aria-label={words.codeOf(what)}
          aria-invalid={said.length > 0}
          aria-describedby={said.length > 0 ? saidId : undefined}
          value={typed ?? color}
          onChange={(event) => type(event.target.value)}
          onBlur={leave}
        />
      </span>
      <ProblemsAt id={saidId} said={said} />
    </div>
  );
}
