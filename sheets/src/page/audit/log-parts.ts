import type { WhyNot } from '@loopwright/jobs/press-run';
import type { Row, Section } from '../page.ts';
import { type AuditReader, placeOf, rows, saidBy, section } from './reader.ts';

/** Every step, and what else stands in the log: notes, what was taken back, what changed nothing. */
export function logSections(reader: AuditReader): Section[] {
  const { report, voice } = reader;
  const { notes, takenBack, passedOver } = report.record;
  const parts = [
    section('steps', voice.say('audit.step.steps'), [rows(steps(reader))]),
    section('notes', voice.say('audit.step.notes'), [
      rows(notes.map((each) => ({ label: stepWord(reader, each.step), text: each.note, note: saidBy(each, reader) }))),
    ]),
    section('taken-back', voice.say('audit.step.taken-back'), [
      rows(takenBack.map((each) => ({ label: typeWord(each.type, reader), text: saidBy(each, reader) }))),
    ]),
    section('passed-over', voice.say('audit.step.passed-over'), [
      rows(passedOver.map(({ event, why }) => passedRow(reader, event, why))),
    ]),
  ];
  return parts.filter(({ blocks }) => blocks.some((block) => block.kind === 'rows' && block.rows.length > 0));
}

function steps(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  return report.record.steps.map(({ step, how, said }) => ({
    label: words.step(step),
    text: how === 'done' ? '' : voice.say(`audit.how.${how}`),
    ...(said && { note: saidBy(said, reader) }),
  }));
}

function stepWord({ voice, words }: AuditReader, step: string | undefined): string {
  return step === undefined ? voice.say('audit.row.note') : words.step(step);
}

/** What kind of entry it was; a kind that is newer than these words goes by its own name. */
function typeWord(type: string, { voice }: AuditReader): string {
  const key = `audit.type.${type.replace(/^run\./, '')}`;
  return voice.has(key) ? voice.say(key) : type;
}

function passedRow(reader: AuditReader, event: string, why: WhyNot): Row {
  const { words, report, voice } = reader;
  const place = placeOf(event, report);
  return {
    label: place === '' ? event.slice(0, 12) : voice.say('audit.entry', { place }),
    text: words.blocked(why),
  };
}
