/**
 * Where the typeface lies, as module specifiers. Whoever makes a PDF reads both files and passes the bytes on:
 * Node with `createRequire(import.meta.url).resolve(…)`, a browser with the address its bundler gives.
 */
export const sheetFontFiles = {
  regular: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
  bold: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf',
} as const;
