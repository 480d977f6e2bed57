import type { Row, Section } from '../page.ts';
import { type AuditReader, badgeWord, byWhom, clock, rows, saidBy, section } from './reader.ts';

/** What was made, who had a hand in it, when. */
export function madeSections(reader: AuditReader): Section[] {
  const { voice } = reader;
  return [
    section('made', voice.say('audit.step.made'), [rows([...place(reader), ...things(reader), ...tools(reader)])]),
    section('who', voice.say('audit.step.who'), [rows(who(reader))]),
    section('when', voice.say('audit.step.when'), [rows(when(reader))]),
  ];
}

type Said = readonly [label: string, text: string | undefined, note?: string | undefined];

const known = (list: readonly Said[]): Row[] =>
  list.flatMap(([label, text, note]) => (text === undefined ? [] : [{ label, text, ...(note ? { note } : {}) }]));

function place({ report, voice }: AuditReader): Row[] {
  const { position, line } = report.record;
  return known([
    [voice.say('audit.row.plant'), report.plant.name],
    [voice.say('audit.row.line'), line],
    [voice.say('audit.row.position'), position.id, position.name],
  ]);
}

function things({ report, voice }: AuditReader): Row[] {
  const { belt, missing } = report.record;
  const lot = belt.lot === undefined ? undefined : voice.say('card.gather.lot', { lot: belt.lot });
  return known([
    [voice.say('audit.row.belt'), belt.id, belt.dataSheet],
    [voice.say('audit.row.roll'), belt.roll, lot],
    [
      voice.say('audit.row.missing'),
      missing.length > 0 ? missing.map((code) => missingWord(code, voice)).join(' ') : undefined,
    ],
  ]);
}

function missingWord(code: string, voice: AuditReader['voice']): string {
  const key = `missing.${code}`;
  return voice.has(key) ? voice.say(key) : code;
}

function tools({ report, voice }: AuditReader): Row[] {
  const { die, template, press, recipe, recipeCompared, software } = report.record;
  const { pressCheck } = report;
  const checked = press?.checkedOn === undefined ? voice.say('audit.never-checked') : voice.day(press.checkedOn);
  const due =
    pressCheck &&
    voice.say(pressCheck.isLate ? 'audit.check-late' : 'audit.check-due', { day: voice.day(pressCheck.dueOn) });
  const compared =
    recipeCompared && voice.say('audit.compared', { answer: voice.say(`run.choice.${recipeCompared.answer}`) });
  return known([
    [voice.say('audit.row.die'), die],
    [voice.say('audit.row.template'), template],
    [voice.say('audit.row.press'), press?.name, press?.id],
    [voice.say('audit.row.press-check'), press && checked, due],
    [voice.say('audit.row.recipe'), recipe && `${recipe.id} · ${recipe.revision}`, compared],
    [voice.say('audit.row.card'), software.card],
  ]);
}

function who(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  const people = report.record.who.map(
    ({ badge, from, to, events }): Row => ({
      label: badgeWord(badge, voice),
      text: `${clock(from, reader)}–${clock(to, reader)}`,
      note: voice.say('audit.entries', { count: events }),
    }),
  );
  const handed = report.handOvers.map(
    (stamp): Row => ({
      label: voice.say('audit.row.handed-over'),
      text: badgeWord(stamp.to, voice),
      note: saidBy(stamp, reader),
    }),
  );
  return [{ label: voice.say('audit.row.people'), text: words.people(report.record.people) }, ...people, ...handed];
}

function when(reader: AuditReader): Row[] {
  const { report, voice, words } = reader;
  const { began, ended, head } = report.record;
  const reason = ended?.reason;
  return [
    { label: voice.say('audit.row.began'), text: voice.moment(began.at), note: byWhom(began, reader) },
    ended
      ? {
          label: [words.end(ended.how), ...(reason === undefined ? [] : [words.reason(reason)])].join(': '),
          text: voice.moment(ended.at),
          note: byWhom(ended, reader),
        }
      : { label: voice.say('audit.row.last-entry'), text: voice.moment(head.at), note: byWhom(head, reader) },
    { label: voice.say('audit.row.devices'), text: String(new Set(report.logs.map(({ device }) => device)).size) },
  ];
}
