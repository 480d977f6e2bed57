import type { labelsEn } from './en.ts';

export const labelsEs: Readonly<Record<keyof typeof labelsEn, string>> = {
  'labels.title': 'Etiquetas de posición',
  'labels.line': 'Línea',
  'labels.place': 'Lugar',
  'labels.belt': 'Correa',
  'labels.sheet': 'Imprimir al 100 %, cortar por las marcas · hoja {sheet} de {sheets}',
  'labels.about':
    'La etiqueta cuelga en su posición. Al escanearla se abre allí la ficha de empalme. Imprimir al 100 %, sin ajustar.',
  'labels.which': '¿Qué posiciones?',
  'labels.all': 'Todas las posiciones',
  'labels.single': 'Elegir sueltas',
  'labels.of': '{chosen} de {count}',
  'labels.paper': 'Papel',
  'labels.paper.A4': 'A4',
  'labels.paper.letter': 'Carta (EE. UU.)',
  'labels.count':
    '{count, plural, =0 {Ninguna etiqueta elegida} one {# etiqueta} other {# etiquetas}} · {sheets, plural, one {# hoja} other {# hojas}}',
  'labels.none-chosen': 'Elegir una línea o una posición.',
  'labels.no-positions':
    'Aún no hay posiciones. Primero introducir una línea y sus posiciones, después imprimir sus etiquetas.',
  'labels.pdf': 'Crear PDF de etiquetas',
  'labels.working': 'Se crea el PDF …',
  'labels.stop': 'Parar',
  'labels.stopped': 'Parado. No se ha creado ningún PDF.',
  'labels.done': 'El PDF está en las descargas.',
  'labels.failed': 'El PDF no se ha creado. Volver a cargar la página y pulsar otra vez, o elegir menos posiciones.',
  'labels.print': 'Imprimir etiquetas',
  'labels.print-line': 'Etiquetas de esta línea',
  'labels.print-one': 'Etiqueta de esta posición',
  'labels.unknown-line': 'No hay ninguna línea {value} en la planta {plant}. Líneas: {known}.',
  'labels.empty': 'No hay ninguna posición para imprimir una etiqueta.',
  'labels.terminal': 'etiquetas de las posiciones en PDF, con el código que escanea la aplicación',
  'labels.terminal-file': 'archivo PDF que se escribe',
  'labels.terminal-line': 'solo las posiciones de esta línea; puede repetirse',
  'labels.terminal-position': 'solo esta posición; puede repetirse',
  'labels.terminal-paper': 'papel del PDF: a4 o letter',
  'labels.wrote':
    '{file} escrito: {labels, plural, one {# etiqueta} other {# etiquetas}} en {sheets, plural, one {# hoja} other {# hojas}}. Imprimir al 100 %.',
};
