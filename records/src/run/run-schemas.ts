import {
  beltSchema,
  dieSchema,
  lineSchema,
  positionSchema,
  pressSchema,
  recipeSchema,
  rollSchema,
  sources,
  templateSchema,
} from '@loopwright/plant';
import * as z from 'zod';
import {
  displayWords,
  dryAnswers,
  readingMarks,
  recipeAnswers,
  runFaces,
  runMeasures,
  runReasons,
  runSigns,
  runSteps,
  verdicts,
} from './run-codes.ts';
import type { RunType } from './run-types.ts';

const code = z.string().min(1).max(60);
const text = z.string().max(300);
const count = (most: number) => z.number().int().min(0).max(most);
const time_s = z.number().min(0).max(1_000_000);
/** What a platen can be: colder than any hall, hotter than any recipe. */
const platen_degC = z.number().min(-40).max(300);
const hash = z.string().regex(/^[0-9a-f]{64}$/);
/** Ids of runs are made by `startRun`, never typed. */
const run = z.string().regex(/^[0-9A-Z]{8,32}$/);
const event = hash;
const step = z.enum(runSteps);
const reason = z.enum(runReasons);

/** A number that a run rests on, with the formula and the inputs that gave it. */
export const runNumberSchema = z.strictObject({
  name: code,
  kind: code,
  value: z.number(),
  low: z.number().optional(),
  high: z.number().optional(),
  source: z.enum(sources),
  formula: code.optional(),
  inputs: z.record(code, z.number()).optional(),
});

const numbers = z.array(runNumberSchema).max(120);

/** The things of the plant as they stood when the run began. */
const thingsSchema = z.strictObject({
  position: positionSchema,
  line: lineSchema,
  belt: beltSchema,
  die: dieSchema.optional(),
  template: templateSchema.optional(),
  press: pressSchema.optional(),
  recipe: recipeSchema.optional(),
  roll: rollSchema.optional(),
});

const ranged_s = z.strictObject({ value: time_s, low: time_s, high: time_s });
const curveLine = z.array(z.number()).max(200);

/** Temperatures over time from switching on [degC, s]; all lines as long as `times_s`. */
const curveSchema = z.strictObject({
  times_s: z.array(time_s).max(200),
  top_degC: curveLine,
  bottom_degC: curveLine,
  belt_degC: curveLine,
});

/** A platen as a logger kept it; nothing is put where nothing was logged. */
const loggedLine = z.array(platen_degC.nullable()).max(400);

const measured = z.strictObject({
  measure: z.enum(runMeasures),
  /** In SI: m, Pa, V, degC, ohm. */
  value: z.number().min(-100).max(1e15),
});

/** The form of each event's `thing`, version 1. */
export const runSchemas = {
  'run.started': z.strictObject({
    run,
    people: z.literal([1, 2]),
    /** Its place among the runs that are open on this device, from 0. */
    slot: count(runSigns.length - 1),
    engine: code,
    /** Fingerprint of the card's inputs. */
    card: code,
    things: thingsSchema,
    steps: z.array(step).min(1).max(runSteps.length),
    numbers,
    /** What the plant did not know at the start. */
    missing: z.array(code).max(40),
  }),
  'run.predicted': z.strictObject({
    run,
    engine: code,
    revision: code,
    cycle: z.discriminatedUnion('status', [
      z.strictObject({
        status: z.literal('ok'),
        ready_s: ranged_s,
        holdEnd_s: ranged_s,
        open_s: ranged_s,
        curve: curveSchema,
      }),
      z.strictObject({ status: z.literal('none'), code: code }),
    ]),
    numbers,
  }),
  'run.people-said': z.strictObject({ run, people: z.literal([1, 2]) }),
  'run.steps-done': z.strictObject({
    run,
    steps: z.array(step).min(1).max(runSteps.length),
  }),
  'run.step-passed': z.strictObject({ run, step, reason }),
  'run.dry-said': z.strictObject({ run, answer: z.enum(dryAnswers), reason: reason.optional() }),
  'run.recipe-compared': z.strictObject({
    run,
    answer: z.enum(recipeAnswers),
    /** What the display shows, as far as it differs and somebody said it. */
    top_degC: platen_degC.optional(),
    bottom_degC: platen_degC.optional(),
    dwell_s: time_s.optional(),
    pressure_Pa: z.number().min(0).max(2_000_000).optional(),
    reason: reason.optional(),
  }),
  'run.roll-changed': z.strictObject({ run, roll: rollSchema }),
  'run.measured': z.strictObject({ run, ...measured.shape }),
  'run.display-read': z.strictObject({
    run,
    mark: z.enum(readingMarks),
    top_degC: platen_degC,
    bottom_degC: platen_degC,
  }),
  'run.display-said': z.strictObject({ run, says: z.enum(displayWords) }),
  'run.curve-read': z.strictObject({
    run,
    /** Of the logger's file as it is kept with the event. */
    sha256: hash,
    bytes: count(200_000_000),
    rows: count(10_000_000),
    gaps: count(10_000_000),
    /** What is kept of it to be seen: from switching on, what was not logged is empty. */
    curve: z.strictObject({
      times_s: z.array(time_s).min(2).max(400),
      top_degC: loggedLine,
      bottom_degC: loggedLine.optional(),
    }),
  }),
  'run.cycle-stopped': z.strictObject({
    run,
    reason: z.enum(['mains-lost', 'breaker', 'press-fault', 'pressure-lost']),
  }),
  'run.opened-early': z.strictObject({
    run,
    top_degC: platen_degC.optional(),
    bottom_degC: platen_degC.optional(),
  }),
  'run.photo-taken': z.strictObject({
    run,
    face: z.enum(runFaces),
    /** Of the picture as it is kept: without place and camera, scaled. */
    sha256: hash,
    bytes: count(50_000_000),
    width_px: count(20_000),
    height_px: count(20_000),
  }),
  'run.no-photo': z.strictObject({ run, face: z.enum(runFaces), reason }),
  'run.inspected': z.strictObject({
    run,
    verdict: z.enum(verdicts),
    /** What the catalogue of defects proposed, when it was asked. */
    proposed: z.enum(verdicts).optional(),
    findings: z
      .array(z.strictObject({ defect: code, face: z.enum(runFaces).optional(), value: z.number().optional() }))
      .max(40),
    /** Why the verdict is milder than proposed. */
    reason: reason.optional(),
  }),
  'run.noted': z.strictObject({ run, step: step.optional(), note: text.min(1) }),
  'run.deviation-accepted': z.strictObject({ run, deviation: z.string().min(1).max(140) }),
  'run.handed-over': z.strictObject({ run, to: z.string().min(1).max(80) }),
  'run.taken-back': z.strictObject({ run, event }),
  'run.alarm-heard': z.strictObject({ run, alarm: code }),
  'run.stopped': z.strictObject({ run, reason: z.enum([...runReasons, 'other-position', 'belt-spoilt']) }),
} as const satisfies Readonly<Record<RunType, z.ZodType>>;
