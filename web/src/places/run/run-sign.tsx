import type { RunView } from '@loopwright/jobs/press-run';
import type { RunWords } from '@loopwright/words';
import { BadgeShape } from '../../form/badge-shape.tsx';

/** What tells this run from another one on the same screen: a shape and a word. */
export function RunSignView({ view, words }: { readonly view: RunView; readonly words: RunWords }) {
  return (
    <span className="run-sign">
      <BadgeShape shape={view.sign.shape} /> {words.sign(view.sign.word)}
    </span>
  );
}
