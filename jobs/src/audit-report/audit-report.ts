import type { Press } from '@loopwright/plant';
import type { CurveWarning } from '../curve-watch/watch-codes.ts';
import { watchRun } from '../curve-watch/watch-run.ts';
import { type RunFacts, runFacts } from '../press-run/run-facts.ts';
import { type RecordedStep, type RunRecord, runRecord } from '../press-run/run-record.ts';
import type { RunState, Stamp } from '../press-run/run-state.ts';
import { type AuditCycle, auditCycles } from './audit-cycle.ts';
import { type AuditLog, auditLogs, type LogOfRun } from './run-logs.ts';

/** What a report is made with besides the run. */
export interface AuditOptions {
  readonly plant: { readonly id: string; readonly name?: string };
  /** Logs of the devices, as far as the shell knows them. */
  readonly logs: readonly LogOfRun[];
  /** True where all of them were checked and found whole just before. */
  readonly checked: boolean;
  /** Hashes of the pictures that lie with the logs; without it nothing is said of them. */
  readonly pictures?: ReadonlySet<string>;
  /** The moment of making, UTC. */
  readonly now: string;
  /** Version of the program that makes it. */
  readonly engine: string;
}

/** What an auditor is handed of a press run. Plain data. */
export interface AuditReport {
  readonly plant: { readonly id: string; readonly name: string };
  readonly record: RunRecord;
  /** Names and numbers for the sentences of the run. */
  readonly facts: RunFacts;
  /** The press as it stood when the run began. */
  readonly press?: Press;
  /** The day by which its check was due, and whether the run came later. */
  readonly pressCheck?: { readonly dueOn: string; readonly isLate: boolean };
  readonly handOvers: readonly (Stamp & { readonly to: string })[];
  readonly cycles: readonly AuditCycle[];
  /** What the curve of the last time in the press shows. */
  readonly watched: readonly CurveWarning[];
  /** At or below this a press is opened [degC]. */
  readonly open_degC?: number;
  /** Steps nobody settled, or passed with a reason. */
  readonly openPoints: readonly RecordedStep[];
  readonly logs: readonly AuditLog[];
  /** Where an event stands: letter of its log and place in it, from 0. */
  readonly places: Readonly<Record<string, EventRef>>;
  /** Events of the run that no other device has seen. */
  readonly unseen: number;
  /** Events of the run that no head code covers. */
  readonly notCovered: number;
  readonly checked: boolean;
  /** Hashes of photos whose picture does not lie with the logs. */
  readonly picturesMissing: readonly string[];
  readonly now: string;
  readonly engine: string;
}

/** Letter of a log and place in it. */
export interface EventRef {
  readonly log: string;
  readonly seq: number;
}

/**
 * The report of a press run for somebody who was not there.
 *
 * @param state - of the run, folded from the logs
 * @param options - what is known of the logs, and by whom and when it is made
 */
export function auditReport(state: RunState, options: AuditOptions): AuditReport {
  const { plant, logs, checked, pictures, now, engine } = options;
  const record = runRecord(state);
  const facts = runFacts(state);
  const { press } = state.started.things;
  const open = facts.numbers['open']?.value;
  const held = auditLogs(logs, record.head.event);
  return {
    plant: { id: plant.id, name: plant.name ?? plant.id },
    record,
    facts,
    ...(press && { press, ...checkOf(press, record.began.at) }),
    ...(open !== undefined && { open_degC: open }),
    handOvers: handOvers(state),
    cycles: auditCycles(record),
    watched: watchRun(state),
    openPoints: record.steps.filter(({ how }) => how !== 'done'),
    logs: held,
    places: placesOf(logs, held),
    unseen: sum(held.map(({ unseen }) => unseen)),
    notCovered: sum(held.map(({ events, covered }) => events - covered)),
    checked,
    picturesMissing: record.photos.map(({ sha256 }) => sha256).filter((sha256) => pictures?.has(sha256) === false),
    now,
    engine,
  };
}

const day_ms = 86_400_000;

function checkOf({ checkedOn, checkInterval_days }: Press, began: string): Pick<AuditReport, 'pressCheck'> {
  if (checkedOn === undefined) return {};
  const due = Date.parse(checkedOn) + checkInterval_days * day_ms;
  const dueOn = new Date(due).toISOString().slice(0, 10);
  return { pressCheck: { dueOn, isLate: began.slice(0, 10) > dueOn } };
}

function handOvers({ entries }: RunState): AuditReport['handOvers'] {
  return entries.flatMap((entry) => {
    if (entry.type !== 'run.handed-over') return [];
    const { id, by, device, at, boot, up_ms } = entry;
    return [{ event: id, by, device, at, boot, up_ms, to: entry.body.thing.to }];
  });
}

function placesOf(logs: readonly LogOfRun[], held: readonly AuditLog[]): Record<string, EventRef> {
  const refs = held.flatMap(({ device, letter }) =>
    logs
      .filter((log) => log.device === device)
      .flatMap(({ places }) => places.map(({ event, seq }) => [event, { log: letter, seq }] as const)),
  );
  return Object.fromEntries(refs);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
