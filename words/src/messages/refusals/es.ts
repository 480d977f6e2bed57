import type { refusalsEn } from './en.ts';

export const refusalsEs: Readonly<Record<keyof typeof refusalsEn, string>> = {
  'limits.between': 'de {min} a {max}',
  'limits.whole': 'un número entero',
  'limits.finite': 'un número finito',
  'refusal.unknown': 'no se puede calcular con esto ({details}). Comprobar este valor y probar otra vez.',
  // Reading the input.
  'refusal.not-json':
    'no es JSON{line, select, none {} other {: la lectura se para en la línea {line}, columna {column}, en «{found}»}}. Corregirlo ahí.',
  'refusal.too-large': 'hay {value} y se leen {max} como máximo. Enviar menos de una vez.',
  'refusal.wrong-type':
    'se dio «{value}» y hace falta {expected, select, object {un objeto} array {una lista} string {un texto} boolean {true o false} tuple {una lista} other {{expected}}}. Corregir la forma.',
  'refusal.missing-field': 'falta este campo. Añadirlo.',
  'refusal.unknown-field':
    'no se conoce el campo «{field}».{meant, select, none {} other { Quizá sea «{meant}».}} Corregir el nombre o quitarlo.',
  'refusal.not-one-of': 'se dio «{value}» y se admite: {allowed}. Usar uno de ellos.',
  'refusal.not-a-number': 'se dio «{value}» y hace falta un número. Escribir cifras sin unidad.',
  'refusal.not-finite': 'se dio {value} y hace falta un número finito. Escribir un número.',
  'refusal.out-of-range': 'se dio {value} y debe ser {allowed}. Corregir el valor.',
  'refusal.too-few': 'hay {count} entradas y debe ser {allowed}. Añadir las que faltan.',
  'refusal.too-many': 'hay {count} entradas y debe ser {allowed}. Quitar algunas.',
  'refusal.no-result': 'estos valores juntos no dan un número finito. Buscar un cero o unidades confundidas.',
  'refusal.one-of': 'dar exactamente uno de: {fields}.',
  'refusal.wrong-way-round':
    'se dio {value} y debe ser {allowed}. El final va después del principio: cambiarlos o corregirlos.',
  'refusal.wrong-count': 'hay {value} entradas y se esperan exactamente {min}. Dar una para cada uno.',
  // The path of the belt.
  'refusal.too-few-pulleys':
    'hay {value} poleas y debe ser {allowed}. Dar cada polea que toca la correa, en orden de marcha.',
  'refusal.no-tangent':
    'entre las poleas {pulley} y {other} no cabe un tramo recto: sus centros distan {value} y debe ser {allowed}. Comprobar coordenadas, radios y giros.',
  'refusal.pulley-not-touched':
    'la correa no toca la polea {pulley} por el lado indicado{others, select, none {} other {, ni {others}}}. Comprobar su posición y su giro, u omitirla.',
  'refusal.pulleys-overlap':
    'las poleas {pulley} y {other} se solapan: sus centros distan {value} y debe ser {allowed}. Comprobar coordenadas y radios.',
  'refusal.belt-hits-pulley':
    'la correa de la polea {other} a la {otherTo} atraviesa la polea {pulley}: pasa a {value} de su centro y debe ser {allowed}. Comprobar su posición o rodearla.',
  'refusal.belt-crosses-itself':
    'la correa se cruza en la polea {pulley}{other, select, none {} other { y {other}}}. Comprobar orden y giros; un ocho necesita crossed: true.',
  'refusal.belt-not-crossed':
    'se pide una correa cruzada, pero esta no se cruza. Poner crossed en false o comprobar los giros.',
  'refusal.face-contradicts-turn':
    'la polea {pulley} gira a la {turn, select, left {izquierda} right {derecha} other {{turn}}} y toca la {expected, select, running {cara de poleas} back {cara de rodillos} other {{expected}}}, no la {value, select, running {cara de poleas} back {cara de rodillos} other {{value}}}. Corregir cara o giro.',
  'refusal.no-direction': 'la dirección es 0, 0. Escribir hacia dónde apunta, por ejemplo 0 y -1 hacia abajo.',
  'refusal.take-up-shortens-loop':
    'en esta dirección el tensor no alarga el recorrido ({value}; debe ser {allowed}). Invertir la dirección o comprobar qué polea es.',
  // Lengths and splices.
  'refusal.nothing-left':
    'se dio {value} y debe ser {allowed}: con más no quedaría correa. Corregir el recorte o la longitud.',
  'refusal.too-few-sources': 'hay {value} fuentes y debe ser {allowed}. Dar al menos una longitud conocida.',
  'refusal.too-many-sources': 'hay {value} fuentes y debe ser {allowed}. Dejar las mejores.',
  'refusal.length-mismatch': 'hay {value} entradas y se esperan {expected}, una por ensayo. Añadir o quitar.',
  'refusal.unknown-fabric': 'se dio «{value}» y se admite: {allowed}. Usar uno de ellos.',
  'refusal.tension-too-small':
    'se dio {value} y debe ser {allowed}: por debajo el ramal flojo cuelga. Usar una correa más ancha o menos potencia.',
  // The survey of a line.
  'refusal.measurement-missing': 'falta esta medida. Medir: {question}. La disposición la necesita: {layout}.',
  'refusal.measurement-not-used':
    'se dio {value}, pero esta disposición no tiene esa medida: {layout}. Quitarla o elegir otra disposición.',
  'refusal.measurement-out-of-order':
    'con {value} la polea {pulley} queda a {reached} y debe ser {allowed}: estaría antes que la anterior. Medir las dos otra vez.',
  'refusal.same-end':
    'el accionamiento y el tensor no pueden estar en el mismo extremo ({value, select, infeed {entrada} discharge {salida} other {{value}}}). Corregir uno de los dos.',
  // Notes beside a result that was computed all the same.
  'note.not-in-place':
    'los extremos no se juntan en el sitio: hay que recoger {value} de correa. Buscar más carrera del tensor o tirar con mordazas.',
  'note.take-up-blocked':
    'antes de {value} de carrera la polea tensora choca con la correa o con otra polea. Comprobar carrera y dirección.',
  'note.belt-broke':
    'en {count} de {of} ensayos se rompió la correa y no el empalme; cuentan como cota inferior. La resistencia real es mayor.',
  'note.spread-too-wide':
    'los ensayos se dispersan tanto que la resistencia característica es {value}. Ensayar más muestras y buscar la causa.',
  'note.deflection-large':
    'hundida {value}, más de {max}: el estirado falsea la lectura. Empujar menos y medir otra vez.',
  'note.stretch-explains-push':
    'el estirado y la flexión explican por sí solos los {value}; de ahí no sale ninguna tensión. Comprobar fuerza, flecha y rigidez.',
  'note.span-too-short':
    'el tramo libre mide {value}; por debajo de {min} la rigidez de la correa falsea el tono. Usar un tramo más largo.',
  'note.bending-outweighs-tension':
    'con esta rigidez a flexión ({value}) el tono viene de la rigidez y no de la tensión. Comprobar el valor o usar un tramo más largo.',
  'note.beyond-measured-relaxation':
    'el tiempo de {value} queda más allá de las lecturas, que acaban en {max}; la recta se prolonga. Leer otra vez al cabo de un día.',
  'note.belt-goes-slack':
    'el ramal flojo tiene {value} y necesita más de {min} para seguir en la polea. Tensar más o quitar carga.',
  'note.slip': 'la correa patina: agarra {value} veces el tiro y hace falta al menos {min}. Tensar más o quitar carga.',
  'note.take-up-on-tight-side':
    'la polea tensora está en el ramal tenso; cede con la carga. Comprobar accionamiento, ramal y sentido de marcha.',
};
