import { type RunChange, type RunMeasure, runChange } from '@loopwright/records/run';
import type { RunAction } from '../../src/press-run/index.ts';
import { World } from './run-world.ts';

const run = 'RUN00001';

/** Goes on by the main action until a step is the current one. */
export function goTo(step: string, world: World): World {
  while (world.view().current?.step !== step) if (!world.goOn()) throw new Error(`never came to ${step}`);
  return world;
}

/** Somebody reads a number and then does what stands there. */
function readAndGoOn(world: World, measure: RunMeasure, value: number): void {
  world.append(runChange('run.measured', { run, measure, value }));
  world.tap(changesOf(world.view().main));
}

/**
 * A whole run for the torn belt in which about everything happens that can: a step passed, a tap taken back, one too
 * early, measures, readings of both displays, a handing over, photos, a finding, deviations of which one is not accepted.
 */
export function wholeRun(world = new World()): World {
  before(goTo('gather', world));
  atTable(goTo('cut', world));
  inPress(goTo('heat', world));
  after(goTo('faces', world));
  while (!world.state.end) if (!world.goOn()) throw new Error('no way on');
  for (const { id } of world.state.deviations.slice(0, 1))
    world.append(runChange('run.deviation-accepted', { run, deviation: id }));
  return world;
}

function before(world: World): void {
  world.append(runChange('run.noted', { run, step: 'cause', note: 'Snub roller S3 seized, changed.' }));
  world.append(runChange('run.step-passed', { run, step: 'gather', reason: 'none-here' }));
  world.append(runChange('run.steps-done', { run, steps: ['unlock'] }));
}

function atTable(world: World): void {
  readAndGoOn(world, 'square-length', 64.36);
  world.device.pass(40);
  goTo('mark', world);
  world.tap(changesOf(world.view().main));
  world.tap(changesOf(world.view().takeBack));
  world.device.pass(15);
  readAndGoOn(world, 'marks-before', 2);
}

function changesOf(action: RunAction | undefined): readonly RunChange[] {
  const changes = action?.changes ?? action?.choices?.[0]?.changes;
  if (changes === undefined) throw new Error('nothing to append');
  return changes;
}

/** A display is read every two minutes, a little hotter above and cooler below than computed. */
function inPress(world: World): void {
  goTo('open', world);
  let passed_s = 0;
  while (world.view().current?.step === 'open') {
    const view = world.view();
    if (view.main !== undefined && passed_s > 600) {
      world.goOn();
      continue;
    }
    if (passed_s === 360) said(world, 'hold-began');
    if (passed_s === 420) world.append(runChange('run.handed-over', { run, to: 'b2' }));
    if (passed_s === 420) world.device.by = 'b2';
    const { reading } = view;
    if (reading !== undefined && passed_s % 120 === 0 && passed_s > 0)
      world.append(
        runChange('run.display-read', {
          run,
          mark: reading.mark,
          top_degC: Math.round(reading.top_degC) + 3,
          bottom_degC: Math.round(reading.bottom_degC) - 2,
        }),
      );
    world.device.pass(60);
    passed_s += 60;
  }
}

function said(world: World, says: 'hold-began'): void {
  world.append(runChange('run.display-said', { run, says }));
}

const picture = { bytes: 240_000, width_px: 1600, height_px: 1200 };

function after(world: World): void {
  world.append(runChange('run.photo-taken', { run, face: 'roller', sha256: 'a1'.repeat(32), ...picture }));
  world.append(runChange('run.photo-taken', { run, face: 'pulley', sha256: 'b2'.repeat(32), ...picture }));
  goTo('verdict', world);
  world.append(
    runChange('run.inspected', {
      run,
      verdict: 'run',
      findings: [{ defect: 'edge-step', face: 'pulley', value: 0.0004 }],
    }),
  );
  goTo('final-tension', world);
  readAndGoOn(world, 'marks-after', 2.018);
}
