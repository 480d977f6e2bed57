import type { Block, Figure } from '@loopwright/sheets';
import { useSpeech } from '../speech/use-speech.tsx';
import { DrawingView } from './drawing-view.tsx';
import { FigureView, SourceView } from './figure-view.tsx';
import { useHowComputed } from './how-computed.tsx';
import { keyed } from './keyed.ts';
import { Mark } from './mark.tsx';
import { RowView } from './row-view.tsx';

/** One block of a section. */
export function BlockView({ block }: { readonly block: Block }) {
  switch (block.kind) {
    case 'figure':
      return <BigFigure label={block.label} figure={block.figure} />;
    case 'figures':
      return <Figures figures={block.figures} />;
    case 'rows':
      return (
        <dl className="rows">
          {keyed(block.rows).map(({ key, item }) => (
            <RowView key={key} row={item} />
          ))}
        </dl>
      );
    case 'text':
      return <p className={block.soft ? 'caption' : block.strong ? 'strong' : undefined}>{block.text}</p>;
    case 'list':
      return <ListView items={block.items} ticks={block.ticks ?? false} />;
    case 'caution':
      return <Caution level={block.level} text={block.text} />;
    case 'drawing':
      return <DrawingView drawing={block.drawing} />;
  }
}

function BigFigure({ label, figure }: { readonly label: string; readonly figure: Figure }) {
  const how = useHowComputed(figure.worked);
  return (
    <div className="big">
      <p>
        <FigureView figure={figure} large /> <span>{label}</span>
      </p>
      <SourceView figure={figure} />
      {how ? <div>{how.button()}</div> : null}
      {how?.opened}
    </div>
  );
}

function Figures({ figures }: { readonly figures: Extract<Block, { kind: 'figures' }>['figures'] }) {
  return (
    <dl className="quads">
      {keyed(figures).map(({ key, item }) => (
        <Quad key={key} label={item.label} figure={item.figure} />
      ))}
    </dl>
  );
}

function Quad({ label, figure }: { readonly label: string; readonly figure: Figure }) {
  const how = useHowComputed(figure.worked);
  const shown = <FigureView figure={figure} />;
  return (
    <div className={how?.opened ? 'quad quad-more' : 'quad'}>
      <dt>{label}</dt>
      <dd>{how ? how.button(shown) : shown}</dd>
      {how?.opened ? <dd className="quad-worked">{how.opened}</dd> : null}
    </div>
  );
}

function ListView({ items, ticks }: { readonly items: readonly string[]; readonly ticks: boolean }) {
  return (
    <ul className={ticks ? 'list list-ticks' : 'list'}>
      {keyed(items).map(({ key, item }) => (
        <li key={key}>{item}</li>
      ))}
    </ul>
  );
}

type Level = Extract<Block, { kind: 'caution' }>['level'];
const levelWord = { stop: 'app.caution.stop', care: 'app.caution.care', note: 'app.caution.note' } as const;

function Caution({ level, text }: { readonly level: Level; readonly text: string }) {
  const { say } = useSpeech();
  return (
    <div className={`caution caution-${level}`}>
      <Mark name={level} />
      <p>
        <span className="sr">{say(levelWord[level])}: </span>
        {text}
      </p>
    </div>
  );
}
