import { byId, checkPlant, type Kind, type Line, type Plant, type PlantProblem } from '@loopwright/plant';
import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import { dropDraft, keepDraft, readDraft } from '../../../form/draft-store.ts';
import type { Entry } from '../../../form/entries.ts';
import type { Findings } from '../../../form/findings.ts';
import { useBusy } from '../../../offline/busy.ts';
import { useSpeech } from '../../../speech/use-speech.tsx';
import type { Change } from '../../../store/plant-store.ts';
import {
  type Geometry,
  type KnownGeometry,
  knownGeometry,
  openedGeometry,
  type PulleyRow,
  type Way,
} from './geometry.ts';
import { geometryChanges } from './geometry-changes.ts';
import { draftOf, geometryDraftName, geometryOf, isOvertaken } from './geometry-draft.ts';
import { type Led, type LoopNow, loopNow, plantWithLoop } from './loop-now.ts';
import { type GeometryReading, readGeometry } from './read-geometry.ts';
import { rowsToStart } from './rows-to-start.ts';

export interface GeometryState {
  readonly known: KnownGeometry;
  readonly geometry: Geometry;
  readonly reading: GeometryReading;
  /** What can be computed now; undefined while something is missing. */
  readonly loop: LoopNow | undefined;
  readonly findings: Findings;
  /** What saving would write down; undefined while it cannot be saved. */
  readonly changes: readonly Change[] | undefined;
  /** The same for what stands in the editor this moment, not a moment ago. */
  changesNow(): readonly Change[] | undefined;
  readonly changed: boolean;
  readonly draftKept: boolean | undefined;
  readonly overtaken: boolean;
  chooseWay(way: Way): void;
  changeSurvey(field: string, entry: Entry): void;
  changeTakeUp(field: string, entry: Entry): void;
  changeRows(rows: readonly PulleyRow[]): void;
  /** Forgets what is not saved. */
  discard(): void;
}

/** The editor of one line's geometry: what is typed, read and computed as one types, and kept as a draft. */
export function useGeometry(plant: Plant, line: Line): GeometryState {
  const writer = useSpeech();
  const { language, units } = writer;
  const known = useMemo(() => knownGeometry(plant, line), [plant, line]);
  const fresh = useMemo(() => openedGeometry(plant, known, units), [plant, known, units]);
  const name = geometryDraftName(plant.id, line.id);
  const [draft] = useState(() => readDraft(name));
  const [typed, setTyped] = useState(() => geometryOf(draft));
  const [opened, setOpened] = useState(() => (typed === undefined ? undefined : draft?.original));
  const geometry = typed ?? fresh;
  const reading = useMemo(() => readGeometry(geometry, { plant, known, language }), [geometry, plant, known, language]);
  const computed = useComputed(plant, known, geometry.way, reading);
  const changed = typed !== undefined && plain(typed) !== plain(fresh);
  const draftKept = useDraft(name, changed, geometry, known);
  useBusy(changed);
  const change = (next: Partial<Geometry>) => {
    if (typed === undefined) setOpened({ ...known });
    setTyped({ ...geometry, ...next });
  };
  return {
    known,
    geometry,
    reading,
    ...computed,
    changesNow: () => computedOf(plant, known, geometry.way, reading).changes,
    changed,
    draftKept,
    overtaken: changed && isOvertaken(opened, known),
    chooseWay: (way) => {
      const isFirst = way === 'coordinates' && geometry.rows.length === 0;
      change(isFirst ? { way, rows: rowsToStart(plant, known, reading, writer) } : { way });
    },
    changeSurvey: (field, entry) => change({ survey: { ...geometry.survey, [field]: entry } }),
    changeTakeUp: (field, entry) => change({ takeUp: { ...geometry.takeUp, [field]: entry } }),
    changeRows: (rows) => change({ rows }),
    discard: () => {
      dropDraft(name);
      setTyped(undefined);
      setOpened(undefined);
    },
  };
}

/** A unit is a way of reading, not a change. */
function plain(geometry: Geometry): string {
  return JSON.stringify(geometry, (key, value: unknown) => (key === 'unit' ? undefined : value));
}

function useDraft(name: string, changed: boolean, geometry: Geometry, known: KnownGeometry): boolean | undefined {
  const [isKept, setKept] = useState<boolean>();
  useEffect(() => {
    setKept(changed ? keepDraft(name, draftOf(geometry, known)) : undefined);
  }, [name, changed, geometry, known]);
  return isKept;
}

/** How the belt is led, once everything that says it can be read. */
export function ledBy(way: Way, { survey, pulleys }: GeometryReading): Led | undefined {
  if (way === 'survey') return survey === undefined ? undefined : { survey };
  const read = pulleys.filter((pulley) => pulley !== undefined);
  return read.length < 2 || read.length < pulleys.length ? undefined : { pulleys: read };
}

/** Computed a moment after the typing, so that typing stays quick. */
function useComputed(plant: Plant, known: KnownGeometry, way: Way, reading: GeometryReading) {
  const now = useMemo(() => ({ way, reading }), [way, reading]);
  const late = useDeferredValue(now);
  return useMemo(() => computedOf(plant, known, late.way, late.reading), [plant, known, late]);
}

const noFindings: Findings = { errors: [], cares: [] };

function computedOf(plant: Plant, known: KnownGeometry, way: Way, reading: GeometryReading) {
  const led = ledBy(way, reading);
  const line = reading.line ?? known.line;
  const belt = plant.belts[line.belt];
  if (led === undefined || belt === undefined) return { loop: undefined, findings: noFindings, changes: undefined };
  const loop = loopNow(plant, line, belt, led);
  if (loop.path === undefined) return { loop, findings: noFindings, changes: undefined };
  const findings = findingsWith(plant, known, line, led);
  const isReady = reading.line !== undefined && findings.errors.length === 0;
  return { loop, findings, changes: isReady ? geometryChanges(known, line, led) : undefined };
}

/** Kinds that the path of a belt depends on: rules about others say nothing here. */
const pathKinds: ReadonlySet<Kind> = new Set(['belts', 'lines', 'pulleys', 'surveys']);

/** What the checks of the plant say of this line as it would be: new contradictions, and what deserves a look. */
function findingsWith(plant: Plant, { line: before }: KnownGeometry, line: Line, led: Led): Findings {
  const found = (whole: Plant, own: Line) =>
    checkPlant(onlyLine(whole, own), pathKinds).filter(({ kind }) => kind !== 'belts');
  const named = (problem: PlantProblem) => `${problem.code} ${problem.id}`;
  const known = new Set(found(plant, before).map(named));
  const next = found(plantWithLoop(plant, line, led), line);
  const stops = next.filter((problem) => problem.level === 'error' && !known.has(named(problem)));
  return { errors: stops, cares: next.filter((problem) => !stops.includes(problem)) };
}

/** The plant with one line and what leads its belt. */
function onlyLine(plant: Plant, line: Line): Plant {
  const ofLine = <T extends { readonly id: string; readonly line: string }>(things: Readonly<Record<string, T>>) =>
    byId(Object.values(things).filter((thing) => thing.line === line.id));
  return { ...plant, lines: byId([line]), pulleys: ofLine(plant.pulleys), surveys: ofLine(plant.surveys) };
}
