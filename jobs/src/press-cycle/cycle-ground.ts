import type { CycleInput } from '@loopwright/engine/press';
import type { Belt, Line, Press, Recipe, Roll, Template } from '@loopwright/plant';
import { given } from '../quantity.ts';
import type { CycleNumber } from './cycle-number.ts';
import { type Outlet, outletOf, type Today } from './outlet.ts';
import { type Platens, platensOf } from './platens.ts';
import { type Stack, stackOf } from './stack.ts';

/** The things of a plant that a press cycle is made from. */
export interface CycleThings {
  /** Where the press is plugged in. */
  readonly line: Line | undefined;
  readonly belt: Belt;
  readonly press: Press;
  readonly recipe: Recipe;
  readonly template?: Template | undefined;
  readonly roll?: Roll | undefined;
  readonly today?: Today | undefined;
}

/** What a cycle is computed from, and where each number came from. */
export interface CycleGround {
  readonly things: CycleThings;
  readonly input: CycleInput;
  readonly outlet: Outlet;
  readonly platens: Platens;
  readonly stack: Stack;
  readonly numbers: readonly CycleNumber[];
}

/** Water left in a belt from a sealed roll: an example, no source. Of an opened roll nobody knows. */
const sealedMoisture_share = 0.0003;

/**
 * The engine's input for a press cycle, from the things of a plant.
 *
 * @param things - line, belt, press, recipe; template and roll where they are known; what is said of today
 * @returns input and the numbers it was made from, each with its source
 */
export function cycleGround(things: CycleThings): CycleGround {
  const { line, press, recipe, roll, today } = things;
  const outlet = outletOf(line, press, today);
  const platens = platensOf(press, outlet.volts);
  const stack = stackOf({ belt: things.belt, press, template: things.template });
  const input: CycleInput = {
    layers: stack.layers,
    contacts_W_m2K: stack.contacts_W_m2K,
    probes: stack.probes,
    ambient_degC: outlet.air.value,
    top: platens.platen,
    bottom: platens.platen,
    supply: {
      volts_V: outlet.volts.value,
      leadResistance_ohm: outlet.lead.value,
      control_W: platens.control_W,
      fan_W: platens.fan_W,
    },
    recipe: {
      top_degC: recipe.top_degC,
      bottom_degC: recipe.bottom_degC,
      ready_K: recipe.ready_K,
      dwell_s: recipe.dwell_s,
      open_degC: recipe.open_degC,
      pressure_Pa: recipe.beltPressure_Pa,
    },
    fusion: {
      meltCentre_degC: stack.meltPeak.value,
      ...(roll?.sealed === true && { moisture_share: sealedMoisture_share }),
    },
  };
  return {
    things,
    input,
    outlet,
    platens,
    stack,
    numbers: [...recipeNumbers(recipe), ...outlet.numbers, ...platens.numbers, ...stack.numbers],
  };
}

function recipeNumbers(recipe: Recipe): CycleNumber[] {
  const number = (kind: CycleNumber['quantity']['kind'], field: keyof Recipe & string, name: string): CycleNumber => ({
    group: 'recipe',
    field: `recipes.${name}`,
    quantity: given(kind, Number(recipe[field]), recipe, field),
  });
  return [
    number('temperature', 'top_degC', 'top'),
    number('temperature', 'bottom_degC', 'bottom'),
    number('temperatureDifference', 'ready_K', 'ready_K'),
    number('time', 'dwell_s', 'dwell'),
    number('pressure', 'beltPressure_Pa', 'beltPressure'),
    number('temperature', 'open_degC', 'open'),
  ];
}
