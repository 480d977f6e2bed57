import { Refusal } from '@loopwright/engine/refusal';
import { engineVersion } from '@loopwright/engine/version';
import { refusedAnswer } from '@loopwright/jobs/solve';
import type { ArchiveVerdict, ArchiveWarning } from '@loopwright/records/archive';
import { emptyRoot, logRoot, noEvent, seenOf } from '@loopwright/records/log';
import { sentence, type Voice, voice } from '@loopwright/words';

/** Digits of a device's id or a hash that are shown; enough to tell those of a plant apart. */
const shownDigits = 12;
const short = (hash: string): string => hash.slice(0, shownDigits);

/** Tells a verdict to a person: what holds or where it first fails, then each log, then what else is worth knowing. */
export function printVerdict(verdict: ArchiveVerdict | Refusal, speech: Voice): void {
  if (verdict instanceof Refusal) {
    console.error(sentence(speech, verdict));
    return;
  }
  const { failure, logs, warnings } = verdict;
  if (failure === undefined) console.log(speech.say('verdict.ok'));
  else printFailure(verdict, speech);
  for (const { state, witnessed } of failure === undefined ? logs : []) {
    const { device, size } = state;
    console.log(speech.say('verify.log', { device: short(device), size, open: size - witnessed }));
    if (size > 0) console.log(seenSentence(verdict, { device, size }, speech));
  }
  for (const warning of warnings) console.log(sentence(speech, { code: warning.code, path: '', data: told(warning) }));
}

function printFailure({ failure, device: ofCheckpoint }: ArchiveVerdict, speech: Voice): void {
  if (failure === undefined) return;
  const { verdict, ...places } = failure;
  console.log(speech.say(`verdict.${verdict}`, places));
  const { field, blob, witness, device = ofCheckpoint } = { ...noDetail, ...failure };
  if (blob !== undefined) console.log(speech.say('verify.blob', { blob, field: field ?? 'sha256' }));
  else if (field !== undefined) console.log(speech.say('verify.field', { field }));
  if (device !== undefined) console.log(speech.say('verify.device', { device: short(device) }));
  if (witness !== undefined) console.log(speech.say('verify.by-witness', { witness }));
}

interface Detail {
  readonly field?: string | undefined;
  readonly blob?: string | undefined;
  readonly witness?: number | undefined;
  readonly device?: string | undefined;
}

const noDetail: Detail = {};

function seenSentence(
  { countersignatures }: ArchiveVerdict,
  { device, size }: { readonly device: string; readonly size: number },
  speech: Voice,
): string {
  const seen = seenBy(countersignatures, device);
  return speech.say('verify.seen', { device: short(device), by: seen.devices, open: size - seen.size });
}

function seenBy(countersignatures: ArchiveVerdict['countersignatures'], device: string) {
  const seen = seenOf(
    countersignatures.map(({ statement }) => statement),
    device,
  );
  return { devices: seen.by(0), size: seen.size };
}

function told({ code: _, ...data }: ArchiveWarning): Readonly<Record<string, string | number>> {
  return 'blob' in data ? { ...data, blob: short(data.blob) } : data;
}

// Answers are read by scripts, so their sentences do not change with the reader.
const english = voice('en', 'metric');

/** Tells a verdict to a script. */
export function printVerdictJson(verdict: ArchiveVerdict | Refusal): void {
  const answer =
    verdict instanceof Refusal ? refusedAnswer(verdict, (problem) => sentence(english, problem)) : answerOf(verdict);
  console.log(JSON.stringify(answer, null, 2));
}

/** As the topic `log` answers, about the exporting device; the logs of all devices beside it. */
function answerOf({ failure, device, plant, logs, warnings, countersignatures }: ArchiveVerdict): object {
  const each = logs.map(({ state, witnessed }) => {
    const seen = seenBy(countersignatures, state.device);
    return {
      device: state.device,
      size: state.size,
      head: state.head,
      root: logRoot(state),
      witnessed,
      seenBy: seen.devices,
      seenTo: seen.size,
    };
  });
  const { size = 0, head = noEvent, root = emptyRoot, witnessed = 0 } = each[0] ?? {};
  return {
    status: 'ok',
    witnessed,
    ...(device === undefined ? {} : { device }),
    ...(failure ?? { verdict: 'ok' }),
    ...(plant === undefined ? {} : { plant }),
    ...{ size, head, root, logs: each },
    warnings: warnings.map((warning) => ({
      ...warning,
      message: sentence(english, { code: warning.code, path: '', data: told(warning) }),
    })),
    engine: engineVersion,
    used: {},
  };
}
