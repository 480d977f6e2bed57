import type { loggerEn } from './en.ts';

export const loggerEs: Readonly<Record<keyof typeof loggerEn, string>> = {
  'logger.title': 'Curva de un registrador',
  'logger.at-row': 'Línea {row}: {said}',
  'logger.at-cell': 'Línea {row}, columna {column}: {said}',
  'logger.fault.empty': 'el archivo está vacío. Elegir el CSV del registrador.',
  'logger.fault.not-text': 'esto no es texto. Exportar como CSV en UTF-8.',
  'logger.fault.line-too-long': 'más de {longest} caracteres. No es una tabla; exportar como CSV.',
  'logger.fault.no-columns': 'sin columnas en «{value}». Las columnas se separan con coma, punto y coma o tabulador.',
  'logger.fault.decimal-comma':
    '«{value}»: coma entre columnas y en los números. Exportar con punto y coma entre columnas.',
  'logger.fault.no-time':
    'sin columna de tiempos; «{value}» no lo es. Tiempos: segundos, mm:ss, hh:mm:ss o fecha y hora.',
  'logger.fault.no-temperature': 'sin columna de temperaturas entre {columns}. Incluir los sensores en la exportación.',
  'logger.fault.date-order': '«{value}»: ¿día o mes primero? Exportar la fecha con el año primero.',
  'logger.fault.columns-missing': '{found} columnas, hacen falta {wanted}. Exportar otra vez.',
  'logger.fault.not-a-number': '«{value}» no es una temperatura. Corregir la celda o dejarla vacía.',
  'logger.fault.time-not-read': '«{value}» no es un tiempo como los demás. Corregir la celda.',
  'logger.fault.time-goes-back':
    '«{value}» es anterior a la línea {before}. Ordenar por tiempo, o partir el archivo donde se ajustó el reloj.',
  'logger.fault.time-stands-still': 'las {count} filas tienen el mismo tiempo. Exportar tiempos con segundos.',
  'logger.fault.temperature-impossible':
    '{value} no puede ser: entre {least} y {most} sí. ¿Otra unidad, o un sensor roto?',
  'logger.fault.unit-unclear':
    'de {least} a {most} no encaja °C, °F ni K en una prensa. Decir la unidad, o revisar el sensor.',
  'logger.fault.too-few-rows': '{count} filas con lectura, hacen falta dos.',
  'logger.fault.stopped': 'detenido; no se leyó nada.',
  'logger.fault.source-broke':
    'no se pudo leer el archivo hasta el final: {reason}. Copiarlo a este dispositivo y probar de nuevo.',
  'logger.note.rows-repeated': 'filas repetidas: {count}, tomadas una vez.',
  'logger.note.same-time': 'filas con el tiempo de la anterior: {count}, todas guardadas.',
  'logger.note.cells-missing': 'celdas sin lectura: {count}, vacías.',
  'logger.note.last-row-cut': 'la última fila está cortada y se omite.',
  'logger.note.gap': 'sin registro durante {length}, de {from} a {to}. No se rellena.',
  'logger.note.one-sensor': 'un solo sensor: no se pueden comparar los dos lados.',
  'logger.note.thinned': 'se guardan {kept} de {count} filas, con el mínimo y el máximo de cada tramo.',
  'logger.question.temperature-unit': 'Falta la unidad. Leído en {unit}, lo más caliente es {hottest}. ¿Es así?',
  'logger.question.time-unit': 'Falta la unidad de tiempo. Leído en {unit}, la curva dura {length}. ¿Es así?',
  'logger.question.columns':
    'Arriba es la columna {top}, {bottom, select, none {falta abajo} other {abajo es la columna {bottom}}}. ¿Es así?',
  'logger.question.columns-swapped':
    'Los títulos no encajan con los números. El tiempo se lee de la columna {time}. ¿Es así?',
  'logger.unit.degC': '°C',
  'logger.unit.degF': '°F',
  'logger.unit.K': 'K',
  'logger.unit.ms': 'milisegundos',
  'logger.unit.s': 'segundos',
  'logger.unit.min': 'minutos',
  'logger.unit.h': 'horas',
  'logger.unit.day': 'días',
  'logger.unit.clock-seconds': 'minutos y segundos',
  'logger.unit.clock-minutes': 'horas y minutos',
};
