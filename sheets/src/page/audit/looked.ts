import type { AuditReport } from '@loopwright/jobs/audit-report';
import { defectCodes, defects } from '@loopwright/jobs/inspection';
import { inspectionWords, isQuantityKind, type Voice } from '@loopwright/words';
import type { Block, Row, Section } from '../page.ts';
import { type AuditReader, badgeWord, dotted, grouped, rows, saidBy, section } from './reader.ts';

/** What was measured, what departed from the card, what was seen, how tight it is, what is still open. */
export function lookedSections(reader: AuditReader): Section[] {
  const { voice } = reader;
  return [
    section('measures', voice.say('audit.step.measures'), listed(reader, measures(reader), 'audit.no-measures')),
    section('deviations', voice.say('audit.step.deviations'), deviations(reader)),
    section('inspection', voice.say('audit.step.inspection'), [rows(inspection(reader))]),
    section('photos', voice.say('audit.step.photos'), listed(reader, photos(reader), 'audit.no-photos')),
    section('tension', voice.say('audit.step.tension'), listed(reader, tension(reader), 'audit.no-tension')),
    section('open', voice.say('audit.step.open'), listed(reader, openPoints(reader), 'audit.nothing-open')),
  ];
}

function listed(
  { voice }: AuditReader,
  list: readonly Row[],
  none: 'audit.no-measures' | 'audit.no-photos' | 'audit.no-tension' | 'audit.nothing-open',
): Block[] {
  return [list.length > 0 ? rows(list) : { kind: 'text', text: voice.say(none), soft: true }];
}

/** A number of the record with its unit, as far as its kind is known here. */
export function writtenAs(value: number, kind: string, voice: Voice): string {
  return isQuantityKind(kind) ? voice.write(value, kind) : voice.number(value);
}

function measures(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  return report.record.measures.map((each) => {
    const { measure, kind, value, expected } = each;
    const card = expected && voice.say('audit.card-says', { value: writtenAs(expected.value, kind, voice) });
    return {
      label: words.measure(measure),
      text: writtenAs(value, kind, voice),
      note: dotted([...(card === undefined ? [] : [card]), saidBy(each, reader)]),
    };
  });
}

function deviations(reader: AuditReader): Block[] {
  const { report, voice, words } = reader;
  const { deviations: all } = report.record;
  if (all.length === 0) return [{ kind: 'text', text: voice.say('audit.no-deviations'), soft: true }];
  const row = (each: (typeof all)[number]): Row => {
    const reason = each.reason === undefined ? [] : [words.reason(each.reason)];
    const accepted =
      each.accepted === undefined
        ? words.line('not-accepted')
        : `${words.line('accepted', { badge: badgeWord(each.accepted.by, voice) })} ${saidBy(each.accepted, reader)}`;
    return {
      label: voice.say(`audit.level.${each.level}`),
      text: words.deviation(each),
      note: dotted([...reason, saidBy(each.said, reader), accepted]),
    };
  };
  return [rows(all.map(row))];
}

function inspection(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  const { inspected } = report.record;
  if (inspected === undefined) return [{ label: voice.say('audit.row.verdict'), text: voice.say('audit.not-said') }];
  const { verdict, proposed, reason, findings } = inspected;
  const note = [
    ...(proposed === undefined ? [] : [voice.say('audit.proposed', { verdict: words.choice(proposed) })]),
    ...(reason === undefined ? [] : [words.reason(reason)]),
    saidBy(inspected, reader),
  ];
  return [
    { label: voice.say('audit.row.verdict'), text: words.choice(verdict), note: dotted(note) },
    ...(findings.length === 0
      ? [{ label: voice.say('audit.row.findings'), text: voice.say('audit.no-findings') }]
      : findings.map((finding) => findingRow(reader, finding))),
  ];
}

type Finding = NonNullable<AuditReport['record']['inspected']>['findings'][number];

function findingRow({ voice, words }: AuditReader, { defect, face, value }: Finding): Row {
  const where = face === undefined ? [] : [words.choice(face)];
  const known = defectCodes.find((code) => code === defect);
  if (known !== undefined) {
    const said = inspectionWords(voice);
    const { measure } = defects[known];
    const number = value === undefined ? [] : [measure ? said.value(measure, value) : voice.number(value, 4)];
    return { label: voice.say('audit.row.finding'), text: said.name(known), note: dotted([...where, ...number]) };
  }
  const number = value === undefined ? [] : [voice.number(value, 4)];
  return { label: voice.say('audit.row.finding'), text: defect, note: dotted([...where, ...number]) };
}

function photos(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  const taken = report.record.photos.map(
    (photo): Row => ({
      label: words.choice(photo.face),
      text: grouped(photo.sha256),
      note: dotted([
        saidBy(photo, reader),
        voice.say(report.picturesMissing.includes(photo.sha256) ? 'audit.photo-missing' : 'audit.photo-kept'),
      ]),
    }),
  );
  const none = Object.entries(report.record.noPhoto).map(
    ([face, reason]): Row => ({
      label: words.choice(face),
      text: voice.say('audit.no-photo'),
      note: words.reason(reason),
    }),
  );
  return [...taken, ...none];
}

function tension(reader: AuditReader): Row[] {
  const { report, voice } = reader;
  const { tension: set, retensionOn } = report.record;
  const percent = (value: number): string => voice.write(value, 'percent');
  const inputs = set?.elongation.inputs ?? {};
  return [
    ...(set === undefined
      ? []
      : [
          {
            label: voice.say('audit.row.elongation'),
            text: percent(set.elongation.value),
            note: dotted([
              ...(set.wanted === undefined ? [] : [voice.say('audit.wanted', { value: percent(set.wanted.value) })]),
              voice.say('audit.marks', {
                before: voice.write(inputs['m'] ?? 0, 'shortLength'),
                after: voice.write(inputs['s'] ?? 0, 'shortLength'),
              }),
              saidBy(set.marks, reader),
            ]),
          },
        ]),
    ...(retensionOn === undefined ? [] : [{ label: voice.say('audit.row.retension'), text: voice.day(retensionOn) }]),
  ];
}

function openPoints(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  return report.openPoints.map(({ step, how, said, reason }) => ({
    label: words.step(step),
    text: voice.say(how === 'open' ? 'audit.how.open' : 'audit.how.passed'),
    note: dotted([...(reason === undefined ? [] : [words.reason(reason)]), ...(said ? [saidBy(said, reader)] : [])]),
  }));
}
