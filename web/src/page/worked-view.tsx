import type { WorkedText } from '@loopwright/sheets';
import { useSpeech } from '../speech/use-speech.tsx';
import { keyed } from './keyed.ts';

/** A worked formula, opened in place: the expression, the numbers in it, what each symbol is, the source. */
export function WorkedView({ worked, id }: { readonly worked: WorkedText; readonly id: string }) {
  const { say } = useSpeech();
  return (
    <div className="worked" id={id}>
      <p className="worked-title">{worked.title}</p>
      <p className="formula">{worked.expression}</p>
      <p className="formula formula-numbers">{worked.withNumbers}</p>
      <dl className="symbols">
        {keyed(worked.symbols).map(({ key, item }) => (
          <div key={key}>
            <dt>{item.symbol}</dt>
            <dd>{item.meaning}</dd>
            <dd className="symbol-value">{item.value}</dd>
          </div>
        ))}
      </dl>
      <p className="caption">{say('app.worked.source', { source: worked.source })}</p>
      <p className="caption">{say('app.worked.check')}</p>
    </div>
  );
}
