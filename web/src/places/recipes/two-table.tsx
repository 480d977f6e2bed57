import type { PressCycle, PressCycleReport, Quantity } from '@loopwright/jobs';
import { gradeWord } from '@loopwright/sheets';
import type { MessageKey, Voice } from '@loopwright/words';
import { useSpeech } from '../../speech/use-speech.tsx';
import { type SettingName, type Settings, settingNames, type Voices, writeSetting } from './settings.ts';

/** A cycle that somebody kept to lay others over it. */
export interface Kept {
  readonly report: PressCycleReport;
  readonly cycle: PressCycle;
  readonly settings: Settings;
}

interface TwoTableProps {
  readonly now: Kept;
  readonly kept: Kept;
  readonly voices: Voices;
}

const found: readonly (readonly [MessageKey, (cycle: PressCycle) => Quantity])[] = [
  ['cycle.row.open', ({ open }) => open],
  ['cycle.row.peak', ({ belt }) => belt.peak],
  ['cycle.row.bond', ({ belt }) => belt.bond],
  ['cycle.row.damage', ({ belt }) => belt.damage],
  ['cycle.row.energy', ({ energy }) => energy],
];

/** Two cycles side by side: what was set differently, and what comes of it. */
export function TwoTable({ now, kept, voices }: TwoTableProps) {
  const { say } = useSpeech();
  const { voice, display } = voices;
  const write = ({ value, kind }: Quantity): string => speaker(kind, voice, display).write(value, kind);
  const differs = (name: SettingName): boolean => now.settings[name] !== kept.settings[name];
  const names = ({ report }: Kept): string =>
    [report.belt.id, report.press?.name, report.recipe?.id].filter(Boolean).join(', ');
  return (
    <table className="two-table">
      <caption className="sr">{say('recipes.compared')}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{say('recipes.now')}</th>
          <th scope="col">{say('recipes.kept')}</th>
        </tr>
      </thead>
      <tbody>
        {names(now) === names(kept) ? null : <Row label={say('recipes.of')} now={names(now)} kept={names(kept)} />}
        {settingNames.filter(differs).map((name) => (
          <Row
            key={name}
            label={say(`recipes.set.${name}`)}
            now={writeSetting(name, now.settings[name], voices)}
            kept={writeSetting(name, kept.settings[name], voices)}
          />
        ))}
        <Row
          label={say('recipes.grade')}
          now={gradeWord(now.cycle.middle.grade, voice)}
          kept={gradeWord(kept.cycle.middle.grade, voice)}
        />
        {found.map(([key, of]) => (
          <Row key={key} label={say(key)} now={write(of(now.cycle))} kept={write(of(kept.cycle))} />
        ))}
      </tbody>
    </table>
  );
}

const speaker = (kind: Quantity['kind'], voice: Voice, display: Voice): Voice =>
  kind === 'temperature' ? display : voice;

function Row({ label, now, kept }: { readonly label: string; readonly now: string; readonly kept: string }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      <td>{now}</td>
      <td>{kept}</td>
    </tr>
  );
}
