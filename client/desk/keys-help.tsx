import { Keyboard } from 'lucide-react';
import { useId } from 'react';
import type { Wording } from '../../shared/wording/wording.ts';
import { Button } from '../parts/button.tsx';
import { openDeviceSettings } from '../parts/device-settings-dialog.tsx';
import { Dialog } from '../parts/dialog.tsx';
import { Icon } from '../parts/icon.tsx';
import { useDesk } from './desk-store.ts';
import { useKeys } from './keys.ts';
import { GO_ON_KEY, SCENES_KEY, STILL_KEY } from './scenes-keys.ts';
import { useWholeWords } from './whole-words.ts';
import './keys-help.css';

/** The list of keys, with the switch that turns them off. */
export function KeysHelp() {
  const { desk } = useWholeWords();
  const { keys } = desk;
  const { helpOpen, setHelp, keysOn, setKeys } = useDesk();
  useKeys({ '?': () => setHelp(true), l: openDeviceSettings }, keysOn);
  const switchId = useId();
  const groups = groupsOf(useWholeWords());
  return (
    <>
      <Button
        look="quiet"
        icon={<Icon of={Keyboard} />}
        shortcut="?"
        className="keys-open"
        aria-label={keys.open}
        onClick={() => setHelp(true)}
      >
        <span className="keys-open-word">{keys.open}</span>
      </Button>
      <Dialog open={helpOpen} title={keys.title} closeWord={desk.close} onClose={() => setHelp(false)}>
        <div className="keys-list">
          {groups.map((group) => (
            <section key={group.title}>
              <h3>{group.title}</h3>
              <dl>
                {group.rows.map(([key, does]) => (
                  <div key={key} className="keys-row">
                    <dt>
                      <kbd>{key}</kbd>
                    </dt>
                    <dd>{does}</dd>
                  </div>
                ))}
              </dl>
            </section>
          ))}
        </div>
        <label className="keys-switch" htmlFor={switchId}>
          <input
            id={switchId}
            type="checkbox"
            checked={keysOn}
            onChange={(event) => setKeys(event.target.checked)}
          />
          {keys.on}
        </label>
      </Dialog>
    </>
  );
}

/** Which key does what, as the list shows it. */
function groupsOf({ desk: { keys }, device, driving, scenes }: Wording) {
  return [
    {
      title: keys.groups.lesson,
      rows: [
        ['N', keys.next],
        ['[ ]', keys.step],
        ['H', keys.look],
        ['T', keys.pause],
        ['S', keys.standings],
        ['+', keys.extend],
        ['B', keys.flip],
        ['U', keys.undo],
        ['C', keys.picture],
        ['O', keys.paper],
        ['Q', keys.queue],
        ['L', device.open],
        ['?', keys.help],
      ],
    },
    {
      title: keys.groups.teams,
      rows: [
        ['1 … 40', keys.pick],
        ['Shift 1 … 40', keys.second],
        ['← → ↑ ↓', keys.move],
        ['Esc', keys.unpick],
        ['M', keys.say],
        ['G', keys.order],
      ],
    },
    {
      title: keys.groups.stage,
      rows: [
        ['P', keys.play],
        [', .', keys.scrub],
        ['J K', keys.readings],
        ['V', keys.speed],
        ['R', keys.loop],
        ['E', keys.sensors],
        ['I', keys.whole],
        ['F', keys.onTop],
        ['W', keys.whatIf],
        ['X', keys.clear],
      ],
    },
    {
      title: driving.title,
      rows: [
        ['G', driving.setsOff],
        ['Y', driving.outcome('as-predicted')],
        ['J', driving.outcome('other-branch')],
        ['E', driving.outcome('time-up')],
        ['X', driving.lostSomewhere],
      ],
    },
    {
      title: scenes.title,
      rows: [
        [`${SCENES_KEY} 1 … 9`, scenes.choose],
        [GO_ON_KEY, scenes.goOn],
        [STILL_KEY, scenes.still],
      ],
    },
  ] as const;
}
