import { createHash } from 'node:crypto';
import { cardPdf } from '../../src/pdf/card-pdf.ts';
import { demoCard, pageOf } from '../demo-pages.ts';
import { sheetFonts } from '../sheet-fonts.ts';

const bytes = await cardPdf(pageOf(demoCard('QM-04-3'), 'de'), 'A5', sheetFonts);
process.stdout.write(createHash('sha256').update(bytes).digest('hex'));
