import type { Platen, PlatenControl } from '@loopwright/engine/press';
import { lightPress, type Press } from '@loopwright/plant';
import { computed, given, type Quantity } from '../quantity.ts';
import { type CycleNumber, known } from './cycle-number.ts';
import { platenFittings_J_m2K, platenMetals } from './materials.ts';

/** Both platens of a press are alike; with the numbers they were made from. */
export interface Platens {
  readonly platen: Platen;
  readonly control_W: number;
  readonly fan_W: number;
  readonly numbers: readonly CycleNumber[];
}

/**
 * The platens of a press, with a light press as an example in the place of what nobody has said.
 *
 * @param press - the press
 * @param usual_V - voltage its heaters are taken to be made for when nobody says it [V]
 */
export function platensOf(press: Press, usual_V: Quantity): Platens {
  const area_m2 = press.platenLength_m * press.platenWidth_m;
  const own = ownNumbers(press, area_m2, usual_V);
  const { control, numbers } = controlOf(press);
  const fan = known('power', press, 'fanPower_W', lightPress.fanPower_W);
  const unit = known('power', press, 'controlPower_W', lightPress.controlPower_W);
  return {
    platen: {
      area_m2,
      capacity_J_m2K: own.capacity.value,
      capacitySlope_1_K: press.capacitySlope_1_K ?? lightPress.capacitySlope_1_K.value,
      heater_W: own.heater.value / 2,
      nominal_V: own.nominal.value,
      loss_W_m2K: own.loss.value,
      fan_W_m2K: own.fan.value,
      sensorLag_s: own.lag.value,
      control,
    },
    control_W: unit.value,
    fan_W: fan.value,
    numbers: [
      ...press_('heaterPower', own.heater),
      ...press_('nominalVoltage', own.nominal),
      ...press_('platenCapacity', own.capacity),
      ...press_('platenLoss', own.loss),
      ...press_('fanCooling', own.fan),
      ...press_('sensorLag', own.lag),
      ...numbers,
      ...press_('controlPower', unit),
      ...press_('fanPower', fan),
    ],
  };
}

function press_(name: string, quantity: Quantity): CycleNumber[] {
  return [{ group: 'press', field: `presses.${name}`, quantity }];
}

function ownNumbers(press: Press, area_m2: number, usual_V: Quantity) {
  const { value, low, high } = lightPress.heaterFlux_W_m2;
  const flux = { value: value * area_m2, low: low * area_m2, high: high * area_m2 };
  return {
    heater: known('power', press, 'heaterPower_W', flux),
    nominal:
      press.nominalVoltage_V === undefined
        ? usual_V
        : given('voltage', press.nominalVoltage_V, press, 'nominalVoltage_V'),
    capacity: capacityOf(press),
    loss: known('heatTransfer', press, 'platenLoss_W_m2K', lightPress.platenLoss_W_m2K),
    fan: known('heatTransfer', press, 'fanCooling_W_m2K', lightPress.fanCooling_W_m2K),
    lag: known('time', press, 'sensorLag_s', lightPress.sensorLag_s),
  };
}

/** As measured; else from material and thickness, with a tenth either way for what hangs on the platen. */
function capacityOf(press: Press): Quantity {
  const { platenThickness_m: thickness_m, platenMaterial = 'aluminium' } = press;
  if (press.platenCapacity_J_m2K !== undefined || thickness_m === undefined)
    return known('heatCapacityPerArea', press, 'platenCapacity_J_m2K', lightPress.platenCapacity_J_m2K);
  const capacity = thickness_m * platenMetals[platenMaterial] + platenFittings_J_m2K;
  return computed('heatCapacityPerArea', capacity, 0.1 * capacity);
}

function controlOf(press: Press): { readonly control: PlatenControl; readonly numbers: readonly CycleNumber[] } {
  const band = known('temperatureDifference', press, 'controlBand_K', lightPress.controlBand_K);
  const integral = known('time', press, 'controlIntegral_s', lightPress.controlIntegral_s);
  const tracking = known('time', press, 'controlTracking_s', lightPress.controlTracking_s);
  switch (press.controlKind ?? 'pi') {
    case 'proportional':
      return { control: { kind: 'proportional', band_K: band.value }, numbers: press_('controlBand_K', band) };
    case 'pi':
      return {
        control: { kind: 'pi', band_K: band.value, integral_s: integral.value, tracking_s: tracking.value },
        numbers: [...press_('controlBand_K', band), ...press_('controlIntegral', integral)],
      };
    case 'on-off':
      return onOff(press);
  }
}

function onOff(press: Press): ReturnType<typeof controlOf> {
  const hysteresis = known('temperatureDifference', press, 'controlHysteresis_K', lightPress.controlHysteresis_K);
  const sample = known('time', press, 'controlSample_s', lightPress.controlSample_s);
  return {
    control: { kind: 'on-off', hysteresis_K: hysteresis.value, sample_s: sample.value },
    numbers: press_('controlHysteresis_K', hysteresis),
  };
}
