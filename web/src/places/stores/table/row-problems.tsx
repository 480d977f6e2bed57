import { type FolderProblem, type Kind, kinds } from '@loopwright/plant';
import { problemReason, type Voice } from '@loopwright/words';
import { useState } from 'react';
import { keyed } from '../../../page/keyed.ts';
import { Mark } from '../../../page/mark.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { TableKind } from './table-kinds.ts';

const shownFirst = 30;

interface RowProblemsProps {
  readonly level: 'stop' | 'care';
  readonly title: string;
  readonly next?: string;
  readonly problems: readonly FolderProblem[];
  readonly kind: TableKind;
}

/** Rows with what is the matter with them: where, why, what to do. */
export function RowProblems({ level, title, next, problems, kind }: RowProblemsProps) {
  const speech = useSpeech();
  const [all, setAll] = useState(false);
  const shown = all ? problems : problems.slice(0, shownFirst);
  return (
    <section className="table-problems" data-level={level}>
      <div className={`caution caution-${level}`}>
        <Mark name={level} />
        <div>
          <p className="strong">{title}</p>
          {next === undefined ? null : <p>{next}</p>}
        </div>
      </div>
      <ul className="table-rows">
        {keyed(shown).map(({ key, item }) => (
          <li key={key} className="table-row">
            <bdi className="table-where">{placeOf(speech, item, kind)}</bdi>
            <span>{problemReason(speech, inWords(speech, item))}</span>
          </li>
        ))}
      </ul>
      {shown.length === problems.length ? null : (
        <button type="button" className="button" onClick={() => setAll(true)}>
          {speech.say('tables.show-all', { count: problems.length })}
        </button>
      )}
    </section>
  );
}

const isKind = (name: unknown): name is Kind => (kinds as readonly unknown[]).includes(name);

/** Row and column of the table; or, where something else would no longer fit, that thing. */
function placeOf({ say }: Voice, { file, row, field, data }: FolderProblem, kind: TableKind): string {
  const named = field === undefined || field === '' ? {} : { field };
  if (row !== undefined) return say('field' in named ? 'tables.at.row-field' : 'tables.at.row', { row, ...named });
  if (isKind(file)) return `${say(`stores.one.${file}`)} ${String(data['id'] ?? '')}`.trim();
  if ('field' in named) return say('tables.at.field', named);
  return data['id'] === undefined ? say('tables.at.file') : `${say(`stores.one.${kind}`)} ${String(data['id'])}`;
}

/** A reference names the store in which something is missing. */
function inWords({ say }: Voice, problem: FolderProblem): FolderProblem {
  const { other } = problem.data;
  return isKind(other) ? { ...problem, data: { ...problem.data, other: say(`stores.kind.${other}`) } } : problem;
}
