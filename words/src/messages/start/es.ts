import type { startEn } from './en.ts';

export const startEs: Readonly<Record<keyof typeof startEn, string>> = {
  'start.title': 'Planta propia',
  'start.step': '{at} de {count}: {step}',
  'start.step.name': 'el nombre',
  'start.step.belts': 'la correa',
  'start.step.lines': 'la línea',
  'start.step.measure': 'el recorrido',
  'start.step.positions': 'las posiciones',
  'start.done': 'listo',
  'start.leave': 'Salir y seguir más tarde',
  'start.next': 'Guardar y seguir',
  'start.name': '¿Cómo se llama la planta?',
  'start.name.help': 'El nombre figura en cada ficha. La planta se queda en este dispositivo.',
  'start.name.demo':
    'La planta de demostración también se queda en este dispositivo; los ajustes llevan de vuelta a ella.',
  'start.name.missing': 'No hay nada escrito. Escribir un nombre por el que se conozca la planta.',
  'start.belts': '¿Qué correa corre ahí?',
  'start.help.belts':
    'Copiar estos números de la hoja de datos de la correa. Siempre vale más que cualquier número nuestro.',
  'start.lines': '¿En qué línea corre?',
  'start.help.lines': 'Estimar la carga si nadie la ha pesado; se puede cambiar en cualquier momento.',
  'start.positions': '¿Cuántas correas corren en {line}?',
  'start.positions.help': 'Una posición por correa, numeradas 1, 2, 3 a lo largo de la línea.',
  'start.positions.count': 'Número de posiciones',
  'start.positions.wrong': 'Hay «{value}», hace falta un número entero de 1 a {max}. Contar las correas.',
  'start.ready': 'La primera ficha está lista',
  'start.ready.help':
    'Lo que la planta todavía no sabe, como troquel, prensa o programa, figura en la ficha como algo por medir o consultar.',
  'start.ready.card': 'Ficha de empalme {position}',
  'start.ready.more': 'Introducir más en las existencias',
};
