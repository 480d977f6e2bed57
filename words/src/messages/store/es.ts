import type { storeEn } from './en.ts';

export const storeEs: Readonly<Record<keyof typeof storeEn, string>> = {
  'store.demo': 'Planta de demostración, inventada.',
  'store.device': 'Este dispositivo',
  'store.everything': 'Exportar o importar todo',
  'store.plant-name': 'Nombre de la planta',
  'store.persist': 'Conservar los registros en este dispositivo',
  'store.lost.read': 'Leído',
  'store.notice.lost':
    'Faltan {count, plural, one {# registro} other {# registros}} de {name} que se conservaban aquí: el navegador borró o dañó su almacenamiento. Importar la última exportación antes de introducir nada.',
  'store.notice.back-again':
    'El navegador perdió o dañó su almacenamiento. {count, plural, one {# registro} other {# registros}} de {name} volvieron de la segunda copia. Este dispositivo firma desde ahora con una clave nueva. Exportar todo.',
  'store.notice.broken':
    'La cadena de registros está rota en el número {at}. Ya no se añade nada. Exportar todo ahora y enseñar el archivo a quien cuida los registros.',
  'store.notice.newer':
    'Hay una versión más nueva abierta en otra pestaña. Volver a cargar esta página; hasta entonces aquí no se conserva nada.',
  'store.notice.closed':
    'El navegador cerró el almacenamiento. Volver a cargar esta página; hasta entonces aquí no se conserva nada.',
  'store.notice.no-storage':
    'Este navegador prohíbe guardar: la planta solo se muestra y lo que se introduzca se pierde. Permitir el almacenamiento para esta página.',
  'store.notice.blocked':
    'Hay una versión más antigua abierta en otra pestaña: la planta solo se muestra. Cerrar las otras pestañas de esta aplicación y volver a cargar la página.',
  'store.notice.reserve-used':
    'El disco estaba lleno y se usó la reserva. Exportar todo y luego hacer sitio en el dispositivo.',
  'store.notice.nearly-full':
    'Queda poco sitio: {used} MB de {quota} MB ocupados. Exportar todo y luego hacer sitio en el dispositivo.',
  'store.notice.private':
    'Parece una ventana privada: al cerrarla se borran los registros. Usar una ventana normal o exportar antes de cerrarla.',
  'store.notice.clock':
    'El reloj de este dispositivo saltó {seconds} s. Queda registrado. Comprobar fecha y hora en el dispositivo.',
  'store.notice.unknown-events':
    '{count, plural, one {# registro es de una versión más nueva: se conserva, pero no se muestra.} other {# registros son de una versión más nueva: se conservan, pero no se muestran.}} Actualizar esta aplicación.',
  'store.notice.practice-only':
    'Solo para practicar: en una pestaña este navegador borra todo tras siete días sin uso. Antes del primer registro, poner la página en la pantalla de inicio y abrirla desde allí.',
  'store.notice.install-first':
    'Instalar la aplicación antes del primer registro: en una pestaña el navegador puede borrarlo todo si falta sitio.',
  'store.notice.not-persisted':
    'El navegador no ha prometido conservar los registros si falta sitio. Instalar la aplicación y exportar todo de vez en cuando.',
  'store.notice.persisted': 'El navegador prometió conservar los registros.',
  'store.notice.copied': 'Cada registro está escrito dos veces en este dispositivo.',
  'store.notice.not-copied':
    'La segunda copia de los registros no se escribe: este navegador no tiene sitio para ella, o el disco está lleno. Exportar todo de vez en cuando.',
  'store.notice.key-copyable':
    'La clave de este dispositivo se puede copiar: este navegador no sabe guardarla bajo llave. Uno más nuevo sí.',
  'store.quota': 'No se guardó: el disco está lleno. Exportar todo, hacer sitio y guardar otra vez.',
  'store.blocked':
    'Hay una versión más antigua abierta en otra pestaña. Cerrar las otras pestañas de esta aplicación y volver a cargar la página.',
  'store.busy': 'No se guardó: otra pestaña estaba escribiendo. Guardar otra vez.',
  'store.closed':
    'No se guardó: el navegador cerró el almacenamiento. Volver a cargar la página e introducirlo otra vez.',
  'store.broken':
    'No se guardó: la cadena de registros está rota. Exportar todo y enseñar el archivo a quien cuida los registros.',
  'store.refused': 'No se guardó: no es un registro completo ({type}). Revisar los datos y guardar otra vez.',
  'store.clock':
    'No se guardó: el reloj de este dispositivo muestra una fecha imposible. Ajustar fecha y hora y guardar otra vez.',
  'store.no-storage':
    'No se guardó: este navegador prohíbe guardar. Permitir el almacenamiento para esta página y volver a cargarla.',
  'store.newer': 'No se guardó: aquí estuvo una versión más nueva. Volver a cargar la página.',
  'store.failed':
    'No se guardó: el navegador no pudo escribir ({reason}). Guardar otra vez; si vuelve a fallar, volver a cargar la página.',
  'store.no-such-event': 'Ese cambio no existe en esta planta. Volver a cargar la página.',
  'store.no-such-plant': 'Esa planta no está en este dispositivo. Volver a cargar la página.',
  'store.nothing-to-undo': 'No hay nada que deshacer: ya está como antes.',
  'store.file-too-large':
    'No se tomó: desempaquetado, el archivo tiene {value} MB; se permiten {max} MB como máximo. Exportarlo de nuevo.',
  'store.file-many-entries':
    'No se tomó: el archivo contiene {value} ficheros; se permiten {max} como máximo. Exportarlo de nuevo.',
  'store.file-ratio':
    'No se tomó: «{name}» crecería más de {max} veces al desempaquetarse, como ninguna exportación. Exportarlo de nuevo.',
  'store.file-path': 'No se tomó: «{name}» sale de su carpeta, como en ninguna exportación. Exportarlo de nuevo.',
  'store.file-no-archive':
    'No se tomó: no es un archivo de exportación completo. Copiarlo otra vez del otro dispositivo o exportarlo de nuevo.',
  'store.file-no-log': 'No se tomó: el archivo no contiene registros. Elegir un archivo hecho con «Exportar todo».',
  'store.file-blob':
    'No se tomó: una imagen del archivo no es la registrada ({name}). Copiar o exportar el archivo de nuevo.',
  'store.file-verdict':
    'No se tomó: la línea {line} del archivo {verdict, select, truncated {falta: el archivo está cortado} other {no es como la escribió su dispositivo}} ({verdict}). Copiar el archivo otra vez o exportarlo de nuevo.',
  'store.file-newer':
    'No se tomó: el archivo lo escribió una versión más nueva de esta aplicación (formato {version}; esta lee el formato {known}). Actualizar esta aplicación e importar el archivo otra vez.',
  'store.file-fork':
    'No se tomó: en el registro {seq} el archivo dice otra cosa que este dispositivo, con la misma firma. Conservar ambos y enseñarlos a quien cuida los registros.',
  'store.file-nothing-new': 'No se tomó: este dispositivo ya tiene todo lo que hay en el archivo.',
};
