import type { Badge } from '@loopwright/plant';

// 20 x 20 units, drawn because the typeface has none of these.
const paths: Readonly<Record<Badge['shape'], string>> = {
  triangle: 'M10 1L19.5 18.5H.5z',
  circle: 'M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18z',
  square: 'M2 2H18V18H2z',
  diamond: 'M10 0L20 10L10 20L0 10z',
  star: 'M10 0L12.6 6.9L20 7.2L14.2 11.8L16.2 19L10 14.8L3.8 19L5.8 11.8L0 7.2L7.4 6.9z',
  hexagon: 'M5 1.4H15L20 10L15 18.6H5L0 10z',
};

const isShape = (shape: string): shape is Badge['shape'] => Object.hasOwn(paths, shape);

/** The shape of a badge. Its word stands beside it, so it is silent. */
export function BadgeShape({ shape }: { readonly shape: string }) {
  if (!isShape(shape)) return null;
  return (
    <svg className="mark badge-shape" viewBox="0 0 20 20" aria-hidden="true" focusable="false">
      <path d={paths[shape]} fill="currentColor" />
    </svg>
  );
}
