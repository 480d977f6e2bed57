import type { tablesEn } from './en.ts';

/** Sentences about tables that are taken in and given out, and about everything as one file. */
export const tablesEs: Readonly<Record<keyof typeof tablesEn, string>> = {
  'tables.open': 'Cargar o sacar una tabla',
  'tables.title': '{kind} en una tabla',
  'tables.in': 'Cargar una tabla',
  'tables.in.help':
    'Un archivo CSV o XLSX con fila de encabezados; de un libro, su primera hoja. Las filas nuevas se añaden, las de nombre corto conocido lo cambian, no se quita nada. Las columnas que faltan se quedan como están.',
  'tables.in.before': 'Se ve todo antes de cargarlo.',
  'tables.choose': 'Elegir un archivo',
  'tables.choose.other': 'Elegir otro archivo',
  'tables.stage.opening': 'Abriendo el archivo …',
  'tables.stage.unpacking': 'Descomprimiendo el libro …',
  'tables.stage.checking': 'Comparando cada fila con la planta …',
  'tables.stage.step': 'Paso {step} de {of}',
  'tables.stop': 'Parar',
  'tables.stopped': 'Parado. No ha cambiado nada.',
  'tables.found': '{rows, plural, one {# fila} other {# filas}} en {file}',
  'tables.added': 'nuevas',
  'tables.changed': 'cambiadas',
  'tables.unchanged': 'sin cambios',
  'tables.wrong': 'no se pueden cargar',
  'tables.more-names': 'y {count} más',
  'tables.nothing': 'Todo lo que contiene ya está aquí. No hay nada que cargar.',
  'tables.empty': 'No hay filas bajo los encabezados. Rellenarlas y elegir otra vez el archivo.',
  'tables.refused': 'Mientras una fila no valga, no se carga nada. Corregir estas en el archivo y elegirlo otra vez.',
  'tables.refused.title': '{count, plural, one {# punto por corregir} other {# puntos por corregir}}',
  'tables.cares': 'Mirar esto. Se puede cargar así.',
  'tables.at.row': 'Fila {row}',
  'tables.at.row-field': 'Fila {row}, columna {field}',
  'tables.at.field': 'Columna {field}',
  'tables.at.file': 'Todo el archivo',
  'tables.show-all': 'Mostrar las {count}',
  'tables.take': '{count, plural, one {Cargar # fila} other {Cargar las # filas}}',
  'tables.taking': 'Guardando todas las filas, o ninguna …',
  'tables.taken':
    'Guardado: {added, plural, one {# nueva} other {# nuevas}}, {changed, plural, one {# cambiada} other {# cambiadas}}.',
  'tables.undoing': 'Deshaciendo todo …',
  'tables.undone': 'Todo está como antes.',
  'tables.overtaken':
    'La planta cambió mientras tanto en otro sitio y la tabla se ha comparado otra vez. Repasarla de nuevo.',
  'tables.out': 'Sacar una tabla',
  'tables.out.help':
    '{count, plural, one {# fila} other {# filas}} para mirar, cambiar y volver a cargar. Los textos que una hoja de cálculo ejecutaría como fórmula llevan delante un apóstrofo.',
  'tables.out.empty': 'Todavía no hay nada: el archivo trae los encabezados, para rellenar debajo.',
  'tables.out.csv': 'Como CSV',
  'tables.out.xlsx': 'Como XLSX',
  'tables.out.making': 'Escribiendo el archivo …',
  'tables.out.done': '{file} está en las descargas de este navegador.',
  'tables.fault.too-large': 'No cargado: el archivo tiene {value} MB y se leen {max} MB como máximo. Dividirlo.',
  'tables.fault.old-workbook':
    'No cargado: es un libro antiguo o con contraseña. Guardarlo como XLSX sin contraseña, o como CSV.',
  'tables.fault.no-workbook':
    'No cargado: no es un libro XLSX completo. Abrirlo en la hoja de cálculo y guardarlo otra vez como XLSX o CSV.',
  'tables.fault.many-files':
    'No cargado: el libro contiene {value} archivos y se leen {max} como máximo. Guardar solo la hoja como CSV.',
  'tables.fault.unpacks-large':
    'No cargado: descomprimido, el libro tiene {value} MB y se leen {max} MB como máximo. Guardar solo la hoja como CSV, o dividirla.',
  'tables.fault.steep':
    'No cargado: una parte del libro ocupa descomprimida más de {max} veces su tamaño, y ninguna tabla hace eso. Guardar la hoja como CSV.',
  'tables.fault.many-rows':
    'No cargado: la hoja llega hasta la fila {value} y se leen {max} como máximo. Borrar lo que hay muy por debajo de la tabla, o dividirla.',
  'tables.fault.many-columns':
    'No cargado: la hoja llega hasta la columna {value} y se leen {max} como máximo. Borrar lo que hay muy a la derecha de la tabla.',
  'tables.fault.many-cells': 'No cargado: la hoja abarca {value} celdas y se leen {max} como máximo. Dividirla.',
  'tables.fault.failed':
    'No ha funcionado y no ha cambiado nada. Probar otra vez; si vuelve a fallar, cargar la página de nuevo.',
  'everything.title': 'Todo en un archivo',
  'everything.out': 'Exportar todo',
  'everything.out.help':
    'Todos los registros de {name}, firmados, con imágenes y curvas, en un archivo. Guardar una copia en otro dispositivo: lo que solo tiene uno se pierde con él.',
  'everything.verifier': 'Descargar el verificador',
  'everything.verifier.help':
    'Quien vaya a comprobar el archivo no tiene que fiarse de esta app: un programa de un solo fichero, para Node o un navegador, dice si está íntegro.',
  'everything.out.making': 'Escribiendo {count, plural, one {# registro} other {# registros}} …',
  'everything.out.done': '{file} ({size} MB) está en las descargas de este navegador. Copiarlo a otro dispositivo.',
  'everything.in': 'Importar un archivo exportado',
  'everything.in.help':
    'Un archivo hecho con «Exportar todo» en este dispositivo u otro. Se revisa entero, línea por línea, y se ve qué contiene antes de cargar nada.',
  'everything.checking': 'Revisando cada línea y firma …',
  'everything.whole': '{file} está completo.',
  'everything.plant': 'Planta',
  'everything.records': 'Registros',
  'everything.records.new': '{count}, de ellos {fresh} nuevos aquí',
  'everything.devices': 'Dispositivos que los escribieron',
  'everything.pictures': 'Imágenes y curvas',
  'everything.pictures.missing': '{count} (faltan {missing})',
  'everything.relation.first': 'En este dispositivo todavía no hay nada: después mostrará esta planta.',
  'everything.relation.same': 'Esta planta ya está aquí: se le añade lo nuevo.',
  'everything.relation.other':
    'Es otra planta. Después se mostrará; {name} se queda en el dispositivo y los ajustes llevan de vuelta.',
  'everything.unknown':
    '{count, plural, one {# registro lo escribió una versión más nueva: se guarda, pero no se muestra.} other {# registros los escribió una versión más nueva: se guardan, pero no se muestran.}} Actualizar esta aplicación.',
  'everything.not-witnessed':
    '{count, plural, one {# registro no tiene} other {# registros no tienen}} detrás una declaración firmada del dispositivo: probablemente el archivo se hizo antes de los últimos.',
  'everything.take': 'Cargarlo todo',
  'everything.taking': 'Guardando todo, o nada …',
  'everything.taken': 'Todo está guardado en este dispositivo. Ahora muestra {name}.',
  'everything.no': 'No cargarlo',
};
