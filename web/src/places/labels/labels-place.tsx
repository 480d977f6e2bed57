import { type LabelChoice, positionLabels } from '@loopwright/jobs';
import type { Plant } from '@loopwright/plant';
import { type LabelPaper, labelPapers } from '@loopwright/sheets';
import { useEffect, useMemo, useRef, useState } from 'react';
import { ChoiceGroup } from '../../settings/choice-group.tsx';
import { Bar } from '../../shell/bar.tsx';
import { Said } from '../../shell/said.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';
import { storesAddress } from '../stores/store-address.ts';
import { ChoosePositions } from './choose-positions.tsx';
import { choiceIn } from './labels-address.ts';
import { LabelsEnd } from './labels-end.tsx';

export interface LabelsPlaceProps {
  readonly path: string;
  readonly plant: Plant;
  readonly now: string;
  /** Where the place of the card leads. */
  readonly card: string | undefined;
}

/** Which positions get a label, on what paper? */
export function LabelsPlace({ path, plant, now, card }: LabelsPlaceProps) {
  const { say } = useSpeech();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  const all = useMemo(() => positionLabels(plant), [plant]);
  return (
    <div className="shell">
      <Bar place="stores" plant={plant} card={card} back={{ href: storesAddress, to: say('stores.title') }} />
      <main className="pane labels">
        {all.length === 0 ? (
          <Said title={say('labels.title')} next={say('labels.no-positions')} toLines />
        ) : (
          <>
            <h1 ref={heading} tabIndex={-1}>
              {say('labels.title')}
            </h1>
            <p>{say('labels.about')}</p>
            <LabelsForm path={path} plant={plant} now={now} />
          </>
        )}
      </main>
    </div>
  );
}

function LabelsForm({ path, plant, now }: Omit<LabelsPlaceProps, 'card'>) {
  const { say, units } = useSpeech();
  const [chosen, setChosen] = useState<ReadonlySet<string>>(() => chosenAtFirst(plant, path));
  const [paper, setPaper] = useState<LabelPaper>(units === 'us' ? 'letter' : 'A4');
  const labels = useMemo(() => positionLabels(plant, { positions: [...chosen] }), [plant, chosen]);
  return (
    <div className="labels-form">
      <ChoosePositions plant={plant} chosen={chosen} onChoose={setChosen} />
      <ChoiceGroup
        title={say('labels.paper')}
        options={labelPapers.map((value) => ({ value, shown: say(`labels.paper.${value}`) }))}
        chosen={paper}
        onChoose={setPaper}
      />
      <LabelsEnd labels={labels} paper={paper} now={now} />
    </div>
  );
}

/** What the address names; an address that names nothing of the plant begins with everything. */
function chosenAtFirst(plant: Plant, path: string): ReadonlySet<string> {
  const { line, position } = choiceIn(path);
  const asked: LabelChoice = {
    ...(line === undefined ? {} : { lines: [line] }),
    ...(position === undefined ? {} : { positions: [position] }),
  };
  const named = positionLabels(plant, asked);
  return new Set((named.length > 0 ? named : positionLabels(plant)).map((label) => label.position));
}
