import type { CycleCurve } from '@loopwright/jobs';
import type { Press, Recipe } from '@loopwright/plant';
import { recipeCurve } from '../../drawing/recipe-curve.ts';
import { stackDrawing } from '../../drawing/stack-drawing.ts';
import { figureOf, sourceWord, written } from '../figure.ts';
import type { Block, Figure, Row } from '../page.ts';
import { displayVoice, openingTemperature } from './press-display.ts';
import { type CardReader, caution, overleaf, row, rows, type Step, text, unknowns } from './section.ts';

/** Plates are let cool below this before a belt goes in. Common practice, no source. */
const coldPlate_degC = 40;

function pressRow({ card, voice }: CardReader, press: Press): Row {
  const age = card.press.checkAge_days;
  const notes = [
    ...(age === undefined ? [] : [voice.say('card.press.checked', { days: voice.write(age, 'days') })]),
    ...(press.place ? [press.place] : []),
  ];
  return {
    label: voice.say('card.press.name', { press: press.id }),
    text: press.name,
    ...(notes.length > 0 && { note: notes.join(' · ') }),
  };
}

function stack(reader: CardReader): Block {
  const { card, voice } = reader;
  const { template, stripHeight } = card.press;
  const lower = (word: string): string => (voice.language === 'de' ? word : word.toLocaleLowerCase(voice.language));
  const layer = (code: 'bottom-plate' | 'template' | 'release-cloth' | 'press-plate' | 'sensor-lead'): string =>
    lower(voice.say(`stack.${code}`));
  const pocket = template && [
    voice.show(template.pocketWidth_m, 'length').value,
    voice.write(template.pocketDepth_m, 'shortLength'),
  ];
  const words = {
    bottomPlate: layer('bottom-plate'),
    template: template
      ? voice.say('card.press.template', {
          template: layer('template'),
          pocket: pocket?.join('\u00a0×\u00a0') ?? '',
          mat: voice.write(template.mat_m, 'shortLength'),
        })
      : layer('template'),
    strips: voice.say('card.press.strips', { height: written(stripHeight, voice, { kind: 'shortLength' }) }),
    belt: voice.say('card.press.belt-down'),
    cloth: layer('release-cloth'),
    pressPlate: layer('press-plate'),
    sensorLead: layer('sensor-lead'),
  };
  const alt = voice.say('card.press.stack-drawing', { layers: Object.values(words).join('; ') });
  return { kind: 'drawing', drawing: stackDrawing({ alt, ...words }), overleaf: true };
}

type Labelled = { readonly label: string; readonly figure: Figure };

function temperatures(reader: CardReader, recipe: Recipe): Labelled[] {
  const { voice } = reader;
  const display = displayVoice(reader);
  const one = (label: string, degC: number): Labelled => ({
    label,
    figure: { ...display.show(degC, 'temperature'), source: sourceWord(recipe.source, voice) },
  });
  if (recipe.top_degC === recipe.bottom_degC) return [one(voice.say('card.press.both'), recipe.top_degC)];
  return [one(voice.say('card.press.top'), recipe.top_degC), one(voice.say('card.press.bottom'), recipe.bottom_degC)];
}

function recipeFigures(reader: CardReader, recipe: Recipe): Block {
  const { card, voice } = reader;
  const { dwell, gaugePressure } = card.press;
  return {
    kind: 'figures',
    figures: [
      ...temperatures(reader, recipe),
      ...(dwell ? [{ label: voice.say('card.press.hold'), figure: figureOf(dwell, voice, { digits: 0 }) }] : []),
      ...(gaugePressure ? [{ label: voice.say('card.press.gauge'), figure: figureOf(gaugePressure, voice) }] : []),
    ],
  };
}

function setPointCaution(reader: CardReader, recipe: Recipe): Block[] {
  const { press } = reader.card.press;
  if (press?.setPoints !== 1 || recipe.top_degC === recipe.bottom_degC) return [];
  const display = displayVoice(reader);
  const values = {
    press: press.name,
    top: display.write(recipe.top_degC, 'temperature'),
    bottom: display.write(recipe.bottom_degC, 'temperature'),
  };
  return [caution('stop', reader.voice.say('card.press.one-set-point', values))];
}

