import type { AuditReport } from '@loopwright/jobs/audit-report';
import { runWords, type Voice } from '@loopwright/words';
import { logSections } from './audit/log-parts.ts';
import { lookedSections } from './audit/looked.ts';
import { madeSections } from './audit/made.ts';
import { numberSections } from './audit/numbers.ts';
import { pressSections } from './audit/press.ts';
import { headPayload, proofSections, warningSections } from './audit/proof.ts';
import type { AuditReader, PlotSize } from './audit/reader.ts';
import { voiceOfDisplay } from './card/press-display.ts';
import type { Page } from './page.ts';

/** How the curve is drawn on paper. */
const paperCurve: PlotSize = { width: 500, height: 140 };

/**
 * The record of a press run as a page for somebody who was not there.
 *
 * @param report - what the job gathered
 * @param voice - language and units of the reader
 * @param curve - how large the curve is drawn: on a phone narrower, so that its letters come out larger
 * @returns the page, free of any medium
 */
export function auditPage(report: AuditReport, voice: Voice, curve: PlotSize = paperCurve): Page {
  const display = voiceOfDisplay(report.press, voice);
  const reader: AuditReader = { report, voice, display, curve, words: runWords(voice, report.facts, display) };
  const { record, plant, now, engine, logs } = report;
  const { position } = record;
  return {
    language: voice.language,
    title: voice.say('audit.title', { run: record.run }),
    subtitle: [position.id, ...(position.name ? [position.name] : []), plant.name].join(' · '),
    state: stateOf(reader),
    time: timeOf(reader),
    front: [...warningSections(reader), ...madeSections(reader), ...pressSections(reader), ...lookedSections(reader)],
    back: [...logSections(reader), ...numberSections(reader), ...proofSections(reader)],
    code: headPayload(report),
    codeText: [record.run, ...(logs[0]?.code === undefined ? [] : [logs[0].code])].join(' · '),
    sheetOf: voice.say('audit.sheet-of', { sheet: '{sheet}', sheets: '{sheets}' }),
    footer: [
      voice.say('audit.foot.check'),
      voice.say('card.foot.rules'),
      voice.say('audit.version', { engine, moment: voice.moment(now) }),
    ],
    now,
  };
}

function stateOf({ report, voice, words }: AuditReader): Page['state'] {
  const { ended, deviations, verdict } = report.record;
  if (ended === undefined) return { shape: 'empty', word: voice.say('audit.under-way') };
  const isBare = deviations.some(({ accepted }) => accepted === undefined);
  const shape = ended.how === 'stopped' ? 'past' : isBare ? 'due' : 'running';
  const verdictWord = verdict === undefined ? [] : [words.choice(verdict)];
  return { shape, word: [words.end(ended.how), ...verdictWord].join(' · ') };
}

/** From the first entry to the last, by the wall clock of whoever wrote them. */
function timeOf({ report, voice }: AuditReader): Page['time'] {
  const { began, head, ended } = report.record;
  const seconds = Math.max(0, (Date.parse((ended ?? head).at) - Date.parse(began.at)) / 1000);
  const { value, unit } = voice.show(seconds, 'minutes');
  return {
    label: voice.say('audit.row.lasted'),
    figure: { value, unit, source: voice.say('source.computed'), computed: true },
  };
}
