import type { problemsEn } from './en.ts';

export const problemsEs: Readonly<Record<keyof typeof problemsEn, string>> = {
  'place.file': '{file}',
  'place.row': '{file}, fila {row}',
  'place.field': '{file}, columna {field}',
  'place.row-field': '{file}, fila {row}, {field}',
  // What may be wrong with the files themselves.
  'problem.file-missing':
    'este archivo no está en la carpeta{other, select, none {} other {; {other} lo menciona}}. Añadirlo, con encabezado y una fila por elemento.',
  'problem.file-too-large':
    'el archivo tiene {value} bytes y se leen {max} como máximo. Dividirlo o quitar lo que no corresponde.',
  'problem.too-many-rows': 'más de {max} filas. Repartir la planta en varias carpetas.',
  'problem.too-many-columns': 'hay {value} columnas y se leen {max} como máximo. Quitar columnas vacías y ajenas.',
  'problem.not-text':
    'no se puede leer como texto (byte {value} en la posición {at}). Guardarlo otra vez como CSV en UTF-8.',
  'problem.workbook': 'es un libro de hoja de cálculo. Guardar la hoja como CSV en UTF-8.',
  'problem.open-quote': 'aquí se abren unas comillas que no se cierran. Cerrarlas o quitarlas.',
  'problem.no-header': 'falta la fila de encabezado. Poner los nombres de las columnas en la fila 1.',
  'problem.duplicate-column': 'las columnas «{value}» y «{other}» significan lo mismo. Dejar una.',
  'problem.unknown-column':
    'no se conoce la columna «{value}».{nearest, select, none {} other { Quizá sea «{nearest}».}} Cambiar el nombre o quitarla.',
  'problem.missing-column': 'falta una columna que toda fila necesita: {allowed}. Añadirla.',
  'problem.unit-missing': 'el encabezado «{value}» no dice la unidad. Escribir uno de estos: {allowed}.',
  'problem.unknown-unit':
    'el encabezado «{value}» termina en una unidad que no sirve ({unit}). Escribir uno de estos: {allowed}.',
  'problem.ragged-row':
    'la fila tiene {value} celdas y el encabezado {max}. Buscar un separador dentro de un texto y poner ese texto entre comillas.',
  'problem.not-one-row': 'hay {value} filas y se espera exactamente una. Dejar la fila de esta planta.',
  'problem.missing-value': 'la celda está vacía. Escribir el valor o quitar la fila.',
  'problem.not-a-number': 'pone «{value}» y hace falta un número. Escribir solo cifras; la unidad va en el encabezado.',
  'problem.decimal-comma':
    'pone «{value}» con coma decimal, pero aquí las comas separan columnas. Escribir punto o separar las columnas con punto y coma.',
  'problem.mixed-decimals':
    'coma decimal en «{value}» (fila {row}) y punto decimal en «{other}» (fila {otherRow}). Usar uno solo en todo el archivo.',
  'problem.thousands-separator':
    '«{value}» agrupa las cifras y no se sabe cuál es el signo decimal. Escribirlo sin agrupar, por ejemplo 64302.5.',
  'problem.out-of-range': 'pone {value} y debe ser {allowed}. Comprobar el número y la unidad del encabezado.',
  'problem.not-one-of': 'pone «{value}» y se admite: {allowed}. Escribir uno de ellos.',
  'problem.not-yes-or-no': 'pone «{value}» y hace falta sí o no. Escribir uno de los dos.',
  'problem.not-a-day': 'pone «{value}» y hace falta un día. Escribir año-mes-día, por ejemplo 2026-03-02.',
  'problem.not-a-moment': 'pone «{value}» y hace falta un momento en UTC. Escribirlo como 2026-11-25T02:04:00Z.',
  'problem.too-long': 'el texto tiene {length} caracteres y se admiten {max} como máximo. Acortarlo.',
  'problem.hidden-signs': 'el texto contiene un signo que no se ve ({value}). Escribirlo de nuevo a mano.',
  'problem.bad-id':
    '«{value}» no sirve como identificador. Usar de 1 a 40 letras, cifras, «-», «_» o «.», empezando por letra o cifra y sin espacios.',
  'problem.duplicate-id': '«{value}» ya está en la fila {otherRow}. Dar otro nombre a una de las dos o quitarla.',
  'problem.dangling-reference':
    '«{value}» no está en {other}.{nearest, select, none {} other { Quizá sea «{nearest}».}} Corregir el nombre o añadir la fila allí.',
  'problem.more-problems': 'hay {value} problemas más en este archivo. Corregir los anteriores y comprobar otra vez.',
  'problem.encoding-assumed': 'no es UTF-8; leído como {value}. Mirar acentos y eñes y guardarlo como UTF-8.',
  'problem.unknown-file':
    'este archivo no se lee.{nearest, select, none {} other { Quizá sea «{nearest}».}} Cambiar el nombre o dejarlo así.',
  // What may be wrong between the fields of a plant.
  'problem.neutral-line-outside-belt':
    'la línea neutra a {value} queda fuera de la correa, que tiene {max} de espesor. Escribir la distancia desde la cara de poleas, de 0 a {max}.',
  'problem.covers-over-thickness':
    'las dos cubiertas ocupan {value} de una correa de {max} y no dejan nada al elemento de tracción. Medir las cubiertas.',
  'problem.elongation-window-empty':
    'el estirado mínimo {value} no es menor que el máximo, {max}. Mirar los dos en la hoja de datos.',
  'problem.die-fits-no-belt':
    'ninguna correa lleva dedos de {pitch} × {fingerLength}. Comprobar las dos medidas en el troquel.',
  'problem.line-without-die':
    'ningún troquel corta los dedos de la correa {other}, {pitch} × {fingerLength}. Añadir el troquel o corregir los dedos de la correa.',
  'problem.die-too-narrow':
    'la correa tiene {value} de ancho y el troquel {other} admite {max} como máximo. Añadir un troquel más ancho o corregir el ancho.',
  'problem.line-without-template':
    'ninguna plantilla tiene alojamiento para la correa {other} de {value} de ancho. Añadir la plantilla o medir otra vez el alojamiento.',
  'problem.template-wider-than-die':
    'el alojamiento tiene {value} de ancho y el troquel {other} corta {max} como máximo. Comprobar ambos.',
  'problem.template-depth-differs':
    'el alojamiento tiene {value} de hondo; la correa {other}, la más cercana, tiene {max}. Una profundidad errónea aplasta o vacía el empalme. Medir el alojamiento.',
  'problem.belt-wider-than-pulley':
    'la polea tiene {value} de ancho y la correa de la línea {other} necesita al menos {min}. Comprobar ambos.',
  'problem.pulley-under-limit':
    'el diámetro es {value} y la correa {other} necesita al menos {min}. Ahí se agrieta pronto. Medir otra vez; si es así, prever una polea mayor.',
  'problem.counter-bend-under-limit':
    'la polea toca la cara de rodillos y tiene {value}; la correa {other} necesita ahí al menos {min}. El empalme se agrieta pronto. Medir otra vez; si es así, prever una polea mayor.',
  'problem.take-up-reference-over-stroke':
    'las coordenadas corresponden a {value} de carrera y la total es {max}. Corregir uno de los dos.',
  'problem.take-up-over-stroke':
    'el tensor está a {value} y la carrera de la línea {other} es {max}. Medir ambos desde el tope flojo.',
  'problem.take-up-stroke-missing':
    'hay tensor, pero falta su carrera. Medirla desde el tope flojo hasta el tope tenso.',
  'problem.take-up-direction-missing':
    'el tensor no tiene dirección (0, 0). Escribir hacia dónde se mueve al tensar, por ejemplo 0 y -1 hacia abajo.',
  'problem.take-up-force-missing':
    'un tensor de {value, select, spring {muelle} gravity {contrapeso} other {{value}}} necesita su fuerza. Pesarlo o leerla en el muelle.',
  'problem.drives-not-one': 'hay {value} poleas motrices y se espera exactamente una. Marcar la que mueve el motor.',
  'problem.take-ups-not-one': 'hay {value} poleas tensoras y se espera exactamente una. Marcar la que se mueve.',
  'problem.take-up-not-expected':
    'la línea dice que no hay tensor, pero la polea {other} lo es. Corregir uno de los dos.',
  'problem.duplicate-order':
    'el número {value} del orden de marcha ya es de la polea {other} de la línea {line}. Numerar las poleas como las encuentra la correa.',
  'problem.line-without-path':
    'no hay poleas ni toma de medidas, así que no se puede dibujar el recorrido. Escribir las poleas o medir la línea como pide la toma de medidas.',
  'problem.survey-refused': 'la toma de medidas de la línea {line} no da ningún recorrido. {reason}',
  'problem.path-refused': 'tal como está, aquí no puede correr ninguna correa. {reason}',
  'problem.elongation-outside-window':
    'estirado {value}; la correa {other} está hecha para {allowed}. Comprobar el valor en la línea.',
  'problem.recipe-not-above-opening': 'la temperatura {value} no supera la de apertura, {min}. Comprobar el programa.',
  'problem.recipe-over-press-pressure':
    'el programa pide {value} en la correa y la prensa {other} da {max} como máximo. Usar otra prensa o comprobar el programa.',
};
