import type { EditorProps } from './geometry-end.tsx';
import { SurveyList } from './survey-list.tsx';
import { SurveySteps } from './survey-steps.tsx';
import { useWide } from './use-wide.ts';

/** The survey with a tape: one question at a time on a phone, all of them as a list where there is room. */
export function SurveyEditor(props: EditorProps) {
  return useWide() ? <SurveyList {...props} /> : <SurveySteps {...props} />;
}
