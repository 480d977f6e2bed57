import { AllSteps } from './all-steps.tsx';
import { ChoicesPanel } from './choices-panel.tsx';
import { EndView } from './end-view.tsx';
import { LoggerPanel } from './logger-panel.tsx';
import { LookPanel } from './look-panel.tsx';
import { MorePanel } from './more-panel.tsx';
import { PhotosPanel } from './photos-panel.tsx';
import { ReadingPanel } from './reading-panel.tsx';
import { ReadingsPanel } from './readings-panel.tsx';
import { type RunPanel, useRunShown } from './run-context.tsx';
import { StepScreen } from './step-screen.tsx';
import { WhoPanel } from './who-panel.tsx';

/** What stands below the head: the step, or what somebody opened in its place. */
export function RunBody({ panel }: { readonly panel: RunPanel }) {
  const { view } = useRunShown();
  if (panel.name === 'more') return <MorePanel />;
  if (panel.name === 'all-steps') return <AllSteps />;
  if (panel.name === 'choices') return <ChoicesPanel key={panel.code} code={panel.code} step={panel.step} />;
  if (panel.name === 'reading' && view.reading !== undefined) return <ReadingPanel reading={view.reading} />;
  if (panel.name === 'readings') return <ReadingsPanel measures={panel.measures} />;
  if (panel.name === 'look') return <LookPanel />;
  if (panel.name === 'logger') return <LoggerPanel />;
  if (panel.name === 'photos') return <PhotosPanel />;
  if (panel.name === 'who') return <WhoPanel />;
  if (view.end !== undefined) return <EndView />;
  return <StepScreen key={`${view.current?.step} ${view.attempt}`} />;
}
