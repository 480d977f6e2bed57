import type { warningsEn } from './en.ts';

export const warningsEs: Readonly<Record<keyof typeof warningsEn, string>> = {
  'warning.pulley-under-limit':
    'La polea {pulley} tiene {diameter}; la correa necesita al menos {limit}. Ahí se agrieta pronto. Montar una polea mayor o una correa más delgada.',
  'warning.counter-bend-under-limit':
    'La polea {pulley} dobla la correa al revés y tiene {diameter}; para eso hacen falta al menos {limit}. El empalme se agrieta pronto ahí. Montar una mayor.',
  'warning.slip':
    'La correa patina: la carga pide {pull}; con {set} patina a partir de {limit}. {needed, select, none {Quitar carga o mejorar el agarre.} other {Tensar a {needed} o quitar carga.}}',
  'warning.slip-reserve-low':
    'Poca reserva de agarre: {reserve} veces el tiro; se busca {wanted}. Una polea motriz mojada o sucia hará patinar la correa. {needed, select, none {Limpiar la polea motriz.} other {Tensar a {needed} o limpiar la polea motriz.}}',
  'warning.elongation-under-window':
    'El estirado de {set} está por debajo del margen de la correa ({low} a {high}). La correa puede patinar y desviarse. Comprobar el valor de la línea.',
  'warning.elongation-over-window':
    'El estirado de {set} está por encima del margen de la correa ({low} a {high}). Sobrecarga los rodamientos y el empalme. Comprobar el valor de la línea.',
  'warning.not-in-place':
    'Los extremos no se juntan sin tirar: el tensor debe ceder {needed} y cede {available}. {pull, select, none {Buscar más carrera o intercalar un tramo más largo.} other {Recoger {pull} de correa con mordazas, buscar más carrera o intercalar un tramo más largo.}}',
  'warning.sources-disagree':
    'Las longitudes conocidas no coinciden: difieren en {difference}, más de lo que explica el azar. Medir otra vez antes de cortar.',
  'warning.take-up-exhausted':
    'Al tensor le quedan {left} de carrera para retensar. Puede llegar al tope antes de que la correa esté tensa. Comprobar la longitud antes de cortar.',
  'warning.press-check-overdue':
    'Prensa {press}: última revisión hace {age}; toca cada {interval}. La temperatura o la presión pueden fallar. Usar una prensa al día o revisar esta primero.',
  'warning.press-check-unknown':
    'Prensa {press}: no consta ninguna revisión. Buscar la etiqueta. Si no la hay, prensar antes una muestra con termopar.',
  'warning.press-check-ahead':
    'Prensa {press}: su revisión está anotada para un día al que faltan {days}. Leer otra vez la etiqueta y anotar el día correcto, o usar una prensa al día.',
  'warning.press-too-small':
    'La prensa {press} es pequeña: el empalme necesita {needed} y la placa mide {available}. Las puntas quedan frías. Usar una prensa mayor.',
  'warning.belt-wider-than-pulley':
    'La correa ({width}) es más ancha que la polea {pulley} ({face}). El borde se deshilacha. Comprobar las dos medidas en la línea.',
  'warning.thin-edge-finger':
    'El dedo de borde más fino mide {score}; se buscan al menos {threshold}. Se levanta en la prensa o se deshilacha. Ajustar el tope como en el dibujo y mirar los dos bordes.',
  'warning.roll-too-short':
    'Al rollo {roll} le quedan {left} y hacen falta {needed}. Usar otro rollo. No empezar a cortar este.',
  'warning.roll-not-sealed':
    'El rollo {roll} no está precintado. La correa húmeda hace burbujas. Usar un rollo precintado{time, select, none { o secar los extremos según la hoja de datos} other { o secar los extremos {time} a {temperature}}}. Nunca con pistola de calor.',
  'warning.bag-pressure-over-press':
    'El programa pide {needed} en el manómetro y la prensa {press} da {maximum} como máximo. Con menos, la soldadura queda fría. Usar otra prensa.',
  'warning.wet-area':
    'Zona mojada. El agua hace burbujas en el empalme y vuelve peligrosa la electricidad. Secar el puesto, alimentar la prensa con protección diferencial y mantener el cable fuera del agua.',
  'warning.antistatic-area':
    'Zona sensible a la electricidad estática. Aquí solo va correa antiestática. Medir la resistencia a través del empalme antes de arrancar la línea.',
  'warning.explosive-area':
    'Zona con riesgo de explosión. La prensa caliente y su interruptor pueden inflamar. Pedir antes el permiso de trabajo en caliente o empalmar fuera de la zona.',
  'warning.food-area':
    'Zona alimentaria. Los recortes y la tiza llegan al producto. Cubrir la línea, contar herramientas y recortes, limpiar como manda la planta.',
  'warning.take-up-on-tight-side':
    'El tensor está en el ramal tenso del accionamiento. Cede con la carga y la correa patina. Comprobar el sentido de marcha y la polea motriz en los datos de la planta.',
};
