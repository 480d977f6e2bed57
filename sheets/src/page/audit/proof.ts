import type { AuditLog, AuditReport } from '@loopwright/jobs/audit-report';
import { checkpointCode } from '../../code/checkpoint-code.ts';
import type { Block, Row, Section } from '../page.ts';
import { type AuditReader, dotted, grouped, rows, section } from './reader.ts';

/** What must be known before anything below is believed. */
export function warningSections({ report, voice }: AuditReader): Section[] {
  const { record, unseen, notCovered, logs } = report;
  const bare = record.deviations.filter(({ accepted }) => accepted === undefined).length;
  const care = (isSo: boolean, text: string): Block[] => (isSo ? [{ kind: 'caution', level: 'care', text }] : []);
  return [
    section('warnings', voice.say('audit.step.warnings'), [
      { kind: 'caution', level: 'note', text: voice.say('audit.proves') },
      ...care(record.ended === undefined, voice.say('audit.not-ended')),
      ...care(bare > 0, voice.say('audit.not-accepted', { count: bare })),
      ...care(logs.length === 0, voice.say('audit.no-logs')),
      ...care(logs.length > 0 && !report.checked, voice.say('audit.not-checked')),
      ...care(unseen > 0, voice.say('audit.unseen', { count: unseen })),
      ...care(notCovered > 0, voice.say('audit.not-covered', { count: notCovered })),
    ]),
  ];
}

/** How somebody who trusts nobody checks all of this. */
export function proofSections({ report, voice }: AuditReader): Section[] {
  const code = report.logs[0]?.code ?? '–';
  return [
    section('check', voice.say('audit.step.check'), [
      {
        kind: 'list',
        items: (['export', 'verify', 'alone', 'code', 'qr'] as const).map((how) =>
          voice.say(`audit.check.${how}`, { code }),
        ),
      },
    ]),
    section('logs', voice.say('audit.step.logs'), [
      rows(report.logs.flatMap((log) => logRows({ report, voice }, log))),
    ]),
    section('software', voice.say('audit.step.software'), [
      rows([
        { label: voice.say('audit.row.computed-with'), text: `Loopwright ${report.record.software.engine}` },
        {
          label: voice.say('audit.row.made-with'),
          text: `Loopwright ${report.engine}`,
          note: voice.moment(report.now),
        },
        { label: voice.say('audit.row.first-event'), text: grouped(report.record.events[0] ?? '') },
        { label: voice.say('audit.row.last-event'), text: grouped(report.record.head.event) },
      ]),
    ]),
  ];
}

function logRows({ voice }: Pick<AuditReader, 'report' | 'voice'>, log: AuditLog): Row[] {
  const { letter, device, events, first, last, size, code, checkpoint, covered, seenBy, unseen } = log;
  const seen = voice.say('audit.seen', { by: seenBy, unseen });
  return [
    {
      label: voice.say('audit.row.log', { letter }),
      text: grouped(device),
      note: dotted([voice.say('audit.log-events', { count: events, first: first.seq, last: last.seq, size }), seen]),
    },
    {
      label: voice.say('audit.row.code', { letter }),
      text: code ?? '–',
      ...(checkpoint && {
        note: voice.say('audit.log-covered', {
          covered,
          count: events,
          size: checkpoint.size,
          moment: voice.moment(checkpoint.at),
        }),
      }),
    },
  ];
}

/** The payload of the printed code: the whole checkpoint of the log that holds the last entry, for whoever scans it. */
export function headPayload({ logs }: AuditReport): string {
  const [{ key, checkpoint } = {}] = logs;
  return key === undefined || checkpoint === undefined ? '' : checkpointCode({ key, checkpoint });
}
