import { FileDown, FileUp } from 'lucide-react';
import { useRef, useState } from 'react';
import { marksOf } from '../../../shared/kit/marks.ts';
import { useAnnounce } from '../../parts/announcer.tsx';
import { Button } from '../../parts/button.tsx';
import { Icon } from '../../parts/icon.tsx';
import { Notice } from '../../parts/notice.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { useWholeWords } from '../whole-words.ts';
import { inOrder } from './changes.ts';
import { type ChartTrouble, chartAsCsv, chartAsJson, chartFromCsv, chartFromJson } from './chart-file.ts';
import { useEditing } from './fields.tsx';
import { fileName, LARGEST_KIT_FILE } from './kit-file.ts';
import { nameOfMeaning } from './meaning-pick.tsx';

const TYPES = { csv: 'text/csv;charset=utf-8', json: 'application/json' } as const;

/** The chart as a file, out and in. */
export function ChartFiles() {
  const words = useWholeWords();
  const { chart } = words.kit;
  const { kit, change } = useEditing();
  const announce = useAnnounce();
  const input = useRef<HTMLInputElement>(null);
  const [trouble, setTrouble] = useState<ChartTrouble | null>(null);
  const save = (ending: 'csv' | 'json', text: string) =>
    saveFile(new Blob([text], { type: TYPES[ending] }), fileName(kit, ending));
  const open = async (file: File | undefined) => {
    if (!file) return;
    const text = file.size > LARGEST_KIT_FILE ? '' : await file.text();
    const isJson = text.trimStart().startsWith('{');
    const read = isJson ? chartFromJson(text) : chartFromCsv(text, (action) => nameOfMeaning(action, words));
    if (input.current) input.current.value = '';
    setTrouble(read.ok ? null : read.trouble);
    if (!read.ok) return;
    change(`chart file ${file.name}`, inOrder({ ...kit, chart: [...read.chart] }));
    announce(chart.opened(marksOf(read.chart).length));
  };
  const none = kit.chart.length === 0;
  return (
    <>
      <p className="kit-buttons">
        <Button
          icon={<Icon of={FileDown} />}
          disabled={none}
          onClick={() => save('csv', chartAsCsv(kit.chart))}
        >
          {chart.csv}
        </Button>
        <Button
          icon={<Icon of={FileDown} />}
          disabled={none}
          onClick={() => save('json', chartAsJson(kit.chart))}
        >
          {chart.json}
        </Button>
        <Button icon={<Icon of={FileUp} />} onClick={() => input.current?.click()}>
          {chart.open}
        </Button>
        <input
          ref={input}
          type="file"
          accept=".csv,.json,text/csv,application/json"
          hidden
          aria-label={chart.open}
          onChange={(event) => void open(event.target.files?.[0])}
        />
      </p>
      {trouble !== null && (
        <Notice tone="stops" role="alert">
          {(chart.trouble[trouble.code] as (trouble: ChartTrouble) => string)(trouble)}
        </Notice>
      )}
    </>
  );
}
