import type { CycleInput, Layer, Probe } from '@loopwright/engine/press';
import { type Belt, lightPress, meltPrior, type Press, siliconeMat, type Template } from '@loopwright/plant';
import { computed, example, given, type Quantity } from '../quantity.ts';
import { type CycleNumber, known } from './cycle-number.ts';
import {
  coverMaterial,
  type Material,
  matMaterial,
  memberMaterial,
  pressPlateMaterial,
  releaseClothMaterial,
} from './materials.ts';

/** Mat under the pocket while no template is known: common practice, no source. */
const usualMat = { value: 0.0018, low: 0.0015, high: 0.002 } as const;

/** How heat passes a joint is told by what meets there. */
type Touching = 'metal' | 'layer' | 'belt';

interface Laid {
  readonly layer: Layer;
  readonly touching: Touching;
  readonly number: CycleNumber;
}

/** What lies between the platens, top first, with the numbers it was made from. */
export interface Stack extends Pick<CycleInput, 'layers' | 'contacts_W_m2K' | 'probes'> {
  readonly numbers: readonly CycleNumber[];
  readonly meltPeak: Quantity;
}

/**
 * The stack as the hands lay it: press plate and release cloth over the belt, roller side up, the mat under it.
 *
 * @param things - belt, press, and the template whose mat lies under the belt
 */
export function stackOf({ belt, press, template }: StackThings): Stack {
  const meltPeak = known('temperature', belt, 'meltPeak_degC', meltPrior.meltPeak_degC);
  const contacts = contactsOf(press);
  const laid = [...over(press), ...beltLayers(belt, meltPeak.value), ...under(template)].filter(
    ({ layer }) => layer.thickness_m > 0,
  );
  const faces: readonly Touching[] = ['metal', ...laid.map(({ touching }) => touching), 'metal'];
  return {
    layers: laid.map(({ layer }) => layer),
    contacts_W_m2K: faces.slice(1).map((below, i) => contact(faces[i] ?? 'metal', below, contacts)),
    probes: probesOf(laid),
    meltPeak,
    numbers: [
      ...laid.map(({ number }) => number),
      { group: 'belt', field: 'belts.meltPeak', quantity: meltPeak },
      ...contactNumbers(contacts),
    ],
  };
}

export interface StackThings {
  readonly belt: Belt;
  readonly press: Press;
  readonly template: Template | undefined;
}

interface Contacts {
  readonly metal: Quantity;
  readonly layer: Quantity;
  readonly belt: Quantity;
}

function contactsOf(press: Press): Contacts {
  return {
    metal: known('heatTransfer', press, 'contactMetal_W_m2K', lightPress.contactMetal_W_m2K),
    layer: known('heatTransfer', press, 'contactLayer_W_m2K', lightPress.contactLayer_W_m2K),
    belt: known('heatTransfer', press, 'contactBelt_W_m2K', lightPress.contactBelt_W_m2K),
  };
}

function contact(above: Touching, below: Touching, contacts: Contacts): number | null {
  if (above === 'belt' && below === 'belt') return null;
  if (above === 'belt' || below === 'belt') return contacts.belt.value;
  return above === 'metal' && below === 'metal' ? contacts.metal.value : contacts.layer.value;
}

function contactNumbers({ metal, layer, belt }: Contacts): CycleNumber[] {
  return [
    { group: 'stack', field: 'presses.contactMetal', quantity: metal },
    { group: 'stack', field: 'presses.contactLayer', quantity: layer },
    { group: 'stack', field: 'presses.contactBelt', quantity: belt },
  ];
}

function over(press: Press): Laid[] {
  const plate = known('shortLength', press, 'pressPlate_m', lightPress.pressPlate_m);
  const cloth = known('shortLength', press, 'releaseCloth_m', lightPress.releaseCloth_m);
  return [
    laidOf('presses.pressPlate', plate, pressPlateMaterial, 'metal'),
    laidOf('presses.releaseCloth', cloth, releaseClothMaterial, 'layer'),
  ];
}

function under(template: Template | undefined): Laid[] {
  const mat = template
    ? given('shortLength', template.mat_m, template, 'mat_m')
    : example('shortLength', usualMat.value, [usualMat.low, usualMat.high]);
  const conductivity = known('conductivity', template, 'matConductivity_W_mK', siliconeMat.matConductivity_W_mK);
  const laid = laidOf('templates.mat', mat, matMaterial(conductivity.value), 'layer');
  return [{ ...laid, number: { ...laid.number, conductivity } }];
}

/** Covers that nobody has measured are a third of the belt each. */
function beltLayers(belt: Belt, meltPeak_degC: number): Laid[] {
  const third = (field: 'rollerCover_m' | 'pulleyCover_m'): Quantity => {
    const value = belt[field];
    return value === undefined
      ? example('shortLength', belt.thickness_m / 3)
      : given('shortLength', value, belt, field);
  };
  const [roller, pulley] = [third('rollerCover_m'), third('pulleyCover_m')];
  const member = computed('shortLength', belt.thickness_m - roller.value - pulley.value);
  const cover = coverMaterial(belt, meltPeak_degC);
  return [
    laidOf('belts.rollerCover', roller, cover, 'belt'),
    laidOf('belts.tensionMember', member, memberMaterial(belt), 'belt'),
    laidOf('belts.pulleyCover', pulley, cover, 'belt'),
  ];
}

function laidOf(field: string, thickness: Quantity, material: Material, touching: Touching): Laid {
  const group = touching === 'belt' ? 'belt' : 'stack';
  return {
    layer: { name: field, thickness_m: thickness.value, ...material },
    touching,
    number: { group, field, quantity: thickness, conductivity: example('conductivity', material.conductivity_W_mK) },
  };
}

/** Top, middle and bottom of the belt. */
function probesOf(laid: readonly Laid[]): Probe[] {
  const own = laid.flatMap(({ layer, touching }, i) =>
    touching === 'belt' ? [{ layer: i, thickness: layer.thickness_m }] : [],
  );
  const [first, last] = [own[0], own.at(-1)];
  if (!first || !last) return [];
  const half = own.reduce((sum, { thickness }) => sum + thickness, 0) / 2;
  let above = 0;
  const middle = own.find(({ thickness }) => {
    above += thickness;
    return above >= half;
  });
  const fraction = middle ? 1 - (above - half) / middle.thickness : 0.5;
  return [
    { layer: first.layer, fraction: 0 },
    { layer: middle?.layer ?? first.layer, fraction },
    { layer: last.layer, fraction: 1 },
  ];
}
