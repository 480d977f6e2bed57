import type { recordsEn } from './en.ts';

export const recordsEs: Readonly<Record<keyof typeof recordsEn, string>> = {
  'refusal.byte-order-mark': 'el texto empieza con una marca de orden de bytes. Guardarlo como UTF-8 sin ella.',
  'refusal.not-utf8': 'los bytes no son UTF-8. Guardar el texto como UTF-8.',
  'refusal.duplicate-name': 'un nombre está dos veces en un objeto. Quitar uno.',
  'refusal.too-deep': 'demasiados niveles: como máximo {max, select, none {32} other {{max}}}. Hacerlo más plano.',
  'refusal.number-not-finite': 'un número no es finito o es mayor de lo que cabe. Corregirlo.',
  'refusal.lone-surrogate': 'una letra está partida (medio par sustituto). Corregir el texto.',
  'refusal.not-plain-data':
    'solo se guardan textos, números finitos, true, false, null, listas y objetos. Quitar lo demás.',
  'refusal.not-hex': 'no es hexadecimal: hacen falta pares de cifras de 0 a 9 y de a a f. Corregirlo.',
  'refusal.wrong-length': 'hay {value} y debe ser {allowed}. Comprobar que se copió entero.',
  'refusal.not-a-hash':
    'se dio «{value}» y hace falta un SHA-256 de 64 cifras hexadecimales. Comprobar que se copió entero.',
  'refusal.not-a-moment': 'se dio «{value}» y debe ser un momento en UTC como 2026-11-25T02:04:00Z.',
  'refusal.empty': 'está vacío. Rellenarlo.',
  'refusal.unsafe-integer':
    'se dio {value}: los enteros más allá de {max} no se guardan exactos. Escribirlo como texto.',
  'refusal.event-too-large': 'hay {value} y en un evento caben {max} como máximo. Adjuntar lo largo como archivo.',
  'refusal.wrong-device': 'el punto de control es de otro dispositivo. Dar el de este registro.',
  'refusal.checkpoint-behind':
    'el punto de control cubre {value} eventos y el registro tiene {min}. Firmar antes uno nuevo.',
  'refusal.file-too-large': 'el archivo contiene {value} y se leen {max} como máximo. Exportar menos de una vez.',
  'refusal.file-many-entries':
    'el archivo contiene {value} ficheros y se leen {max} como máximo. Exportar menos de una vez.',
  'refusal.file-ratio': '«{name}» se hace más de {max} veces mayor al descomprimir. No es una exportación; no abrirlo.',
  'refusal.file-path': '«{name}» apunta fuera del archivo. No es una exportación; no abrirlo.',
  'refusal.file-no-archive': 'no es una exportación ni un archivo entero. Obtener el archivo otra vez.',
  'refusal.file-no-log': 'en el archivo falta log.jsonl. Elegir un archivo exportado aquí.',
  'refusal.no-such-event': 'ese evento no está en el registro. Elegir uno del historial.',
  'refusal.nothing-to-undo':
    'de este evento no queda nada que deshacer: aquí no cambió nada, o todo está como antes. Cambiar la ficha misma.',
  'warning.clock-back':
    'línea {at} (la primera es 0): el reloj del dispositivo se había atrasado. No comparar las horas de antes y después.',
  'warning.not-witnessed':
    'desde la línea {at} (la primera es 0) ningún punto de control cubre los eventos de este dispositivo: si faltara algo al final, no se vería.',
  'warning.blob-missing':
    'la línea {at} (la primera es 0) nombra una imagen o curva que no está en este archivo ({blob}…).',
  'warning.blob-unnamed': 'ningún evento nombra la imagen o curva {blob}… de este archivo. No prueba nada.',
  'warning.file-unknown': '«{name}» no es parte de una exportación y no se miró.',
  'warning.witness-elsewhere':
    'la línea {at} (la primera es 0) de las contrafirmas trata de un registro que no está en este archivo.',
  'verdict.ok': 'Íntegro: ningún evento se cambió, movió o quitó después de firmarlo.',
  'verdict.not-canonical':
    'La línea {at} (la primera es 0) no está como se escribió: cambiada, dañada o cortada. Obtener otra copia.',
  'verdict.bad-envelope':
    'La línea {at} (la primera es 0) no tiene los campos de esta versión: la escribió un programa más nuevo, o se cambió.',
  'verdict.wrong-plant': 'La línea {at} (la primera es 0) es de otra planta.',
  'verdict.wrong-device': 'La línea {at} (la primera es 0) es de un dispositivo que no corresponde aquí.',
  'verdict.bad-signature': 'La línea {at} (la primera es 0) se cambió después de firmarla, o la firmó otro.',
  'verdict.sequence-gap': 'En la línea {at} (la primera es 0) faltan eventos, están repetidos o en otro orden.',
  'verdict.broken-link': 'La línea {at} (la primera es 0) no se sigue de lo anterior: allí se cambió algo.',
  'verdict.bad-checkpoint':
    'El punto de control{at, select, none {} other { de {at} eventos}} falta o no es de este registro. Obtener otra copia.',
  'verdict.truncated':
    'Falta el final después de {at}{witnessed, select, none {} other {; hubo {witnessed} eventos}}. Obtener otra copia.',
  'verdict.history-rewritten':
    'Los eventos hasta el número {at} se escribieron de nuevo cuando ya estaban atestiguados. Comparar con otra copia.',
  'verdict.fork': 'Desde el evento {at} las dos copias dicen cosas distintas: un dispositivo escribió ambas.',
  'verdict.prefix': 'Una copia acaba en {at} eventos y la otra sigue.',
  'verdict.blob-changed': 'Una imagen o curva que nombra la línea {at} (la primera es 0) no es la que se registró.',
  'verdict.bad-witness':
    'La línea {at} (la primera es 0) de las contrafirmas se cambió, o no lo es. Obtener la copia del propio testigo.',
  'verify.field': 'Campo: {field}.',
  'verify.device': 'Es el registro del dispositivo {device}.',
  'verify.blob': 'Fichero: blobs/{blob}; {field, select, bytes {su tamaño es otro} other {su contenido es otro}}.',
  'verify.by-witness': 'Lo dice la línea {witness} (la primera es 0) de las contrafirmas.',
  'verify.seen':
    '{device}: visto por {by, plural, =0 {ningún otro dispositivo, solo en este} one {otro dispositivo} other {otros # dispositivos}}{by, plural, =0 {} other {{open, plural, =0 {} one {; el último evento solo en este dispositivo} other {; los últimos # eventos solo en este dispositivo}}}}.',
  'witness.first-seen':
    '{device}: {size, plural, one {un evento contrafirmado} other {# eventos contrafirmados}}, visto por primera vez.',
  'witness.same':
    '{device}: {size, plural, one {un evento contrafirmado} other {# eventos contrafirmados}}; nada nuevo desde la última vez.',
  'witness.grown':
    '{device}: {size, plural, one {un evento contrafirmado} other {# eventos contrafirmados}}; contiene lo contrafirmado antes.',
  'witness.older':
    '{device}: esta copia tiene {size} eventos y ya se habían contrafirmado {known}. No contrafirmado: pedir la copia más nueva.',
  'witness.not-proved':
    '{device}: no consta que contenga los {known} eventos ya contrafirmados. No contrafirmado: pedir el registro entero.',
  'witness.fork':
    '{device}: ALARMA: dos historias distintas de {size} eventos, ambas firmadas por este dispositivo. Guardar los dos archivos y avisar a quien cuida los registros.',
  'witness.rewritten':
    '{device}: ALARMA: no contiene los {known} eventos ya contrafirmados; se escribieron de nuevo. Guardar los dos archivos y avisar.',
  'witness.no-key':
    '{file} no contiene una clave privada Ed25519 en forma PEM. Dar otro archivo, o uno que aún no exista.',
  'witness.new-key': 'Clave nueva para este testigo: {file}. No darla a nadie.',
  'witness.locked': 'Otro testigo usa este archivo. Esperar; si no hay ninguno, borrar {file} e intentarlo otra vez.',
  'witness.kept-damaged':
    '{file} está dañado: lo guardado no se puede comparar. Recuperarlo de una copia; no empezar de nuevo.',
  'verify.log':
    '{device}: {size, plural, one {un evento} other {# eventos}}, {open, plural, =0 {todos cubiertos por un punto de control} one {uno solo está en esta copia} other {# solo están en esta copia}}.',
  'verify.throwaway':
    'Firmado con una clave hecha para este archivo y desechada: los cambios posteriores se ven, quién lo escribió no. Código: {code}',
};
