import type { Plant } from '@loopwright/plant';
import { languages, unitSystems } from '@loopwright/words';
import { AboutApp } from '../offline/about-app.tsx';
import { PlantChoice } from '../places/start/plant-choice.tsx';
import { PlantNameLink } from '../places/stores/plant-name-link.tsx';
import { useSpeech } from '../speech/use-speech.tsx';
import { DeviceNotices } from '../store/store-notices.tsx';
import { ChoiceGroup } from './choice-group.tsx';
import { languageNames, themes } from './settings.ts';
import { useSettings } from './use-settings.tsx';

/** Everything a reader may choose. Presses only where a plant is known. */
export function SettingsPanel({ plant }: { readonly plant: Plant | undefined }) {
  return (
    <>
      {plant === undefined ? null : <JobChoices plant={plant} />}
      <ReaderChoices />
      {plant === undefined ? null : <PlantChoice />}
      {plant === undefined ? null : <PlantNameLink />}
      {plant === undefined ? null : <DeviceNotices />}
      <AboutApp />
    </>
  );
}

function JobChoices({ plant }: { readonly plant: Plant }) {
  const { say } = useSpeech();
  const { settings, change } = useSettings();
  const presses = Object.values(plant.presses);
  return (
    <>
      <ChoiceGroup
        title={say('app.people')}
        options={([1, 2] as const).map((value) => ({ value, shown: say(`app.people.${value}`) }))}
        chosen={settings.people}
        onChoose={(people) => change({ people })}
      />
      {presses.length < 2 ? null : (
        <ChoiceGroup
          title={say('app.press')}
          options={[
            { value: '', shown: say('app.press.any') },
            ...presses.map((press) => ({ value: press.id, shown: `${press.id} ${press.name}` })),
          ]}
          chosen={settings.press}
          onChoose={(press) => change({ press })}
        />
      )}
    </>
  );
}

function ReaderChoices() {
  const { say } = useSpeech();
  const { settings, change } = useSettings();
  return (
    <>
      <ChoiceGroup
        title={say('app.language')}
        options={languages.map((value) => ({ value, shown: <span lang={value}>{languageNames[value]}</span> }))}
        chosen={settings.language}
        onChoose={(language) => change({ language })}
      />
      <ChoiceGroup
        title={say('app.units')}
        options={unitSystems.map((value) => ({ value, shown: say(`app.units.${value}`) }))}
        chosen={settings.units}
        onChoose={(units) => change({ units })}
      />
      <ChoiceGroup
        title={say('app.theme')}
        options={themes.map((value) => ({ value, shown: say(`app.theme.${value}`) }))}
        chosen={settings.theme}
        onChoose={(theme) => change({ theme })}
      />
    </>
  );
}
