/** Address of the way from nothing to a plant of one's own. */
export const startAddress = '/start';
