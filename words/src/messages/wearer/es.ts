import type { wearerEn } from './en.ts';

/** Quién lleva un distintivo, aparte de los registros. */
export const wearerEs: Readonly<Record<keyof typeof wearerEn, string>> = {
  'wearer.title': 'Quién lleva este distintivo',
  'wearer.about':
    'Los registros solo conocen el distintivo, nunca un nombre. Un nombre anotado aquí queda en este dispositivo: sellado, en ninguna exportación y en ninguna copia.',
  'wearer.nobody-noted': 'Aquí no hay nadie anotado.',
  'wearer.not-here': 'Había alguien anotado; en este dispositivo ya no se puede leer.',
  'wearer.erased': 'Quién llevaba este distintivo se borró el {at}.',
  'wearer.name': 'Nombre',
  'wearer.note': 'Anotarlo en este dispositivo',
  'wearer.erase': 'Borrar para siempre quién es',
  'wearer.erase.hold': 'Mantener 1 s',
  'wearer.erase.gone':
    'Desaparece: el nombre, su clave y el enlace con este distintivo, en este dispositivo. Nada los devuelve.',
  'wearer.erase.stays':
    'Queda: el distintivo, todo lo escrito con él, y que se borró a alguien. Los registros quedan enteros y se pueden comprobar como antes.',
  'wearer.fault': 'No se pudo escribir entero. {reason}',
};
