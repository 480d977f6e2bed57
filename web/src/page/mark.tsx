import type { StateShape } from '@loopwright/sheets';

/** Everything drawn as a small mark in the text: states, cautions, arrows. */
export type MarkName = StateShape | 'care' | 'stop' | 'note' | 'down' | 'left' | 'scan' | 'settings';

// Drawn, not typed: the typeface has none of these. 20 x 20 units.
const paths: Readonly<Record<MarkName, string>> = {
  running: 'M10 2a8 8 0 1 1 0 16a8 8 0 1 1 0-16z',
  due: 'M10 1.5L19.5 18.5H.5z',
  past: 'M10 0L20 10L10 20L0 10z',
  torn: 'M1 4L4 1L10 7L16 1L19 4L13 10L19 16L16 19L10 13L4 19L1 16L7 10z',
  empty: 'M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18zM10 4a6 6 0 1 0 0 12a6 6 0 1 0 0-12z',
  care: 'M10 .5L20 19H0zM10 4.5L3.2 17H16.8zM9 8.5H11L10.7 13H9.3zM9 14H11V16H9z',
  stop: 'M6 0H14L20 6V14L14 20H6L0 14V6zM5 8.5V11.5H15V8.5z',
  note: 'M10 0a10 10 0 1 1 0 20a10 10 0 1 1 0-20zM10 2a8 8 0 1 0 0 16a8 8 0 1 0 0-16zM9 5H11V7H9zM9 8.5H11V15H9z',
  down: 'M1 6L3.5 3.5L10 10L16.5 3.5L19 6L10 15z',
  scan: 'M0 0H7V2.5H2.5V7H0zM13 0H20V7H17.5V2.5H13zM0 13H2.5V17.5H7V20H0zM17.5 13H20V20H13V17.5H17.5zM5 5H9V9H5zM11 5H15V9H11zM5 11H9V15H5zM11 11H15V15H11z',
  settings: 'M0 3H3V1H7V3H20V5H7V7H3V5H0zM0 9H12V7H16V9H20V11H16V13H12V11H0zM0 15H5V13H9V15H20V17H9V19H5V17H0z',
  left: 'M14 1L16.5 3.5L10 10L16.5 16.5L14 19L5 10z',
};

/** A small mark in the colour of the text beside it. The words beside it say the same, so it is silent. */
export function Mark({ name }: { readonly name: MarkName }) {
  return (
    <svg className="mark" viewBox="0 0 20 20" aria-hidden="true" focusable="false">
      <path d={paths[name]} fill="currentColor" fillRule="evenodd" />
    </svg>
  );
}
