import type { Kind } from '@loopwright/plant';

/** Kinds of things with a list of their own. Pulleys and surveys belong to their line. */
export type StoreKind = Exclude<Kind, 'pulleys' | 'surveys'>;

/** Titles of groups of fields. */
export type GroupName =
  | 'what'
  | 'measures'
  | 'pull'
  | 'fingers'
  | 'drying'
  | 'friction'
  | 'heat'
  | 'platens'
  | 'control'
  | 'stack'
  | 'lead'
  | 'layers'
  | 'outlet'
  | 'check'
  | 'run'
  | 'load'
  | 'takeUp'
  | 'area'
  | 'rollers'
  | 'state'
  | 'life'
  | 'lengths';

/** Fields of one group by their name without unit, in the order in which one is asked for them. */
export interface FieldGroup {
  readonly title: GroupName;
  readonly fields: readonly string[];
}

export interface ThingLayout {
  /** Asked first: what a card cannot do without. */
  readonly first: readonly FieldGroup[];
  /** Asked when somebody wants to say more. A field that stands nowhere comes at the end of these. */
  readonly more: readonly FieldGroup[];
  /** What a row of the list says of a thing. */
  readonly row: readonly string[];
  /** Beginning of the short names that are proposed; absent where people have names of their own. */
  readonly proposed?: string;
  /** Fields of which the short name is made as one types. */
  readonly idFrom?: readonly string[];
}

/** The order of the stores is the order in which a new plant is entered. */
export const thingLayouts: Readonly<Record<StoreKind, ThingLayout>> = {
  belts: {
    first: [
      { title: 'what', fields: ['id', 'dataSheet', 'source'] },
      { title: 'measures', fields: ['thickness', 'areaMass', 'minPulley'] },
      { title: 'pull', fields: ['k1', 'minElongation', 'maxElongation'] },
      { title: 'fingers', fields: ['fingerPitch', 'fingerLength'] },
    ],
    more: [
      { title: 'measures', fields: ['neutralLine', 'minCounterBend', 'lengthTolerance', 'antistatic'] },
      { title: 'layers', fields: ['pulleyCover', 'rollerCover', 'tensionMember', 'polymer', 'meltPeak'] },
      { title: 'pull', fields: ['freshFactor', 'relaxationAt100s', 'relaxationAt500s', 'strength'] },
      { title: 'friction', fields: ['friction', 'frictionWet'] },
      { title: 'drying', fields: ['dryTemperature', 'dryTime'] },
    ],
    row: ['thickness', 'dataSheet'],
  },
  dies: {
    first: [
      { title: 'what', fields: ['id', 'place', 'source'] },
      { title: 'fingers', fields: ['pitch', 'fingerLength', 'maxWidth'] },
    ],
    more: [{ title: 'fingers', fields: ['tipWidth', 'waste'] }],
    row: ['pitch', 'fingerLength', 'place'],
    proposed: 'die',
  },
  templates: {
    first: [
      { title: 'what', fields: ['id', 'die', 'place', 'source'] },
      { title: 'measures', fields: ['pocketWidth', 'pocketDepth', 'mat'] },
    ],
    more: [{ title: 'heat', fields: ['matConductivity'] }],
    row: ['die', 'pocketWidth', 'place'],
    proposed: 'template',
  },
  presses: {
    first: [
      { title: 'what', fields: ['id', 'name', 'place', 'source'] },
      { title: 'check', fields: ['checkedOn', 'checkInterval_days'] },
      { title: 'measures', fields: ['platenLength', 'platenWidth', 'bagWidth', 'maxPressure'] },
    ],
    more: [
      { title: 'heat', fields: ['displayUnit', 'setPoints', 'heaterPower', 'nominalVoltage', 'rightEdge_K'] },
      { title: 'lead', fields: ['leadLength', 'leadSection', 'leadResistance'] },
      {
        title: 'platens',
        fields: [
          'platenMaterial',
          'platenThickness',
          'platenCapacity',
          'capacitySlope_1_K',
          'platenLoss',
          'fanCooling',
          'fanPower',
          'controlPower',
        ],
      },
      {
        title: 'control',
        fields: [
          'controlKind',
          'controlBand_K',
          'controlIntegral',
          'controlTracking',
          'controlHysteresis_K',
          'controlSample',
          'sensorLag',
        ],
      },
      { title: 'stack', fields: ['pressPlate', 'releaseCloth', 'contactMetal', 'contactLayer', 'contactBelt'] },
    ],
    row: ['name', 'checkedOn', 'place'],
  },
  recipes: {
    first: [
      { title: 'what', fields: ['id', 'belt', 'press', 'revision', 'source'] },
      { title: 'heat', fields: ['top', 'bottom', 'dwell', 'beltPressure', 'open'] },
    ],
    more: [{ title: 'heat', fields: ['ready_K', 'readyAt', 'openAt'] }],
    row: ['belt', 'press', 'revision'],
    proposed: 'recipe',
  },
  lines: {
    first: [
      { title: 'what', fields: ['id', 'name', 'belt', 'width', 'source'] },
      { title: 'run', fields: ['setElongation', 'speed', 'hoursPerDay'] },
      { title: 'load', fields: ['load', 'bed', 'rollers'] },
      { title: 'takeUp', fields: ['takeUpKind', 'takeUpStroke', 'takeUpReference'] },
      { title: 'area', fields: ['wet', 'antistaticArea', 'explosiveArea', 'foodArea'] },
    ],
    more: [
      { title: 'takeUp', fields: ['takeUpX', 'takeUpY', 'takeUpForce', 'fitSlack', 'spliceSite'] },
      {
        title: 'outlet',
        fields: ['outletVoltage', 'outletBreaker', 'outletLead', 'outletLeadSection', 'airTemperature'],
      },
      { title: 'rollers', fields: ['carrierDiameter', 'carrierPitch', 'pressureRollerDiameter', 'pressUp'] },
      { title: 'friction', fields: ['lumpedFriction', 'friction'] },
    ],
    row: ['name', 'belt', 'width'],
  },
  positions: {
    first: [
      { title: 'what', fields: ['line', 'number', 'id', 'name', 'source'] },
      { title: 'state', fields: ['status', 'since', 'takeUp'] },
      { title: 'life', fields: ['fittedOn', 'lot'] },
    ],
    more: [
      { title: 'life', fields: ['lastTensionedOn', 'retensionAfter_days', 'expectedRevolutions', 'revolutions'] },
      {
        title: 'lengths',
        fields: [
          'recordedLength',
          'recordedUncertainty',
          'oldBeltLength',
          'oldBeltUncertainty',
          'oldBeltSet',
          'oldBeltTensioned',
        ],
      },
    ],
    row: ['line', 'name', 'status'],
    idFrom: ['line', 'number'],
  },
  rolls: {
    first: [
      { title: 'what', fields: ['id', 'belt', 'lot', 'place', 'source'] },
      { title: 'measures', fields: ['width', 'left', 'sealed'] },
    ],
    more: [],
    row: ['belt', 'width', 'left', 'place'],
    proposed: 'roll',
  },
  badges: {
    first: [{ title: 'what', fields: ['id', 'shape', 'word', 'source'] }],
    more: [],
    row: ['shape', 'word'],
    proposed: 'badge',
  },
};

/** The stores in the order in which a new plant is entered. */
export const storeKinds = Object.keys(thingLayouts) as readonly StoreKind[];

/** True for a kind that has a list of its own. */
export function isStoreKind(kind: string): kind is StoreKind {
  return Object.hasOwn(thingLayouts, kind);
}
