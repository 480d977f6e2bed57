/** Address of the place where a label is scanned. */
export const scanAddress = '/scan';
