import type { AuditCycle, AuditMark, AuditReading } from '@loopwright/jobs/audit-report';
import { silentCauses } from '@loopwright/jobs/curve-watch';
import { sentence, watchWords } from '@loopwright/words';
import type { Block, Row, Section } from '../page.ts';
import { auditCurve } from './curve.ts';
import { type AuditReader, dotted, rows, saidBy, section } from './reader.ts';

/** Each time in the press: the curve across the sheet, then its moments and readings. */
export function pressSections(reader: AuditReader): Section[] {
  const { report, voice } = reader;
  if (report.cycles.length === 0)
    return [section('curve', voice.say('audit.step.curve'), [soft(voice.say('audit.no-cycle'))])];
  const cycles = report.cycles.flatMap((cycle) => {
    const drawing = auditCurve(reader, cycle);
    const attempt = report.cycles.length > 1 ? ` · ${reader.words.line('attempt', { count: cycle.attempt })}` : '';
    return [
      section(`curve-${cycle.attempt}`, voice.say('audit.step.curve') + attempt, [
        ...notPredicted(reader),
        ...(drawing ? [{ kind: 'drawing', drawing } as const] : []),
      ]),
      section(`moments-${cycle.attempt}`, voice.say('audit.step.moments') + attempt, [rows(moments(reader, cycle))]),
      section(`readings-${cycle.attempt}`, voice.say('audit.step.readings') + attempt, readings(reader, cycle)),
    ].filter(({ blocks }) => blocks.length > 0);
  });
  return [...cycles, watched(reader)];
}

/** What the curve shows, what it may come from, and what no curve shows. */
function watched({ report, voice, display }: AuditReader): Section {
  const said = watchWords(voice, display);
  const items = report.watched.map((warning) => [said.seen(warning), said.mayBe(warning)].filter(Boolean).join(' '));
  return section('watched', said.title, [
    items.length > 0 ? { kind: 'list', items } : soft(voice.say('audit.nothing-watched')),
    soft(said.silent(silentCauses)),
  ]);
}

const soft = (text: string): Block => ({ kind: 'text', text, soft: true });

function notPredicted({ report, voice, display }: AuditReader): Block[] {
  const cycle = report.record.predicted?.cycle;
  if (cycle === undefined) return [soft(voice.say('audit.not-predicted'))];
  if (cycle.status === 'ok') return [];
  return [soft(`${voice.say('audit.not-predicted')} ${sentence(display, { code: cycle.code, path: '', data: {} })}`)];
}

function moments(reader: AuditReader, { marks, openedEarly }: AuditCycle): Row[] {
  const { voice } = reader;
  return marks.map((each) => ({
    label: voice.say(`audit.mark.${each.mark}`),
    text: real(reader, each),
    note: dotted([
      expected(reader, each),
      each.mark === 'opened' && openedEarly ? voice.say('audit.opened-early') : '',
    ]),
  }));
}

function real({ voice, words }: AuditReader, { real: said }: AuditMark): string {
  if (said === undefined) return voice.say('audit.not-said');
  const time = voice.write(said.value_s, 'time');
  return said.sure === 'steady' ? time : `${time} (${words.sure(said.sure)})`;
}

function expected({ voice, display, report }: AuditReader, { mark, expected: computed }: AuditMark): string {
  if (mark === 'opened') {
    const { open_degC } = report;
    return open_degC === undefined
      ? ''
      : voice.say('audit.line.open', { temperature: display.write(open_degC, 'temperature') });
  }
  if (computed === undefined) return '';
  const { value, low, high } = computed;
  return voice.say('audit.computed-range', {
    value: voice.write(value, 'time'),
    low: voice.write(low, 'time'),
    high: voice.write(high, 'time'),
  });
}

function readings(reader: AuditReader, { readings: read, logged }: AuditCycle): Block[] {
  const { voice } = reader;
  const { rows: count, gaps, sha256 } = logged ?? { rows: 0, gaps: 0, sha256: '' };
  return [
    ...(logged ? [soft(voice.say('audit.logged', { count, gaps, sha256: sha256.slice(0, 16) }))] : []),
    read.length === 0 ? soft(voice.say('audit.no-readings')) : rows(read.map((each) => readingRow(reader, each))),
  ];
}

function readingRow(reader: AuditReader, reading: AuditReading): Row {
  const { voice, display } = reader;
  const { mark, top_degC, bottom_degC, time_s, expectedTop_degC, expectedBottom_degC } = reading;
  const both = (top: number, bottom: number) => ({
    top: display.write(top, 'temperature'),
    bottom: display.write(bottom, 'temperature'),
  });
  const time = time_s === undefined ? '' : ` ${voice.write(time_s, 'time')}`;
  const computed =
    expectedTop_degC === undefined || expectedBottom_degC === undefined
      ? []
      : [voice.say('audit.reading-computed', both(expectedTop_degC, expectedBottom_degC))];
  return {
    label: voice.say(`audit.reading.${mark}`) + time,
    text: voice.say('audit.reading', both(top_degC, bottom_degC)),
    note: dotted([...computed, saidBy(reading, reader)]),
  };
}
