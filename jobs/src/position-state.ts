/** What a person sees of a position first: shape, word, colour, in this order. */
export const positionStates = ['running', 'retension-due', 'past-life', 'torn', 'empty'] as const;
export type PositionState = (typeof positionStates)[number];
