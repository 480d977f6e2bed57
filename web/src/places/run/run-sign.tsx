import { BadgeShape } from '../../form/badge-shape.tsx';
import { useRunShown } from './run-context.tsx';

/** What tells this run from another one on the same screen: a shape and a word. */
export function RunSignView() {
  const { view, words } = useRunShown();
  return (
    <span className="run-sign">
      <BadgeShape shape={view.sign.shape} /> {words.sign(view.sign.word)}
    </span>
  );
}
