import type { stepsEn } from './en.ts';

export const stepsEs: Readonly<Record<keyof typeof stepsEn, string>> = {
  // Causes to settle before anything is cut.
  'cause.rollers-spin': '¿Gira cada rodillo a mano?',
  'cause.build-up': '¿Suciedad pegada en poleas o rodillos?',
  'cause.sharp-edge': '¿Algún canto vivo que toque la correa?',
  'cause.seized-snub': '¿Rodillo de desvío bloqueado?',
  'cause.wet-bed': '¿Zona mojada o goteo sobre la correa?',
  'cause.keep-torn-piece': 'Guardar y etiquetar el trozo roto: dice por qué se rompió.',
  // What must lie ready before the knife comes out.
  'gather.belt-roll': 'Correa en el rollo',
  'gather.die': 'Troquel',
  'gather.template': 'Plantilla',
  'gather.press': 'Prensa',
  'gather.lead': 'Cable, desenrollado del todo',
  'gather.release-cloth': 'Tela antiadherente',
  'gather.edge-strips': 'Suplementos laterales del espesor de la correa',
  'gather.dummy-pieces': 'Piezas de relleno para alojamientos vacíos',
  'gather.gloves-glasses': 'Guantes de corte y de calor, gafas',
  'gather.lock-and-tag': 'Candado y etiqueta',
  'gather.knife-square-tape': 'Cuchilla nueva, escuadra, cinta métrica',
  'gather.chalk': 'Tiza',
  'gather.resistance-meter': 'Medidor de resistencia',
  // The press stack, bottom first.
  'stack.bottom-plate': 'Placa inferior',
  'stack.template': 'Plantilla',
  'stack.belt': 'Correa con suplementos laterales',
  'stack.release-cloth': 'Tela antiadherente',
  'stack.press-plate': 'Placa de presión',
  'stack.sensor-lead': 'Cable del sensor',
  // After the press.
  'inspect.open':
    'Abrir cuando las dos pantallas marquen {open, select, none {50 °C (122 °F)} other {{open}}} o menos.',
  'inspect.lift-out': 'Sacar con la plantilla, soltar las mordazas, retirar la tela.',
  'inspect.lie-flat': 'Dejar plana 10 minutos.',
  'inspect.trim-flash': 'Recortar la rebaba a ras, sin tocar los hilos.',
  'inspect.both-faces':
    'Mirar las dos caras: contornos fundidos y apenas visibles, sin marrón, sin burbujas, sin escalón.',
  'inspect.straight': 'Recta: como máximo 2 mm por metro (0,024 in por pie).',
  'inspect.bend-by-hand': 'En frío, doblar a mano hacia los dos lados con el radio de la polea menor.',
  'inspect.antistatic-resistance': 'Medir la resistencia a través del empalme.',
  // Back to running.
  'restart.tension-three-quarters': 'Tensar a tres cuartos.',
  'restart.tools-counted': 'Contar las herramientas.',
  'restart.guards-on': 'Montar las protecciones.',
  'restart.people-clear': 'Todos fuera de la zona.',
  'restart.lock-off': 'Quitar el candado.',
  'restart.jog-three-turns': 'Dar tres vueltas a impulsos.',
  'restart.lock-on': 'Volver a poner el candado.',
  'restart.final-tension': 'Tensado final por las marcas; un muelle mantiene la fuerza mientras la correa cede.',
  'restart.unlock': 'Quitar el candado, todos fuera.',
  'restart.track-outside-guards': 'Centrar desde fuera de las protecciones. Sin guantes cerca de rodillos en marcha.',
  'restart.watch-splice': 'Mirar el empalme sobre cada polea: en vacío, con carga y al cabo de una hora.',
  // Parts of the time needed.
  'timePart.isolate': 'Bloquear y buscar la causa',
  'timePart.fetch': 'Traer todo',
  'timePart.prepare-thread': 'Cortar, troquelar, pasar',
  'timePart.mesh-clamp': 'Encajar y sujetar',
  'timePart.press': 'En la prensa',
  'timePart.inspect-restart': 'Revisar, tensar, centrar',
  'timePart.alone': 'Caminar, si se está solo',
};
