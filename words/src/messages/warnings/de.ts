import type { warningsEn } from './en.ts';

export const warningsDe: Readonly<Record<keyof typeof warningsEn, string>> = {
  'warning.pulley-under-limit':
    'Scheibe {pulley} hat {diameter}, der Riemen braucht mindestens {limit}. Der Riemen bricht dort früh. Größere Scheibe oder dünneren Riemen einbauen.',
  'warning.counter-bend-under-limit':
    'Scheibe {pulley} biegt den Riemen rückwärts und hat {diameter}; dafür sind mindestens {limit} nötig. Die Verbindung bricht dort früh. Größere einbauen.',
  'warning.slip':
    'Der Riemen rutscht durch: die Last braucht {pull}, bei {set} rutscht er ab {limit}. {needed, select, none {Last verringern oder Reibung verbessern.} other {Auf {needed} spannen oder Last verringern.}}',
  'warning.slip-reserve-low':
    'Wenig Reserve gegen Durchrutschen: {reserve}-fache Umfangskraft, gewünscht {wanted}. Eine nasse oder verschmutzte Antriebsscheibe lässt den Riemen durchrutschen. {needed, select, none {Antriebsscheibe reinigen.} other {Auf {needed} spannen oder Antriebsscheibe reinigen.}}',
  'warning.elongation-under-window':
    'Auflegedehnung {set} liegt unter dem Bereich des Riemens ({low} bis {high}). Der Riemen kann durchrutschen und verlaufen. Wert der Linie prüfen.',
  'warning.elongation-over-window':
    'Auflegedehnung {set} liegt über dem Bereich des Riemens ({low} bis {high}). Lager und Verbindung werden überlastet. Wert der Linie prüfen.',
  'warning.not-in-place':
    'Die Enden treffen sich nicht ohne Zug: die Spannvorrichtung muss {needed} hergeben, sie gibt {available}. {pull, select, none {Mehr Spannweg schaffen oder ein längeres Stück einsetzen.} other {{pull} Umfang mit Klemmen einholen, mehr Spannweg schaffen oder ein längeres Stück einsetzen.}}',
  'warning.sources-disagree':
    'Die bekannten Längen passen nicht zusammen: sie weichen um {difference} ab, mehr als Zufall erklärt. Vor dem Schneiden noch einmal messen.',
  'warning.take-up-exhausted':
    'Die Spannvorrichtung hat noch {left} Spannweg zum Nachspannen. Sie kann am Anschlag sein, bevor der Riemen gespannt ist. Länge vor dem Schneiden prüfen.',
  'warning.press-check-overdue':
    'Heizpresse {press}: letzte Prüfung liegt {age} zurück, Prüffrist {interval}. Temperatur oder Druck können falsch sein. Geprüfte Heizpresse nehmen oder diese zuerst prüfen.',
  'warning.press-check-unknown':
    'Heizpresse {press}: keine Prüfung vermerkt. Prüfplakette suchen. Ohne Plakette zuerst ein Probestück mit Thermoelement pressen.',
  'warning.press-check-ahead':
    'Heizpresse {press}: die Prüfung ist für einen Tag notiert, der {days} voraus liegt. Prüfplakette noch einmal lesen und den richtigen Tag eintragen, oder eine geprüfte Heizpresse nehmen.',
  'warning.press-too-small':
    'Heizpresse {press} ist zu klein: die Verbindung braucht {needed}, die Heizplatte hat {available}. Die Fingerenden bleiben kalt. Größere Heizpresse nehmen.',
  'warning.belt-wider-than-pulley':
    'Der Riemen ({width}) ist breiter als Scheibe {pulley} ({face}). Die Kante franst aus. Beide Maße an der Linie prüfen.',
  'warning.thin-edge-finger':
    'Der dünnste Randfinger ist {score} breit, gewünscht sind mindestens {threshold}. Er hebt in der Presse ab oder franst aus. Anschlag wie gezeichnet einstellen und beide Kanten ansehen.',
  'warning.roll-too-short':
    'Riemenrolle {roll} hat noch {left}, nötig sind {needed}. Andere Riemenrolle nehmen. Diese nicht anschneiden.',
  'warning.roll-not-sealed':
    'Riemenrolle {roll} ist nicht versiegelt. Feuchter Riemen bildet Blasen. Versiegelte Riemenrolle nehmen{time, select, none { oder die Enden nach Datenblatt trocknen} other { oder die Enden {time} bei {temperature} trocknen}}. Nie mit dem Heißluftgerät.',
  'warning.bag-pressure-over-press':
    'Das Heizprogramm braucht {needed} am Manometer, Heizpresse {press} gibt höchstens {maximum}. Mit weniger wird die Naht kalt. Andere Heizpresse nehmen.',
  'warning.wet-area':
    'Nasse Linie. Wasser gibt Blasen in der Naht und macht Strom gefährlich. Arbeitsplatz trocknen, Heizpresse über Fehlerstromschutz anschließen, Leitung aus dem Wasser halten.',
  'warning.antistatic-area':
    'ESD-Bereich. Hier darf nur antistatischer Riemen laufen. Widerstand über die Verbindung messen, bevor die Linie läuft.',
  'warning.explosive-area':
    'Ex-Bereich. Heizpresse und Schalter können zünden. Zuerst den Erlaubnisschein für Heißarbeit holen oder außerhalb des Bereichs verbinden.',
  'warning.food-area':
    'Lebensmittelbereich. Abschnitte und Kreide geraten in die Ware. Linie abdecken, Werkzeug und Abschnitte zählen, nach Vorschrift des Betriebs reinigen.',
  'warning.take-up-on-tight-side':
    'Die Spannvorrichtung sitzt im Lasttrum vor dem Antrieb. Sie gibt unter Last nach und der Riemen rutscht durch. Laufrichtung und Antrieb in den Werksdaten prüfen.',
};
