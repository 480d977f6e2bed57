import { cycleSurroundings, type RecipeCycleChoice } from '@loopwright/jobs';
import type { Recipe } from '@loopwright/plant';
import type { Voice } from '@loopwright/words';
import type { Things } from './start-of.ts';

/** What can be set, in the order in which a press asks for it; then what it meets. */
export const settingNames = ['top', 'bottom', 'dwell', 'pressure', 'open', 'volts', 'air', 'lead'] as const;
export type SettingName = (typeof settingNames)[number];

/** Values inside: [degC], [s], [Pa], [V], [m]. */
export type Settings = Readonly<Record<SettingName, number>>;

/** Reader, and reader in the units of the press's display. */
export interface Voices {
  readonly voice: Voice;
  readonly display: Voice;
}

interface Scale {
  readonly least: number;
  readonly most: number;
  readonly step: number;
}

const kelvin_F = 1 / 1.8;
const psi_Pa = 6894.757;
const foot_m = 0.3048;

/** Where a slider begins and ends, and one tap of its buttons, in steps that the display shows as round. */
function scaleOf(name: SettingName, { voice, display }: Voices): Scale {
  const kelvin = display.units === 'us' ? kelvin_F : 1;
  switch (name) {
    case 'top':
    case 'bottom':
      return { least: 120, most: 240, step: kelvin };
    case 'open':
      return { least: 20, most: 60, step: kelvin };
    case 'air':
      return { least: -10, most: 45, step: kelvin };
    case 'dwell':
      return { least: 10, most: 900, step: 5 };
    case 'pressure':
      return { least: 0.2e5, most: 6e5, step: voice.units === 'us' ? psi_Pa : 1e4 };
    case 'volts':
      return { least: 90, most: 260, step: 1 };
    case 'lead':
      return { least: 0, most: 100, step: voice.units === 'us' ? 5 * foot_m : 1 };
  }
}

/** A slider in whole steps from where it starts, so that the start itself is one of its places. */
export interface Steps {
  readonly start: number;
  readonly step: number;
  readonly first: number;
  readonly last: number;
}

export function stepsOf(name: SettingName, start: number, voices: Voices): Steps {
  const { least, most, step } = scaleOf(name, voices);
  const whole = (distance: number): number => Math.floor(distance / step + 1e-6);
  return { start, step, first: -Math.max(0, whole(start - least)), last: Math.max(0, whole(most - start)) };
}

/** The settings of a recipe, and what its press meets at a line. */
export function settingsOf({ recipe, line, press }: Things): Settings {
  const { volts_V, air_degC, lead_m } = cycleSurroundings(line, press);
  return {
    top: recipe.top_degC,
    bottom: recipe.bottom_degC,
    dwell: recipe.dwell_s,
    pressure: recipe.beltPressure_Pa,
    open: recipe.open_degC,
    volts: volts_V,
    air: air_degC,
    lead: lead_m,
  };
}

/** A setting as the reader sees it. */
export function writeSetting(name: SettingName, value: number, { voice, display }: Voices): string {
  switch (name) {
    case 'top':
    case 'bottom':
    case 'open':
    case 'air':
      return display.write(value, 'temperature');
    case 'dwell':
      return voice.write(value, 'time', { digits: 0 });
    case 'pressure':
      return voice.write(value, 'pressure');
    case 'volts':
      return voice.write(value, 'voltage');
    case 'lead':
      return voice.units === 'us' ? `${voice.number(value / foot_m, 0)}\u00a0ft` : `${voice.number(value, 0)}\u00a0m`;
  }
}

const recipeFields = {
  top: 'top_degC',
  bottom: 'bottom_degC',
  dwell: 'dwell_s',
  pressure: 'beltPressure_Pa',
  open: 'open_degC',
} as const satisfies Partial<Record<SettingName, keyof Recipe>>;

const surroundings = { volts: 'volts_V', air: 'air_degC', lead: 'lead_m' } as const;

function isOfRecipe(name: SettingName): name is keyof typeof recipeFields {
  return Object.hasOwn(recipeFields, name);
}

/** Things with what was set otherwise; what a person set says so. */
export function choiceOf(things: Things, changed: Partial<Settings>): RecipeCycleChoice {
  const named = settingNames.filter((name) => changed[name] !== undefined);
  const ofRecipe = named.filter(isOfRecipe);
  const recipe = {
    ...things.recipe,
    ...Object.fromEntries(ofRecipe.map((name) => [recipeFields[name], changed[name]])),
    sources: {
      ...things.recipe.sources,
      ...Object.fromEntries(ofRecipe.map((name) => [recipeFields[name], 'person' as const])),
    },
  };
  const today = Object.fromEntries(
    named.flatMap((name) => (isOfRecipe(name) ? [] : [[surroundings[name], changed[name]]])),
  );
  return { ...things, recipe, today, ...(ofRecipe.length > 0 && { tried: true }) };
}
