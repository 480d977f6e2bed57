import type { Row } from '@loopwright/sheets';
import { FigureView } from './figure-view.tsx';
import { useHowComputed } from './how-computed.tsx';

const longText = 24;

/** A labelled row: the number is its own switch when it was computed; long words go under their label. */
export function RowView({ row }: { readonly row: Row }) {
  const how = useHowComputed(row.figure?.worked);
  const shown = row.figure === undefined ? null : <FigureView figure={row.figure} />;
  const words = row.figure === undefined && (row.text?.length ?? 0) > longText;
  return (
    <div className={words ? 'row row-words' : 'row'}>
      <dt>{row.label}</dt>
      <dd className="row-value">
        {how ? how.button(shown) : shown}
        {row.text === undefined ? null : <span className="row-text">{row.text}</span>}
      </dd>
      <RowMore note={row.note} caption={row.figure?.uncalibrated} />
      {how?.opened ? <dd className="row-more">{how.opened}</dd> : null}
    </div>
  );
}

function RowMore({ note, caption }: { readonly note: string | undefined; readonly caption: string | undefined }) {
  const words = [note, caption].filter((text) => text !== undefined && text !== '').join(' · ');
  return words === '' ? null : <dd className="row-more caption">{words}</dd>;
}
