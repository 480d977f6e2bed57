import type { AuditReport } from '@loopwright/jobs/audit-report';
import { nobody } from '@loopwright/records/run';
import type { RunWords, Voice } from '@loopwright/words';
import type { Block, Row, Section } from '../page.ts';

/** Size of a drawing's field, in units of the drawing. */
export interface PlotSize {
  readonly width: number;
  readonly height: number;
}

/** What every part of a record's page is made from. */
export interface AuditReader {
  readonly report: AuditReport;
  readonly voice: Voice;
  /** Speaks temperatures as the display of the press does. */
  readonly display: Voice;
  readonly words: RunWords;
  readonly curve: PlotSize;
}

export const rows = (list: readonly Row[]): Block => ({ kind: 'rows', rows: list });

/** A section; one without anything to say says so in a word of its own. */
export function section(id: string, title: string, blocks: readonly Block[]): Section {
  return { id, title, blocks };
}

/** A badge as the record holds it: an alias, never a name. */
export function badgeWord(by: string, voice: Voice): string {
  return by === nobody ? voice.say('audit.no-badge') : by;
}

/** Time of day in UTC; the day in front where it is not the one on which the run began. */
export function clock(at: string, { report, voice }: AuditReader): string {
  const time = at.slice(11, 16);
  return at.slice(0, 10) === report.record.began.at.slice(0, 10) ? time : `${voice.day(at)} ${time}`;
}

/** Where an event stands in the logs: `A 12`, counted from 0. */
export function placeOf(event: string, { places }: AuditReport): string {
  const place = Object.hasOwn(places, event) ? places[event] : undefined;
  return place === undefined ? '' : `${place.log}\u00a0${place.seq}`;
}

/** Parts with a dot between them that never stands at the head of a line. */
export const dotted = (parts: readonly string[]): string => parts.filter((part) => part !== '').join('\u00a0· ');

/** A hash in groups of eight, so that a line can end between them. */
export const grouped = (hash: string): string => hash.replace(/(.{8})(?=.)/g, '$1 ');

/** Who said it, and where it stands. */
export function byWhom(stamp: { readonly event: string; readonly by: string }, { report, voice }: AuditReader): string {
  return dotted([badgeWord(stamp.by, voice), placeOf(stamp.event, report)]);
}

/** Who said it, when, and where it stands. */
export function saidBy(
  stamp: { readonly event: string; readonly by: string; readonly at: string },
  reader: AuditReader,
): string {
  return dotted([clock(stamp.at, reader), byWhom(stamp, reader)]);
}
