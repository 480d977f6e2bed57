import type { recipesEn } from './en.ts';

export const recipesEs: Readonly<Record<keyof typeof recipesEn, string>> = {
  'recipes.about': '¿Qué valores para esta correa en esta prensa? Abrir uno para ver su ciclo y probar otros.',
  'recipes.none-for-belt':
    'Aún no hay programa para esta correa. Preguntar al fabricante por temperatura, presión y tiempo; vale la hoja de datos.',
  'recipes.look-for': 'Probar valores',
  'recipes.any-press': 'cualquier prensa',
  'recipes.revision': 'edición {revision}',
  'recipes.settings': 'arriba {top}, abajo {bottom}, {dwell}, {pressure}',
  'recipes.missing.recipe':
    'Aún no hay programa con que empezar. Anotar uno en Almacén: de la hoja de datos de la correa o de la prensa.',
  'recipes.missing.press': 'Aún no hay prensa. Anotar una en Almacén: sin prensa no hay ciclo.',
  'recipes.missing.unknown': 'Aquí nada se llama {id}. Volver a los programas y elegir uno.',
  'recipes.plugged-in': 'Enchufada en',
  'recipes.elsewhere': 'otro lugar',
  'recipes.settings-title': 'Valores para probar',
  'recipes.set.top': 'Placa superior',
  'recipes.set.bottom': 'Placa inferior',
  'recipes.set.dwell': 'Mantenimiento',
  'recipes.set.pressure': 'Presión sobre la correa',
  'recipes.set.open': 'Abrir a, como mucho',
  'recipes.set.volts': 'Red en el enchufe',
  'recipes.set.air': 'Aire',
  'recipes.set.lead': 'Alargador',
  'recipes.was': 'antes {value}',
  'recipes.less': '{setting}: menos',
  'recipes.more': '{setting}: más',
  'recipes.reset': 'Volver al programa',
  'recipes.keep': 'Guardar para comparar',
  'recipes.keep-instead': 'Guardar este en su lugar',
  'recipes.drop': 'Dejar de comparar',
  'recipes.compared': 'Este ciclo junto al guardado',
  'recipes.now': 'ahora',
  'recipes.kept': 'guardado',
  'recipes.of': 'De',
  'recipes.grade': 'Empalme',
  'recipes.two.now': '{line}, ahora',
  'recipes.two.kept': '{line}, guardado',
  'recipes.two.open-now': 'abrir, ahora',
  'recipes.two.open-kept': 'abrir, guardado',
  'recipes.two.drawing':
    'Dos ciclos superpuestos. Ahora, línea continua: {now} como máximo en la correa, abrir tras {open}. Guardado, a trazos: {kept}, abrir tras {keptOpen}.',
  'recipes.two.fusion':
    'Unión y daño de ambos. Ahora, línea continua: la unión llega a {now}. Guardado, a trazos: {kept}.',
  'recipes.other-belt':
    'El programa {recipe} es para {other}. Para {belt} sus valores son solo un comienzo: calculado, comprobar.',
  'recipes.other-press':
    'El programa {recipe} es para otra prensa. En {press} no vale sin cambios: calculado, comprobar.',
  'recipes.example-press':
    'Prensa de ejemplo, no medida: {count, plural, one {# número} other {# números}} de la prensa {press} y su apilado {count, plural, one {sustituye} other {sustituyen}} lo que nadie ha anotado.',
  'recipes.sheet-wins':
    'Vale la hoja de datos del fabricante de la correa. Calculado, sin calibrar: comprobar con un empalme de prueba.',
  'recipes.take-along': 'Llevar consigo',
  'recipes.save.pdf': 'Papel (PDF)',
  'recipes.save.svg': 'Curva (SVG)',
  'recipes.save.png': 'Curva (PNG)',
  'recipes.save.csv': 'Números (CSV)',
  'recipes.save.working': 'Preparando el archivo …',
  'recipes.save.done': 'El archivo está en las descargas.',
  'recipes.save.failed': 'El archivo no se hizo. Cargar la página otra vez y pulsar de nuevo.',
  'recipes.rests': 'En qué se basa',
  'recipes.open-cycle': 'Ciclo de prensa',
};
