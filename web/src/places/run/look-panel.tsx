import { watchRun } from '@loopwright/jobs/curve-watch';
import { type DefectCode, type Finding, judgeRun } from '@loopwright/jobs/inspection';
import { inspectionWords } from '@loopwright/words';
import { useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { DefectTiles } from './defect-tiles.tsx';
import { FindingQuestions } from './finding-questions.tsx';
import { ProposedVerdict } from './proposed-verdict.tsx';
import { useRunShown } from './run-context.tsx';

/** What is seen on the splice, picture by picture; then what the catalogue proposes, and a person decides. */
export function LookPanel() {
  const speech = useSpeech();
  const { state, show } = useRunShown();
  const [findings, setFindings] = useState<readonly Finding[]>([]);
  const [opened, setOpened] = useState<DefectCode>();
  const [isJudged, setJudged] = useState(false);
  const words = inspectionWords(speech);
  const inspection = judgeRun(state, findings, { curveWarnings: watchRun(state) });
  const without = (defect: DefectCode) => findings.filter((each) => each.defect !== defect);
  if (isJudged) {
    const back = () => setJudged(false);
    return <ProposedVerdict inspection={inspection} findings={findings} words={words} onBack={back} />;
  }
  const finding = findings.find(({ defect }) => defect === opened);
  if (finding !== undefined) {
    return (
      <FindingQuestions
        key={finding.defect}
        finding={finding}
        asks={inspection.ask.filter(({ defect }) => defect === finding.defect)}
        words={words}
        onChange={(changed) => setFindings([...without(finding.defect), changed])}
        onRemove={() => {
          setFindings(without(finding.defect));
          setOpened(undefined);
        }}
        onDone={() => setOpened(undefined)}
      />
    );
  }
  const open = (defect: DefectCode) => {
    if (!findings.some((each) => each.defect === defect)) setFindings([...findings, { defect }]);
    setOpened(defect);
  };
  return (
    <DefectTiles
      words={words}
      seen={findings.map(({ defect }) => defect)}
      onOpen={open}
      onJudge={() => setJudged(true)}
      onBack={() => show({ name: 'step' })}
    />
  );
}
