import type { Figure } from '@loopwright/sheets';

/** A number as people read it: value, unit, range behind it. */
export function FigureView({ figure, large = false }: { readonly figure: Figure; readonly large?: boolean }) {
  const parts = (
    <>
      <span className="figure-value">{figure.value}</span>
      <UnitView unit={figure.unit} />
      {figure.range === undefined ? null : <span className="figure-range"> {figure.range}</span>}
    </>
  );
  return <span className={large ? 'figure big-line' : 'figure'}>{parts}</span>;
}

function UnitView({ unit }: { readonly unit: string }) {
  return unit === '' ? null : <span className="figure-unit"> {unit}</span>;
}

/** Where a number comes from, and whether a test has confirmed it. */
export function SourceView({ figure }: { readonly figure: Figure }) {
  const words = [figure.source, figure.uncalibrated].filter((text) => text !== undefined && text !== '');
  return words.length === 0 ? null : <p className="caption">{words.join(' · ')}</p>;
}
