import type { seenEn } from './en.ts';

/** Aparatos que dan fe de los registros de otros. */
export const seenEs: Readonly<Record<keyof typeof seenEn, string>> = {
  'seen.title': 'Quién ha visto los registros',
  'seen.about':
    'Lo que solo tiene este dispositivo puede perderse o escribirse de nuevo sin dejar rastro. Otro dispositivo que ha visto los registros da fe de ellos: se nota si se cambian después.',
  'seen.nothing-kept': 'Esta página no guarda nada, así que no da fe. Cargarla otra vez o permitirle guardar.',
  'seen.own': 'Registros de este dispositivo',
  'seen.own.nothing': 'Este dispositivo aún no ha escrito nada en esta planta. Introducir algo primero.',
  'seen.only-here':
    'Solo en este dispositivo: {count, plural, one {su único registro} other {todos sus # registros}}. Dejar que otro dispositivo los vea.',
  'seen.seen':
    'Visto por otro dispositivo: {open, plural, =0 {todos sus {count} registros} one {todos sus {count} registros menos el último} other {todos sus {count} registros menos los # últimos}}.',
  'seen.by': 'El dispositivo {device} vio {size, plural, one {un registro} other {# registros}} el {at}.',
  'seen.on-card': 'diario de {count, plural, one {# registro} other {# registros}}: {code}',
  'seen.code': 'Código:',
  'seen.code.help':
    'El código de estos registros, como está en un informe impreso. Papel y registros se pueden comparar.',
  'seen.show': 'Poner esto ante la cámara del otro dispositivo, en esta misma página:',
  'seen.show.label': 'Código con lo que este dispositivo dice de sus registros',
  'seen.other': 'Registros de otro dispositivo',
  'seen.other.help':
    'Leer el código de la pantalla del otro dispositivo: este dispositivo recuerda lo que dice y firma que lo vio. Leer igual la respuesta del otro.',
  'seen.camera.on': 'Leer un código con la cámara',
  'seen.camera.off': 'Apagar la cámara',
  'seen.type': 'O lo que escribe un lector de mano',
  'seen.type.take': 'Tomarlo',
  'seen.file': 'Tomar un archivo de contrafirmas',
  'seen.file.help': 'Un archivo witnesses.jsonl de un dispositivo o servidor que vio los registros de esta planta.',
  'seen.back': 'Poner ahora esto ante la cámara del otro dispositivo, para que lo sepa:',
  'seen.back.label': 'Código con la contrafirma de este dispositivo',
  'seen.unreadable.damaged':
    'Este código no se leyó entero. Acercar la cámara sin moverla o dar más brillo a la otra pantalla.',
  'seen.unreadable.other':
    'No es un código de esta página. En el otro dispositivo abrir «Quién ha visto los registros».',
  'seen.not-met.own': 'Es el código de este mismo dispositivo. Un dispositivo no es testigo de sus propios registros.',
  'seen.not-met.other-plant': 'Este código es de otra planta. Mostrar la misma planta en los dos dispositivos.',
  'seen.not-met.unsound': 'Este código no está firmado por el dispositivo que nombra. No se contrafirmó nada.',
  'seen.taken':
    '{fresh, plural, =0 {Nada nuevo: } one {Una contrafirma queda guardada. } other {# contrafirmas quedan guardadas. }}{known, plural, =0 {} one {Una ya se conocía. } other {# ya se conocían. }}{elsewhere, plural, =0 {} one {Una es de registros que no están en este dispositivo.} other {# son de registros que no están en este dispositivo.}}',
  'seen.not-taken': 'No se tomó ninguna de las contrafirmas.',
};