function recipeBlocks(reader: CardReader, recipe: Recipe): Block[] {
  const { card, voice } = reader;
  const display = displayVoice(reader);
  const { press } = card.press;
  const name = voice.say('card.press.recipe', { recipe: recipe.id, revision: recipe.revision });
  const wins = voice.say(recipe.source === 'data sheet' ? 'card.press.sheet' : 'card.press.example');
  const unit = display.show(recipe.top_degC, 'temperature').unit;
  const shown = press ? [voice.say('card.press.display', { press: press.name, unit })] : [];
  return [
    ...setPointCaution(reader, recipe),
    recipeFigures(reader, recipe),
    ...overleaf(
      rows([
        ...row(reader, 'card.press.belt-pressure', card.press.beltPressure),
        ...row(reader, 'card.press.without-strips', card.press.pressureWithoutStrips),
      ]),
    ),
    text([name, ...shown, wins].join(' · '), 'soft'),
  ];
}

/** Stack, recipe and pressure of the press. */
export function pressStep(reader: CardReader): Step {
  const { card, voice } = reader;
  const { press, recipe } = card.press;
  const cold = displayVoice(reader).write(coldPlate_degC, 'temperature');
  return {
    id: 'press',
    title: voice.say('card.step.press'),
    blocks: [
      ...(press ? rows([pressRow(reader, press)]) : []),
      stack(reader),
      ...(recipe ? recipeBlocks(reader, recipe) : []),
      text(voice.say('card.press.steps', { cold })),
      caution('care', voice.say('card.ppe.press')),
      ...unknowns(reader, ['recipe', 'press-check']),
    ],
  };
}

/** What happens while the press is closed; nothing needs doing, and nothing may be opened. */
export function cycleStep(reader: CardReader): Step {
  const { card, voice } = reader;
  return {
    id: 'cycle',
    title: voice.say('card.step.cycle'),
    blocks: [...curve(reader), ...expected(reader), text(voice.say('card.cycle.keep-closed'))].filter(
      () => card.press.recipe !== undefined || card.press.press !== undefined,
    ),
  };
}

/** What the computed cycle takes, and what it rests on. */
function expected({ card, voice }: CardReader): Block[] {
  const { cycle, press } = card.press;
  if (!press || cycle?.status !== 'ok') return [];
  const { ready, open, energy, current } = cycle;
  const from = `${figureOf(open, voice).range ?? ''}\u00a0min`;
  const found = {
    from,
    ready: written(ready, voice),
    open: written(open, voice),
    energy: written(energy, voice),
    current: written(current, voice),
  };
  const rests = {
    press: press.name,
    volts: written(cycle.volts, voice),
    lead: written(cycle.lead, voice),
    air: written(cycle.air, voice),
  };
  return [text(voice.say('cycle.card', found)), text(voice.say('cycle.card.rests', rests), 'soft')];
}

function curve(reader: CardReader): Block[] {
  const { card, voice } = reader;
  const { recipe, readyAt, openAt, dwell } = card.press;
  if (!recipe || !readyAt || !openAt || !dwell) return [];
  const [ready, open] = [written(readyAt, voice), written(openAt, voice)];
  const hold = written(dwell, voice, { digits: 0 });
  return [
    {
      kind: 'drawing',
      drawing: recipeCurve({
        alt: voice.say('card.cycle.drawing', { ready, hold, open }),
        ready_s: readyAt.value,
        dwell_s: dwell.value,
        open_s: openAt.value,
        top_degC: Math.max(recipe.top_degC, recipe.bottom_degC),
        open_degC: recipe.open_degC,
        ...(card.press.cycle?.status === 'ok' && { computed: hotterPlaten(card.press.cycle.curve) }),
        heat: voice.say('card.cycle.heat', { time: ready }),
        hold: voice.say('card.cycle.hold', { time: hold }),
        cool: voice.say('card.cycle.cool', { time: open }),
        openAt: voice.say('card.cycle.open', { temperature: openingTemperature(reader) ?? '' }),
      }),
    },
  ];
}

/** The hotter of the two platens over time. */
function hotterPlaten({ times_s, topPlaten, bottomPlaten }: CycleCurve): { t_s: number; degC: number }[] {
  return times_s.map((t_s, i) => ({ t_s, degC: Math.max(topPlaten[i] ?? 0, bottomPlaten[i] ?? 0) }));
}
