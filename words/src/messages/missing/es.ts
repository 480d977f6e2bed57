import type { missingEn } from './en.ts';

export const missingEs: Readonly<Record<keyof typeof missingEn, string>> = {
  'missing.die':
    'Troquel desconocido. Leer en el troquel el paso y la longitud del dedo y compararlos con la correa; anotarlo en los datos de la planta.',
  'missing.template':
    'Plantilla desconocida. El alojamiento debe ser tan ancho como la correa y tan hondo como su espesor. Medir ambos con calibre.',
  'missing.press':
    'Prensa desconocida. Leer en la prensa el nombre, el tamaño de la placa y la fecha de la última revisión.',
  'missing.recipe':
    'No hay programa para esta correa en esta prensa. Pedir al fabricante de la correa temperatura, presión y tiempo de mantenimiento. No adivinar ni copiar sin comprobar el de otra prensa.',
  'missing.roll':
    'No consta ningún rollo de esta correa y ancho. Mirar en el almacén; leer lote y ancho, medir lo que queda.',
  'missing.path':
    'Recorrido de la correa desconocido; por eso no hay dibujo. Fotografiar el recorrido antes de sacar la correa; medir la línea como pide la toma de medidas.',
  'missing.take-up-stroke': 'Carrera del tensor desconocida. Medirla desde el tope flojo hasta el tope tenso.',
  'missing.take-up-position':
    'No consta dónde estaba el tensor. Medir desde el tope flojo antes de aflojarlo y anotarlo.',
  'missing.drive': 'Ninguna polea consta como motriz. Mirar cuál mueve el motor y anotar su función.',
  'missing.neutral-line':
    'Línea neutra de la correa desconocida; se toma la mitad del espesor. Mirar la hoja de datos del fabricante.',
  'missing.press-check':
    'Fecha de la última revisión de la prensa desconocida. Buscar la etiqueta en la prensa y anotar la fecha.',
  'missing.dry-data':
    'Tiempo y temperatura de secado de esta correa desconocidos. Usar correa de un rollo precintado o mirar la hoja de datos.',
  'missing.data-sheet':
    'No consta cuál es la hoja de datos de esta correa. Antes de cortar, comparar espesor, polea mínima y estirado con la hoja del fabricante; manda la hoja.',
  'missing.loop-length':
    'Longitud sin fin desconocida. Extender la correa vieja floja y plana y medir de punta a valle; si no está, medir la línea como pide la toma de medidas.',
};
