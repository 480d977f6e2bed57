import type { photoEn } from './en.ts';

/** Una foto que queda con los registros. */
export const photoEs: Readonly<Record<keyof typeof photoEn, string>> = {
  'photo.take': '{side}: hacer una foto',
  'photo.take-again': '{side}: hacer otra foto',
  'photo.choose': 'Elegir una foto hecha antes',
  'photo.reading': 'Se lee y se reduce la foto …',
  'photo.reading-large': 'Una foto de {megapixels} millones de puntos: reducirla tarda unos segundos …',
  'photo.stop': 'Dejar de leer',
  'photo.keeping': 'La foto pasa al disco de este dispositivo …',
  'photo.kept': 'Guardada en este dispositivo: {width} × {height} puntos. Sin lugar, hora ni cámara.',
  'photo.not-kept': 'La foto está leída y aún no guardada. {reason}',
  'photo.keep-again': 'Intentar guardarla otra vez',
  'photo.thumb.reading': '{label}: se busca la foto …',
  'photo.thumb.not-here':
    '{label}: la foto no está en este dispositivo. Importar los registros del dispositivo que la hizo; la traen consigo.',
  'photo.thumb.damaged':
    '{label}: la foto está dañada y no se puede mostrar. Importar otra vez los registros de un dispositivo que la tenga.',
  'photo.fault.empty': 'El archivo está vacío: 0 bytes. Hacer la foto otra vez.',
  'photo.fault.unreadable':
    'El archivo ya no se puede leer: se movió o no está en este dispositivo. Guardarlo aquí y elegirlo otra vez.',
  'photo.fault.too-large':
    'El archivo tiene {size} MB; se leen {most} MB como máximo. Poner la cámara en un tamaño menor y hacer la foto otra vez.',
  'photo.fault.not-a-photo':
    'Este archivo no es una imagen, diga lo que diga su nombre. Hacer una foto o elegir un JPEG, PNG o WebP.',
  'photo.fault.moving':
    'Es un GIF o una imagen en movimiento, no una sola foto. Hacer una foto o elegir un JPEG, PNG o WebP.',
  'photo.fault.cut': 'El archivo termina antes que la imagen. Copiarlo otra vez o hacer la foto otra vez.',
  'photo.fault.too-many-dots':
    'La imagen tiene {dots} millones de puntos; de su clase se abren {most} millones como máximo. Poner la cámara en un tamaño menor y hacer la foto otra vez.',
  'photo.fault.heif':
    'Este navegador no lee fotos de esta forma (HEIC o AVIF). Poner la cámara en JPEG y hacer la foto otra vez.',
  'photo.fault.not-decoded':
    'La imagen está dañada, o este dispositivo no tiene sitio para abrirla. Cerrar otras páginas y hacer la foto otra vez.',
  'photo.fault.stopped': 'Detenido; esta foto no se guardó. Hacerla en cuanto se pueda.',
};
