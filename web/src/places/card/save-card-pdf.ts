import type { Page } from '@loopwright/sheets';
export async function saveCardPdf(_page: Page, _paper: 'a5' | 'half-letter'): Promise<void> {}
