import { recipeCycleReport } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { cyclePage, type Page, type Section, voiceOfDisplay } from '@loopwright/sheets';
import { memo, useCallback, useMemo, useState } from 'react';
import { DrawingView } from '../../page/drawing-view.tsx';
import { SectionView } from '../../page/page-view.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { ChooseThings } from './choose-things.tsx';
import { CycleAnswer } from './cycle-answer.tsx';
import { cycleDrawings } from './cycle-drawings.ts';
import { CycleEnds } from './cycle-ends.tsx';
import { CycleNotes, CycleWarnings } from './cycle-notes.tsx';
import { CycleRests } from './cycle-rests.tsx';
import { KeepCycle } from './keep-cycle.tsx';
import { SettingRow } from './setting-row.tsx';
import { choiceOf, type SettingName, type Settings, settingNames, settingsOf, type Voices } from './settings.ts';
import type { Things } from './start-of.ts';
import type { Kept } from './two-table.tsx';
import { useWhole, wholeCycle } from './use-whole.ts';

interface CycleViewProps {
  readonly plant: Plant;
  readonly now: string;
  readonly start: Things;
}

/** The cycle of a recipe, computed anew at each move of a setting. */
export function CycleView({ plant, now, start }: CycleViewProps) {
  const speech = useSpeech();
  const [things, setThings] = useState(start);
  const [changed, setChanged] = useState<Partial<Settings>>({});
  const [kept, setKept] = useState<Kept | undefined>(undefined);
  const choice = useMemo(() => choiceOf(things, changed), [things, changed]);
  const report = useMemo(() => recipeCycleReport(plant, { ...choice, withRange: false }, now), [plant, choice, now]);
  const voices = useMemo(() => ({ voice: speech, display: voiceOfDisplay(things.press, speech) }), [speech, things]);
  const page = useMemo(() => cyclePage(report, speech), [report, speech]);
  const cycle = report.cycle?.status === 'ok' ? report.cycle : undefined;
  const drawings = useMemo(() => cycle && cycleDrawings(cycle, kept?.cycle, voices), [cycle, kept, voices]);
  const whole = useWhole({ plant, choice, now, speech });
  const below = cycle === undefined ? { report, page } : whole;
  const starts = useMemo(() => settingsOf(things), [things]);
  const settings = { ...starts, ...changed };
  const set = useCallback((name: SettingName, value: number) => setChanged((all) => ({ ...all, [name]: value })), []);
  const choose = (next: Things) => {
    setThings(next);
    setChanged({});
  };
  return (
    <article className="cycle-view">
      <header className="cycle-head">
        <h1 tabIndex={-1}>{speech.say('cycle.title')}</h1>
        <ChooseThings plant={plant} things={things} onChoose={choose} />
      </header>
      <div className="cycle-trial">
        <CycleAnswer page={whole.isOfNow ? whole.page : page} drawings={drawings} />
        <div className="cycle-settings">
          <CycleWarnings page={below.page} />
          <SettingRows settings={settings} starts={starts} voices={voices} onSet={set} />
          <button
            type="button"
            className="button"
            disabled={Object.keys(changed).length === 0}
            onClick={() => setChanged({})}
          >
            {speech.say('recipes.reset')}
          </button>
          <KeepCycle now={cycle && { report, cycle, settings }} kept={kept} voices={voices} onKeep={setKept} />
          <CycleNotes things={things} report={below.report} page={below.page} />
        </div>
      </div>
      <div className="cycle-more">
        {drawings === undefined ? null : <DrawingView drawing={drawings.fusion} />}
        <Found page={below.page} />
        {cycle === undefined || drawings === undefined ? null : (
          <CycleEnds
            name={`cycle-${things.recipe.id}`}
            cycle={cycle}
            drawings={drawings}
            makePage={() => wholeCycle({ plant, choice, now, speech }).page}
          />
        )}
        <CycleRests sections={below.page.back} />
      </div>
    </article>
  );
}

interface SettingRowsProps {
  readonly settings: Settings;
  readonly starts: Settings;
  readonly voices: Voices;
  readonly onSet: (name: SettingName, value: number) => void;
}

function SettingRows({ settings, starts, voices, onSet }: SettingRowsProps) {
  const { say } = useSpeech();
  return (
    <section className="settings-rows" aria-label={say('recipes.settings-title')}>
      {settingNames.map((name) => (
        <SettingRow key={name} name={name} value={settings[name]} start={starts[name]} voices={voices} onSet={onSet} />
      ))}
    </section>
  );
}

/** What was found, but for what stands above already. */
const elsewhere = new Set(['warnings', 'curve']);

const Found = memo(({ page }: { readonly page: Page }) => {
  const sections: readonly Section[] = page.front.filter(({ id }) => !elsewhere.has(id));
  return sections.map((section) => <SectionView key={section.id} section={section} />);
});
