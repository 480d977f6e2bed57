import type { scanEn } from './en.ts';

export const scanEs: Readonly<Record<keyof typeof scanEn, string>> = {
  'scan.title': 'Escanear una posición',
  'scan.aim': 'Poner la etiqueta de la posición en el marco, a un brazo de distancia.',
  'scan.starting': 'La cámara se enciende …',
  'scan.camera.denied': 'Esta página no puede usar la cámara.',
  'scan.camera-next.denied':
    'Permitir la cámara para esta página en los ajustes del navegador y probar otra vez. O escribir la posición.',
  'scan.camera.none': 'Este dispositivo no tiene una cámara que una página pueda usar.',
  'scan.camera-next.none': 'Escribir la posición o elegir una foto de su etiqueta.',
  'scan.camera.busy': 'Otro programa ocupa la cámara, o no se enciende.',
  'scan.camera-next.busy': 'Cerrar el otro programa y probar otra vez. O escribir la posición.',
  'scan.camera.insecure': 'El navegador solo da la cámara a páginas de https o de este mismo dispositivo.',
  'scan.camera-next.insecure': 'Escribir la posición o elegir una foto de su etiqueta.',
  'scan.again': 'Probar otra vez la cámara',
  'scan.dark': 'Está demasiado oscuro para leer. Llevar luz a la etiqueta o escribir la posición.',
  'scan.slow':
    'Aún no se ha leído nada. Limpiar la etiqueta, poner la cámara de frente y más cerca, o escribir la posición.',
  'scan.reader': 'La parte que lee códigos no se pudo cargar. Volver a cargar la página o escribir la posición.',
  'scan.torch': 'Luz',
  'scan.type': 'Escribirla a mano',
  'scan.type.hint': 'como en la etiqueta',
  'scan.photo': 'Elegir una foto de ella',
  'scan.photo.reading': 'Se lee la foto …',
  'scan.photo.nothing':
    'No hay ningún código en esta foto. Tomarla más cerca, de frente y nítida, o escribir la posición.',
  'scan.photo.not': 'Este archivo no es una foto que se pueda leer. Elegir un JPEG o PNG de 30 MB como máximo.',
  'scan.says': 'Dice:',
  'scan.refused.address': 'Este código contiene una dirección, no una posición. No se ha abierto.',
  'scan.refused.foreign': 'Este código no es la etiqueta de una posición.',
  'scan.refused.later-form':
    'Esta etiqueta tiene una forma posterior a la que lee esta versión. Tomar la nueva versión de la aplicación o escribir la posición.',
  'scan.refused.malformed': 'Esta etiqueta no está completa. Escribir la posición que lleva e imprimir una nueva.',
  'scan.refused.checksum':
    'Esta etiqueta se leyó mal: la suma de control no coincide. Limpiarla y escanear otra vez, o escribir la posición.',
  'scan.refused.empty': 'Este código está vacío.',
  'scan.unknown': 'La etiqueta dice {position}; en la planta {plant} no existe esa posición.',
  'scan.unknown.next': 'Quizá se quitó o cambió de nombre. Buscarla abajo o imprimir una etiqueta nueva.',
  'scan.other-plant': 'Esta etiqueta se imprimió para una planta distinta de {plant}.',
  'scan.other-plant.here': 'Aquí también hay una {position}. Abrirla solo si la etiqueta cuelga en esta planta.',
  'scan.other-plant.none': 'Cambiar la planta en los ajustes o escribir la posición.',
  'scan.open': 'Abrir {position} de esta planta',
};
