import { PACES, type Robot, type Tolerances } from '../../../shared/documents/kit.ts';
import { useWholeWords } from '../whole-words.ts';
import { withValue } from './changes.ts';
import { Fields, KitNumber, KitText, Select, useEditing } from './fields.tsx';
import type { Unit } from './numbers.ts';

const SIZES = ['width', 'length', 'axleToRear', 'wheelTrack'] as const;
const SENSORS = ['barAhead', 'sensorPitch', 'bandUnit'] as const;
const TOLERANCES: readonly (readonly [keyof Tolerances, Unit])[] = [
  ['aside', 'mm'],
  ['heading', '°'],
  ['commonSpeed', '%'],
  ['wheelMismatch', '%'],
  ['sensorGain', '%'],
  ['sensorOffset', '%'],
  ['calibration', '%'],
];

/** The profile: what a robot measures, how it sees, how its like differ, what it does by itself. */
export function RobotSection() {
  const { fields, tolerances } = useWholeWords().kit;
  const { robot: words } = fields;
  const { kit, change } = useEditing();
  return (
    <div className="kit-robot">
      <KitText
        label={words.name}
        value={kit.robot.name}
        onChange={(name) => change('robot.name', withValue(kit, ['robot', 'name'], name))}
      />
      <Fields title={words.sizes}>
        {SIZES.map((size) => (
          <KitNumber key={size} label={words[size]} unit="mm" path={['robot', size]} />
        ))}
      </Fields>
      <Fields title={words.sensors}>
        {SENSORS.map((size) => (
          <KitNumber key={size} label={words[size]} unit="mm" path={['robot', size]} />
        ))}
        <KitNumber label={words.actsAfter} unit="s" path={['robot', 'actsAfter']} />
      </Fields>
      <Fields title={words.choices}>
        <RobotPick label={words.unmarkedJunction} at="unmarkedJunction" said={words.junctions} />
        <RobotPick label={words.looseEnd} at="looseEnd" said={words.ends} />
      </Fields>
      <Fields title={tolerances.title}>
        {TOLERANCES.map(([each, unit]) => (
          <KitNumber key={each} label={tolerances[each]} unit={unit} path={['robot', 'tolerances', each]} />
        ))}
      </Fields>
      <p className="desk-quiet">{tolerances.how}</p>
    </div>
  );
}

interface RobotPickProps<K extends 'unmarkedJunction' | 'looseEnd' | 'startPace'> {
  readonly label: string;
  readonly at: K;
  readonly said: Readonly<Record<Robot[K], string>>;
}

function RobotPick<K extends 'unmarkedJunction' | 'looseEnd' | 'startPace'>({
  label,
  at,
  said,
}: RobotPickProps<K>) {
  const { kit, change } = useEditing();
  return (
    <Select<Robot[K]>
      label={label}
      value={kit.robot[at]}
      options={Object.entries(said) as [Robot[K], string][]}
      onPick={(value) => change(`robot.${at}`, withValue(kit, ['robot', at], value))}
    />
  );
}

/** How fast each pace is. */
export function PaceSection() {
  const { paces: words } = useWholeWords().kit.fields;
  const { creep, steady, brisk, fast } = words;
  return (
    <div className="kit-robot">
      <p>{words.how}</p>
      <Fields title={useWholeWords().kit.editor.section('paces')}>
        {PACES.map((pace) => (
          <KitNumber key={pace} label={words[pace]} unit="mm/s" path={['robot', 'paces', pace]} />
        ))}
        <KitNumber label={words.topWheelSpeed} unit="mm/s" path={['robot', 'topWheelSpeed']} />
        <RobotPick label={words.startPace} at="startPace" said={{ creep, steady, brisk, fast }} />
      </Fields>
    </div>
  );
}
