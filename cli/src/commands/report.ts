import { Refusal } from '@loopwright/engine/refusal';
import { engineVersion } from '@loopwright/engine/version';
import { type AuditReport, auditReport, logsOfRun } from '@loopwright/jobs/audit-report';
import type { RunState } from '@loopwright/jobs/press-run';
import { readArchive } from '@loopwright/records/archive';
import { auditPage, pageText } from '@loopwright/sheets';
import { sentence, type UnitSystem, type Voice, voice } from '@loopwright/words';
import type { Command } from 'commander';
import { momentOf, textWidth } from '../asked-of-plant.ts';
import { nodeVerifier } from '../node-verifier.ts';
import { choice, languageOption, unitsOption } from '../options.ts';
import type { End } from '../program.ts';
import { readRecord } from '../read-record.ts';
import { type ReadRuns, readRuns } from '../read-runs.ts';
import { Stop } from '../stop.ts';
import { writeWhole } from '../write-file.ts';
import { printVerdict } from './say-verdict.ts';
import { withWitnesses } from './verify.ts';

const papers = ['a4', 'letter'] as const;

interface ReportCall {
  readonly run?: string;
  readonly out?: string;
  readonly paper: (typeof papers)[number];
  readonly witnesses?: string;
  readonly units: UnitSystem;
  readonly now?: string;
  readonly worked?: true;
}

/** `loopwright report FILE`: the record of a press run, to read here or as PDF. Nothing is made of a file that fails. */
export function addReport(root: Command, speech: Voice, end: End): void {
  root
    .command('report')
    .description(speech.say('audit.terminal'))
    .argument('<file>', speech.say('terminal.verify-file'))
    .option('--run <run>', speech.say('audit.terminal-run'))
    .option('--out <file>', speech.say('audit.terminal-out'))
    .addOption(choice('--paper <paper>', speech.say('audit.terminal-paper'), { allowed: papers, speech }).default('a4'))
    .option('--witnesses <file>', speech.say('terminal.witnesses'))
    .addOption(languageOption(speech))
    .addOption(unitsOption(speech))
    .option('--now <moment>', speech.say('audit.terminal-now'))
    .option('--worked', speech.say('terminal.worked'))
    .action(async (file: string, call: ReportCall) => {
      end.exitCode = (await showReport(file, call, speech)) ? 0 : 1;
    });
}

async function showReport(file: string, call: ReportCall, speech: Voice): Promise<boolean> {
  const now = momentOf(call.now, speech);
  const read = await runsOf(file, call.witnesses, speech);
  if (read === undefined) return false;
  const report = reportOn(runAsked(read, file, call.run, speech), read, now);
  const page = auditPage(report, voice(speech.language, call.units));
  if (call.out === undefined) {
    console.log(pageText(page, textWidth(), { worked: call.worked === true }));
    return true;
  }
  // The PDF maker is large, and many records are read here.
  const { makeFlowPdf } = await import('../make-pdf.ts');
  await writeWhole(call.out, await makeFlowPdf(page, call.paper), speech);
  console.log(speech.say('terminal.wrote', { file: call.out }));
  const { code } = report.logs[0] ?? {};
  if (code !== undefined) console.log(speech.say('audit.head-code', { code }));
  return true;
}

/** The runs of a file that holds; else what does not hold is said. */
async function runsOf(file: string, witnesses: string | undefined, speech: Voice): Promise<ReadRuns | undefined> {
  try {
    const content = await withWitnesses(readArchive(await readRecord(file, speech)), witnesses, speech);
    const read = await readRuns(content, nodeVerifier());
    if (read.verdict.failure === undefined) return read;
    printVerdict(read.verdict, speech);
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    console.error(sentence(speech, cause));
  }
  return undefined;
}

function runAsked({ runs }: ReadRuns, file: string, asked: string | undefined, speech: Voice): RunState {
  const [only, ...others] = runs.values();
  if (only === undefined) throw new Stop(speech.say('audit.no-run', { file }), 1);
  const listed = (said: string): string =>
    [said, ...[...runs.values()].map((run) => `  ${lineOf(run, speech)}`)].join('\n');
  if (asked === undefined && others.length > 0) throw new Stop(listed(speech.say('audit.several-runs', { file })), 2);
  const found = asked === undefined ? only : runs.get(asked);
  if (found === undefined) throw new Stop(listed(speech.say('audit.unknown-run', { file, value: asked ?? '' })), 1);
  return found;
}

function lineOf({ id, started, end }: RunState, speech: Voice): string {
  const how = end === undefined ? 'audit.under-way' : (`run.end.${end.how}` as const);
  return [id, started.things.position.id, speech.moment(started.at), speech.say(how)].join(' · ');
}

function reportOn(state: RunState, { events, logs, sightings, plant, pictures }: ReadRuns, now: string): AuditReport {
  return auditReport(state, {
    plant,
    logs: logsOfRun(state.id, events, logs, sightings),
    checked: true,
    pictures,
    now,
    engine: engineVersion,
  });
}
