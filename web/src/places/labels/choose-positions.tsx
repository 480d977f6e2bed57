import type { Line, Plant, Position } from '@loopwright/plant';
import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { Mark } from '../../page/mark.tsx';
import { useSpeech } from '../../speech/use-speech.tsx';

interface ChoosePositionsProps {
  readonly plant: Plant;
  readonly chosen: ReadonlySet<string>;
  readonly onChoose: (chosen: ReadonlySet<string>) => void;
}

/** All, whole lines, or single positions of a line. */
export function ChoosePositions({ plant, chosen, onChoose }: ChoosePositionsProps) {
  const { say } = useSpeech();
  const groups = useMemo(() => groupsOf(plant), [plant]);
  const all = useMemo(() => groups.flatMap(({ positions }) => positions.map(({ id }) => id)), [groups]);
  const turn = (ids: readonly string[], on: boolean) => onChoose(turned(chosen, ids, on));
  return (
    <fieldset className="choice labels-lines">
      <legend>{say('labels.which')}</legend>
      <Several name={say('labels.all')} ids={all} chosen={chosen} onTurn={turn} />
      {groups.map((group) => (
        <LineChoice key={group.line.id} group={group} chosen={chosen} onTurn={turn} />
      ))}
    </fieldset>
  );
}

interface Group {
  readonly line: Line;
  readonly positions: readonly Position[];
}

function groupsOf(plant: Plant): readonly Group[] {
  const byLine = new Map<string, Position[]>();
  for (const position of Object.values(plant.positions)) {
    const there = byLine.get(position.line);
    if (there === undefined) byLine.set(position.line, [position]);
    else there.push(position);
  }
  return Object.values(plant.lines)
    .toSorted((a, b) => (a.id < b.id ? -1 : 1))
    .map((line) => ({ line, positions: (byLine.get(line.id) ?? []).toSorted((a, b) => a.number - b.number) }))
    .filter(({ positions }) => positions.length > 0);
}

function turned(before: ReadonlySet<string>, ids: readonly string[], on: boolean): ReadonlySet<string> {
  const after = new Set(before);
  for (const id of ids) {
    if (on) after.add(id);
    else after.delete(id);
  }
  return after;
}

interface SeveralProps {
  readonly name: string;
  readonly ids: readonly string[];
  readonly chosen: ReadonlySet<string>;
  readonly onTurn: (ids: readonly string[], on: boolean) => void;
}

/** One box for many positions; a bar in it says that some of them are chosen. */
function Several({ name, ids, chosen, onTurn }: SeveralProps) {
  const { say } = useSpeech();
  const box = useRef<HTMLInputElement>(null);
  const count = ids.filter((id) => chosen.has(id)).length;
  const some = count > 0 && count < ids.length;
  useEffect(() => {
    if (box.current !== null) box.current.indeterminate = some;
  }, [some]);
  return (
    <label className="choice-option labels-several">
      <input
        ref={box}
        type="checkbox"
        checked={count === ids.length}
        onChange={() => onTurn(ids, count < ids.length)}
      />
      <span>
        <bdi>{name}</bdi> <span className="soft">{say('labels.of', { chosen: count, count: ids.length })}</span>
      </span>
    </label>
  );
}

interface LineChoiceProps {
  readonly group: Group;
  readonly chosen: ReadonlySet<string>;
  readonly onTurn: (ids: readonly string[], on: boolean) => void;
}

function LineChoice({ group, chosen, onTurn }: LineChoiceProps) {
  const { say } = useSpeech();
  const { line, positions } = group;
  const [open, setOpen] = useState(false);
  const singles = useId();
  return (
    <div className="labels-line">
      <Several name={`${line.id} ${line.name}`} ids={positions.map(({ id }) => id)} chosen={chosen} onTurn={onTurn} />
      <button
        type="button"
        className="button more-button"
        aria-expanded={open}
        aria-controls={open ? singles : undefined}
        aria-label={`${say('labels.single')}: ${line.id}`}
        onClick={() => setOpen(!open)}
      >
        <Mark name="down" />
      </button>
      {open ? (
        <ul className="tiles" id={singles}>
          {positions.map(({ id, number }) => (
            <li key={id}>
              <button
                type="button"
                className="button"
                aria-pressed={chosen.has(id)}
                onClick={() => onTurn([id], !chosen.has(id))}
              >
                <span className="sr">{id}, </span>
                {number}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}
