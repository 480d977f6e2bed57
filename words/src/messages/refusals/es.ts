import type { refusalsEn } from './en.ts';

export const refusalsEs: Readonly<Record<keyof typeof refusalsEn, string>> = {
  'limits.between': 'de {min} a {max}',
  'limits.whole': 'un número entero',
  'limits.finite': 'un número finito',
  'limits.and': '{first}, {second}',
  'refusal.unknown': 'no se puede calcular con esto ({details}). Comprobar este valor y probar otra vez.',
  // Reading the input.
  'refusal.not-json':
    'no es JSON: la lectura se para en la línea {line}, columna {column}, en «{found}». Corregirlo ahí.',
  'refusal.too-large': 'hay {value} y se leen {max} como máximo. Enviar menos de una vez.',
  'refusal.wrong-type':
    'se dio «{value}» y hace falta {expected, select, object {un objeto} array {una lista} string {un texto} boolean {true o false} tuple {una lista} other {{expected}}}. Corregir la forma.',
  'refusal.missing-field': 'falta este campo. Añadirlo.',
  'refusal.unknown-field':
    'no se conoce el campo «{field}».{meant, select, none {} other { Quizá sea «{meant}».}} Corregir el nombre o quitarlo.',
  'refusal.not-one-of': 'se dio «{value}» y se admite: {allowed}. Usar uno de ellos.',
  'refusal.not-a-number': 'se dio «{value}» y hace falta un número. Escribir cifras sin unidad.',
  'refusal.not-finite': 'se dio {value} y hace falta un número finito. Escribir un número.',
  'refusal.out-of-range': 'se dio {value} y debe ser {allowed}. Corregir el valor.',
  'refusal.too-few': 'hay {count} entradas y debe ser {allowed}. Añadir las que faltan.',
  'refusal.too-many': 'hay {count} entradas y debe ser {allowed}. Quitar algunas.',
  'refusal.no-result': 'estos valores juntos no dan un número finito. Buscar un cero o unidades confundidas.',
};
