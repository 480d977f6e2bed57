import type { refusalsEn } from './en.ts';

export const refusalsDe: Readonly<Record<keyof typeof refusalsEn, string>> = {
  'limits.between': '{min} bis {max}',
  'limits.whole': 'eine ganze Zahl',
  'limits.finite': 'eine endliche Zahl',
  'refusal.unknown': 'damit lässt sich nicht rechnen ({details}). Diesen Wert prüfen und erneut versuchen.',
  // Reading the input.
  'refusal.not-json':
    'kein JSON{line, select, none {} other {: Lesen endet in Zeile {line}, Spalte {column}, bei „{found}“}}. Dort berichtigen.',
  'refusal.too-large': '{value} erhalten, gelesen werden höchstens {max}. Weniger auf einmal senden.',
  'refusal.wrong-type':
    '„{value}“ erhalten, nötig ist {expected, select, object {ein Objekt} array {eine Liste} string {ein Text} boolean {true oder false} tuple {eine Liste} other {{expected}}}. Form berichtigen.',
  'refusal.missing-field': 'dieses Feld fehlt. Ergänzen.',
  'refusal.unknown-field':
    'Feld „{field}“ ist nicht bekannt.{meant, select, none {} other { Gemeint ist vielleicht „{meant}“.}} Namen berichtigen oder Feld entfernen.',
  'refusal.not-one-of': '„{value}“ erhalten, erlaubt sind: {allowed}. Eines davon verwenden.',
  'refusal.not-a-number': '„{value}“ erhalten, nötig ist eine Zahl. Ziffern ohne Einheit eingeben.',
  'refusal.not-finite': '{value} erhalten, nötig ist eine endliche Zahl. Eine Zahl eingeben.',
  'refusal.out-of-range': '{value} erhalten, erlaubt ist {allowed}. Wert berichtigen.',
  'refusal.too-few': '{count} Einträge erhalten, erlaubt ist {allowed}. Fehlende ergänzen.',
  'refusal.too-many': '{count} Einträge erhalten, erlaubt ist {allowed}. Einige entfernen.',
  'refusal.no-result': 'diese Werte zusammen ergeben keine endliche Zahl. Auf Null oder verwechselte Einheiten prüfen.',
  'refusal.one-of': 'genau eines angeben: {fields}.',
  'refusal.wrong-way-round':
    '{value} erhalten, erlaubt ist {allowed}. Das Ende liegt hinter dem Anfang: tauschen oder berichtigen.',
  'refusal.wrong-count': '{value} Einträge erhalten, genau {min} werden erwartet. Für jedes einen angeben.',
  // The path of the belt.
  'refusal.too-few-pulleys':
    '{value} Scheiben erhalten, erlaubt ist {allowed}. Jede Scheibe eintragen, die der Riemen berührt, in Laufreihenfolge.',
  'refusal.no-tangent':
    'zwischen Scheibe {pulley} und {other} passt kein gerades Trum: Mittenabstand {value}, erlaubt ist {allowed}. Koordinaten, Radien und Drehsinn prüfen.',
  'refusal.pulley-not-touched':
    'der Riemen berührt Scheibe {pulley} auf der angegebenen Seite nicht{others, select, none {} other {, ebenso {others}}}. Lage und Drehsinn prüfen oder weglassen.',
  'refusal.pulleys-overlap':
    'Scheiben {pulley} und {other} überdecken sich: Mittenabstand {value}, erlaubt ist {allowed}. Koordinaten und Radien prüfen.',
  'refusal.belt-hits-pulley':
    'der Riemen von Scheibe {other} zu {otherTo} läuft durch Scheibe {pulley}: {value} von ihrer Mitte, erlaubt ist {allowed}. Lage prüfen oder Riemen herumführen.',
  'refusal.belt-crosses-itself':
    'der Riemen kreuzt sich an Scheibe {pulley}{other, select, none {} other { und {other}}}. Reihenfolge und Drehsinn prüfen; eine Acht braucht crossed: true.',
  'refusal.belt-not-crossed':
    'gefragt ist ein gekreuzter Riemen, dieser kreuzt sich nirgends. crossed auf false setzen oder Drehsinn prüfen.',
  'refusal.face-contradicts-turn':
    'Scheibe {pulley} dreht {turn, select, left {links} right {rechts} other {{turn}}}, berührt also die {expected, select, running {Laufseite} back {Tragseite} other {{expected}}}, nicht die {value, select, running {Laufseite} back {Tragseite} other {{value}}}. Seite oder Drehsinn berichtigen.',
  'refusal.no-direction': 'die Richtung ist 0, 0. Eintragen, wohin sie zeigt, etwa 0 und -1 für abwärts.',
  'refusal.take-up-shortens-loop':
    'in dieser Richtung verlängert die Spannvorrichtung den Umlauf nicht ({value}, erlaubt ist {allowed}). Richtung umkehren oder Scheibe prüfen.',
  // Lengths and splices.
  'refusal.nothing-left':
    '{value} erhalten, erlaubt ist {allowed}: mehr ließe keinen Riemen übrig. Beschnitt oder Länge berichtigen.',
  'refusal.too-few-sources': '{value} Quellen erhalten, erlaubt ist {allowed}. Mindestens eine bekannte Länge angeben.',
  'refusal.too-many-sources': '{value} Quellen erhalten, erlaubt ist {allowed}. Die besten behalten.',
  'refusal.length-mismatch':
    '{value} Einträge erhalten, {expected} werden erwartet, einer je Zugprobe. Ergänzen oder entfernen.',
  'refusal.unknown-fabric': '„{value}“ erhalten, erlaubt sind: {allowed}. Eines davon verwenden.',
  'refusal.tension-too-small':
    '{value} erhalten, erlaubt ist {allowed}: darunter hängt das Leertrum durch. Breiteren Riemen oder weniger Leistung nehmen.',
  // The survey of a line.
  'refusal.measurement-missing': 'dieses Maß fehlt. Messen: {question}. Die Bauart braucht es: {layout}.',
  'refusal.measurement-not-used':
    '{value} erhalten, aber diese Bauart hat dieses Maß nicht: {layout}. Entfernen oder andere Bauart wählen.',
  'refusal.measurement-out-of-order':
    'mit {value} steht Scheibe {pulley} bei {reached}, erlaubt ist {allowed}: sie läge vor ihrer Vorgängerin. Beide nachmessen.',
  'refusal.same-end':
    'Antrieb und Spannvorrichtung können nicht am selben Ende stehen ({value, select, infeed {Einlauf} discharge {Auslauf} other {{value}}}). Eines der beiden berichtigen.',
  // Notes beside a result that was computed all the same.
  'note.not-in-place':
    'die Enden treffen sich nicht an Ort: {value} Umfang müssen eingeholt werden. Mehr Spannweg schaffen oder mit Klemmen ziehen.',
  'note.take-up-blocked':
    'vor {value} Spannweg stößt die Spannscheibe an den Riemen oder eine andere Scheibe. Spannweg und Richtung prüfen.',
  'note.belt-broke':
    'bei {count} von {of} Zugproben riss der Riemen, nicht die Verbindung; sie zählen als untere Grenze. Die wahre Festigkeit liegt höher.',
  'note.spread-too-wide':
    'die Zugproben streuen so stark, dass die charakteristische Festigkeit {value} ist. Mehr Proben ziehen und die Ursache suchen.',
  'note.deflection-large':
    '{value} eingedrückt, mehr als {max}: die Dehnung verfälscht die Ablesung. Weniger eindrücken und neu messen.',
  'note.stretch-explains-push':
    'Dehnung und Biegung allein erklären die {value}; daraus folgt keine Trumkraft. Kraft, Eindrücktiefe und Steifigkeit prüfen.',
  'note.span-too-short':
    'das freie Trum ist {value} lang; unter {min} verfälscht die Steifigkeit des Riemens den Ton. Längeres Trum nehmen.',
  'note.bending-outweighs-tension':
    'bei dieser Biegesteifigkeit ({value}) kommt der Ton von der Steifigkeit, nicht von der Spannung. Wert prüfen oder längeres Trum nehmen.',
  'note.beyond-measured-relaxation':
    'die Zeit von {value} liegt hinter den Ablesungen, die bei {max} enden; die Gerade ist verlängert. Nach einem Tag neu ablesen.',
  'note.belt-goes-slack':
    'das Leertrum hat {value}, nötig ist mehr als {min}, damit der Riemen anliegt. Mehr spannen oder Last verringern.',
  'note.slip':
    'der Riemen rutscht durch: er überträgt das {value}-fache der Umfangskraft, nötig ist mindestens das {min}-fache. Mehr spannen oder Last verringern.',
  'note.take-up-on-tight-side':
    'die Spannscheibe sitzt im Lasttrum; sie gibt unter Last nach. Antrieb, Trum und Laufrichtung prüfen.',
};
