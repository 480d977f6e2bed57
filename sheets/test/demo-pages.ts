import { readdirSync, readFileSync } from 'node:fs';
import { type SpliceCard, spliceCard } from '@loopwright/jobs';
import { type Plant, readPlantFolder } from '@loopwright/plant';
import { type Language, languages, type UnitSystem, unitSystems, voice } from '@loopwright/words';
import { cardPage } from '../src/page/card-page.ts';
import type { Block, Drawing, Page } from '../src/page/page.ts';

const folder = new URL('../../demo/', import.meta.url);

function readDemo(): Plant {
  const names = readdirSync(folder).filter((name) => name.endsWith('.csv'));
  const { plant, problems } = readPlantFolder(
    new Map(names.map((name) => [name, readFileSync(new URL(name, folder))])),
  );
  if (!plant) throw new Error(`the demo plant does not read: ${JSON.stringify(problems)}`);
  return plant;
}

/** The invented plant, read from its files. */
export const demo = readDemo();

export const now = '2026-11-25T02:10:00Z';

/** One position of each of the six lines, the torn one among them. */
export const demoPositions = ['QM-01-1', 'QM-02-3', 'QM-03-2', 'QM-04-3', 'QM-05-4', 'QM-06-1'] as const;

export const demoCard = (position: string, people: 1 | 2 = 1, plant: Plant = demo): SpliceCard =>
  spliceCard(plant, position, { now, people });

export const pageOf = (card: SpliceCard, language: Language = 'en', units: UnitSystem = 'metric'): Page =>
  cardPage(card, voice(language, units));

/** Every reader a card may have. */
export const readers = languages.flatMap((language) => unitSystems.map((units) => ({ language, units })));

export const blocksOf = (page: Page): Block[] => [...page.front, ...page.back].flatMap((section) => section.blocks);

export const drawingsOf = (page: Page): Drawing[] =>
  blocksOf(page).flatMap((block) => (block.kind === 'drawing' ? [block.drawing] : []));

/** Everything a page says in words, joined. */
export function wordsOf(page: Page): string {
  return JSON.stringify(page);
}

/** A plant in which nothing is known but the line, its belt and its position. */
export function barePlant(position: string): Plant {
  const place = demo.positions[position];
  const line = place && demo.lines[place.line];
  const belt = line && demo.belts[line.belt];
  if (!place || !line || !belt) throw new Error(`no position ${position}`);
  const { recordedLength_m: _a, oldBeltLength_m: _b, takeUp_m: _c, ...bare } = place;
  const { dataSheet: _d, dryTime_s: _e, dryTemperature_degC: _f, ...bareBelt } = belt;
  return {
    ...demo,
    belts: { [belt.id]: bareBelt },
    positions: { [place.id]: bare },
    dies: {},
    templates: {},
    presses: {},
    recipes: {},
    rolls: {},
    pulleys: {},
  };
}
