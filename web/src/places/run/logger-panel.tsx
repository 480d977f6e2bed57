import {
  type LoggerCurve,
  type LoggerOptions,
  type LoggerResult,
  loggerReadings,
  readLoggerCsv,
  switchedOn_s,
  temperatureUnits,
  timeUnits,
} from '@loopwright/jobs/curve-watch';
import { sha256Hex } from '@loopwright/records/log';
import { runChange } from '@loopwright/records/run';
import { loggerWords } from '@loopwright/words';
import { useRef, useState } from 'react';
import { useSpeech } from '../../speech/use-speech.tsx';
import { faultSentence } from '../../store/fault-sentence.ts';
import { BigButton } from './big-button.tsx';
import { useRunShown } from './run-context.tsx';

/** Points that the record shows of a curve; the whole file is kept beside it. */
const kept = 96;
const mega = 1_000_000;
/** A file of a million rows has some forty [bytes]. */
const most_bytes = 200 * mega;

type Answers = NonNullable<LoggerOptions['answers']>;

type Progress =
  | { readonly at: 'idle' }
  | { readonly at: 'reading'; readonly rows: number }
  | { readonly at: 'too-large'; readonly size: number }
  | { readonly at: 'read'; readonly file: File; readonly answers: Answers; readonly result: LoggerResult }
  | { readonly at: 'not-kept'; readonly reason: string };

/** The curve of a logger that lay in the press: read, looked at, kept with its file. */
export function LoggerPanel() {
  const speech = useSpeech();
  const { say } = speech;
  const { show } = useRunShown();
  const words = loggerWords(speech);
  const [progress, setProgress] = useState<Progress>({ at: 'idle' });
  const reading = useRef<AbortController>(undefined);
  const read = async (file: File, answers: Answers = {}) => {
    if (file.size > most_bytes) return setProgress({ at: 'too-large', size: Math.ceil(file.size / mega) });
    const stop = new AbortController();
    reading.current = stop;
    setProgress({ at: 'reading', rows: 0 });
    const result = await readLoggerCsv(textOf(file), {
      answers,
      keep: kept,
      signal: stop.signal,
      onProgress: ({ rows }) => setProgress({ at: 'reading', rows }),
    });
    setProgress(stop.signal.aborted ? { at: 'idle' } : { at: 'read', file, answers, result });
  };
  return (
    <section className="run-panel" data-logger={progress.at}>
      <h1>{words.title}</h1>
      {progress.at === 'idle' ? <p>{say('runs.logger.what')}</p> : null}
      <div role="status">
        {progress.at === 'reading' ? <p>{say('runs.logger.reading', { count: progress.rows })}</p> : null}
        {progress.at === 'too-large' ? (
          <p className="strong">{say('runs.logger.too-large', { size: progress.size, most: most_bytes / mega })}</p>
        ) : null}
        {progress.at === 'not-kept' ? <p className="strong">{progress.reason}</p> : null}
      </div>
      {progress.at === 'read' ? (
        <Found
          {...progress}
          onAnswer={(answers) => void read(progress.file, answers)}
          onFault={(reason) => setProgress({ at: 'not-kept', reason })}
        />
      ) : null}
      <div className="run-row run-back">
        <button
          type="button"
          className="button run-tile"
          onClick={() => (progress.at === 'reading' ? reading.current?.abort() : show({ name: 'step' }))}
        >
          <span>{say(progress.at === 'reading' ? 'photo.stop' : 'runs.back')}</span>
        </button>
        {progress.at === 'reading' ? null : (
          <label className="button run-tile">
            <input
              type="file"
              className="sr"
              accept=".csv,.txt,.tsv,text/*"
              onChange={({ target }) => {
                const [file] = target.files ?? [];
                if (file !== undefined) void read(file);
                target.value = '';
              }}
            />
            <span>{say('runs.logger.choose')}</span>
          </label>
        )}
      </div>
    </section>
  );
}

interface FoundProps {
  readonly file: File;
  readonly answers: Answers;
  readonly result: LoggerResult;
  readonly onAnswer: (answers: Answers) => void;
  readonly onFault: (reason: string) => void;
}

/** What the file says, what had to be guessed, and what cannot be read of it. */
function Found({ file, answers, result, onAnswer, onFault }: FoundProps) {
  const speech = useSpeech();
  const { say } = speech;
  const words = loggerWords(speech);
  const { view, append, show } = useRunShown();
  if (!result.ok) return <p className="run-fault">{words.fault(result.fault)}</p>;
  const { curve, notes, questions } = result;
  const [question] = questions;
  const keep = async () => {
    try {
      const thing = { run: view.run, ...(await keptFile(file)), rows: curve.rows, gaps: curve.gaps.length };
      await append([runChange('run.curve-read', { ...thing, curve: shownCurve(curve) })], [asCsv(file)]);
      show({ name: 'step' });
    } catch (cause) {
      onFault(faultSentence(speech, cause));
    }
  };
  const units =
    question?.code === 'temperature-unit' ? temperatureUnits : question?.code === 'time-unit' ? timeUnits : [];
  return (
    <>
      <p className="strong">{say('runs.logger.found', { count: curve.rows, gaps: curve.gaps.length })}</p>
      {notes.map((note) => (
        <p key={note.code}>{words.note(note)}</p>
      ))}
      {question === undefined ? null : <p className="run-care">{words.question(question)}</p>}
      <div className="run-tiles">
        {units.map((unit) => (
          <button
            key={unit}
            type="button"
            className="button run-tile"
            onClick={() =>
              onAnswer({ ...answers, [question?.code === 'time-unit' ? 'time' : 'temperature']: unit } as Answers)
            }
          >
            <span>{words.unit(unit)}</span>
          </button>
        ))}
      </div>
      <BigButton onTap={() => void keep()}>{say('runs.logger.keep')}</BigButton>
    </>
  );
}

async function keptFile(file: File): Promise<{ readonly sha256: string; readonly bytes: number }> {
  return { sha256: sha256Hex(new Uint8Array(await file.arrayBuffer())), bytes: file.size };
}

/** The store files pictures and curves by what they are said to be. */
function asCsv(file: File): Blob {
  return new Blob([file], { type: 'text/csv' });
}

/** From switching on, as far as the record shows it. */
function shownCurve(curve: LoggerCurve) {
  const readings = loggerReadings(curve, switchedOn_s(curve));
  const tenth = (value: number): number => Math.round(value * 10) / 10;
  const line = (side: 'top_degC' | 'bottom_degC') =>
    readings.map((each) => (each[side] === undefined ? null : tenth(each[side])));
  const bottom = curve.bottom_degC === undefined ? {} : { bottom_degC: line('bottom_degC') };
  return { times_s: readings.map(({ time_s }) => tenth(time_s)), top_degC: line('top_degC'), ...bottom };
}

/** The text of a file, piece by piece. */
async function* textOf(file: File): AsyncGenerator<string> {
  const reader = file.stream().pipeThrough(new TextDecoderStream()).getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    yield value;
  }
}
