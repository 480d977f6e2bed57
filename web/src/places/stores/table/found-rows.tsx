import type { FolderProblem } from '@loopwright/plant';
import { problemReason } from '@loopwright/words';
import { useEffect, useRef } from 'react';
import { keyed } from '../../../page/keyed.ts';
import { Mark } from '../../../page/mark.tsx';
import { useSpeech } from '../../../speech/use-speech.tsx';
import { RowProblems } from './row-problems.tsx';
import type { TableKind } from './table-kinds.ts';
import type { FoundTable } from './use-take-table.ts';

interface FoundRowsProps {
  readonly found: FoundTable;
  readonly kind: TableKind;
}

/** What a table would do, before it is taken; every row that stands in the way by its number. */
export function FoundRows({ found, kind }: FoundRowsProps) {
  const { say } = useSpeech();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { rows, added, changed, unchanged, count, problems } = found.reading;
  const errors = problems.filter(({ level }) => level === 'error').toSorted(byRow);
  const cares = problems.filter(({ level }) => level === 'care');
  return (
    <>
      <h3 tabIndex={-1} ref={heading} className="table-found">
        <bdi>{say('tables.found', { rows, file: found.file.name })}</bdi>
      </h3>
      {found.overtaken ? <p className="strong">{say('tables.overtaken')}</p> : null}
      <ul className="table-counts">
        <Count count={added.length} word={say('tables.added')} names={added} />
        <Count count={changed.length} word={say('tables.changed')} names={changed} />
        <Count count={unchanged} word={say('tables.unchanged')} />
        <Count count={rowsIn(errors)} word={say('tables.wrong')} />
      </ul>
      <Notes found={found} />
      {errors.length === 0 ? null : (
        <RowProblems
          level="stop"
          title={say('tables.refused.title', { count: countOf(errors) })}
          next={say('tables.refused')}
          problems={errors}
          kind={kind}
        />
      )}
      {cares.length === 0 ? null : (
        <RowProblems level="care" title={say('tables.cares')} problems={cares} kind={kind} />
      )}
      {errors.length > 0 || count > 0 ? null : (
        <p className="strong">{say(rows === 0 ? 'tables.empty' : 'tables.nothing')}</p>
      )}
    </>
  );
}

/** As somebody goes through the file; what is about all of it comes first, what is left out last. */
const byRow = (one: FolderProblem, other: FolderProblem) => placeInFile(one) - placeInFile(other);

function placeInFile({ code, row }: FolderProblem): number {
  return code === 'more-problems' ? Number.MAX_SAFE_INTEGER : (row ?? 0);
}

const rowsIn = (problems: readonly FolderProblem[]) =>
  new Set(problems.flatMap(({ row }) => (row === undefined || row === 1 ? [] : [row]))).size;

/** Those beyond the list are counted by a last problem. */
function countOf(problems: readonly FolderProblem[]): number {
  const beyond = problems.filter(({ code }) => code === 'more-problems');
  return problems.length - beyond.length + beyond.reduce((sum, { data }) => sum + Number(data['value']), 0);
}

const mostNames = 4;

interface CountProps {
  readonly count: number;
  readonly word: string;
  readonly names?: readonly string[];
}

function Count({ count, word, names = [] }: CountProps) {
  const { say } = useSpeech();
  const more = names.length - mostNames;
  return (
    <li className="table-count" data-none={count === 0}>
      <span>
        <span className="table-number">{say('stores.count', { count })}</span> {word}
      </span>
      {names.length === 0 ? null : (
        <span className="soft">
          {keyed(names.slice(0, mostNames)).map(({ key, item }) => (
            <bdi key={key} className="table-name">
              {item}
            </bdi>
          ))}
          {more > 0 ? ` ${say('tables.more-names', { count: more })}` : null}
        </span>
      )}
    </li>
  );
}

function Notes({ found }: { readonly found: FoundTable }) {
  const speech = useSpeech();
  return keyed(found.reading.notes).map(({ key, item }) => (
    <div key={key} className="caution caution-note">
      <Mark name="note" />
      <p>{problemReason(speech, item)}</p>
    </div>
  ));
}
