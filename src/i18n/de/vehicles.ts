import type { Translation } from '../message';

/** Vehicles as what conducts in them: the catalogue's, the site's own, and how high their parts lie. */
export const vehicles = {
  'vehicles.own': 'Dieser Anlage',
  'vehicles.catalogue': 'Katalog',
  'vehicles.none': 'Noch keines: Beginnen Sie mit einer Platte oder kopieren Sie unten eines.',
  'vehicles.gist': '{length} × {width}',
  'vehicles.calibrated': 'kalibriert',
  'vehicles.instead': 'anstelle des Katalogfahrzeugs',
  'vehicles.add': 'Neu aus einer Platte',
  'vehicles.newName': 'Eigenes Fahrzeug {number}',
  'vehicles.copy': 'Zum Ändern kopieren',
  'vehicles.duplicate': '{name} duplizieren',
  'vehicles.copyOf': 'Kopie von {name}',
  'vehicles.remove': '{name} entfernen',
  'vehicles.removed': '{name} entfernt.',
  'vehicles.removedWith': '{name} entfernt, mit allem, was es nennt: {uses}. Rückgängig bringt alles zurück.',
  'vehicles.uses.placed': { one: '{count} auf dem Plan', other: '{count} auf dem Plan' },
  'vehicles.uses.askedFor': {
    one: 'bei {count} Schleifenkreis verlangt',
    other: 'bei {count} Schleifenkreisen verlangt'
  },
  'vehicles.uses.lanes': {
    one: 'größtes auf {count} Fahrstreifen',
    other: 'größtes auf {count} Fahrstreifen'
  },
  'vehicles.uses.traffic': { one: '{count}-mal im Verkehr', other: '{count}-mal im Verkehr' },
  'vehicles.full': 'Die Anlage fasst keine weiteren Fahrzeuge.',
  'vehicles.place': 'Auf den Plan stellen',
  'vehicles.placed': 'Dorthin gestellt, wo {circuit} am stärksten reagiert.',
  'vehicles.placedInView': 'In die Mitte der Ansicht gestellt.',
  'vehicles.couple': 'Anhänger kuppeln …',
  'vehicles.calibrate': 'Höhe kalibrieren …',

  'vehicles.drawing': '{name}, maßstäblich',
  'vehicles.drawingWords':
    'Von der rechten Seite und von oben, vorn ist rechts. {count} Teile, das tiefste {lowest} und das höchste {highest} über der Fahrbahn, insgesamt {length} lang und {width} breit.',
  'vehicles.front': 'vorn',
  'vehicles.road': 'Fahrbahn',
  'vehicles.legend':
    'Balken und Flächen sind Bleche in ihrer wirksamen Höhe, Kreise sind geschlossene Ringe. Der gestrichelte Umriss ist die Karosserie. Ein Klick wählt ein Teil.',

  'vehicles.parts': 'Teile',
  'vehicles.part': 'Teil',
  'vehicles.size': 'Länge × Breite',
  'vehicles.ahead': 'Nach vorn',
  'vehicles.height': 'Höhe',
  'vehicles.ringSize': 'Ø {diameter}',
  'vehicles.plateName': 'Platte {number}',
  'vehicles.ringName': 'Ring {number}',
  'vehicles.addPlate': 'Platte hinzufügen',
  'vehicles.addRing': 'Ring hinzufügen',
  'vehicles.duplicatePart': '{name} duplizieren',
  'vehicles.removePart': '{name} entfernen',
  'vehicles.lastPart': 'Ein Fahrzeug hat mindestens ein Teil.',
  'vehicles.mostParts': 'Ein Fahrzeug hat höchstens {most} Teile.',

  'vehicles.fields': 'Angaben zu {name}',
  'vehicles.name': 'Name des Fahrzeugs',
  'vehicles.bodyWidth': 'Breite des Umrisses',
  'vehicles.bodyLength': 'Länge des Umrisses',
  'vehicles.partName': 'Name des Teils',
  'vehicles.length': 'Länge',
  'vehicles.width': 'Breite',
  'vehicles.effectiveHeight': 'Wirksame Höhe',
  'vehicles.aheadOfMiddle': 'Vor der Mitte',
  'vehicles.rightOfMiddle': 'Rechts der Mitte',
  'vehicles.centreHeight': 'Höhe des Mittelpunkts',
  'vehicles.diameter': 'Durchmesser',
  'vehicles.thickness': 'Dicke des Leiters',
  'vehicles.stands': 'Lage',
  'vehicles.alongTravel': 'aufrecht, wie ein Rad',
  'vehicles.acrossTravel': 'aufrecht, quer',
  'vehicles.flat': 'flach liegend',
  'vehicles.leaning': 'anders',
  'vehicles.axisRight': 'Achse, nach rechts',
  'vehicles.axisAhead': 'Achse, nach vorn',
  'vehicles.axisUp': 'Achse, nach oben',
  'vehicles.metal': 'Metall',
  'vehicles.lossless': 'verlustfrei, wie Aluminium',
  'vehicles.mildSteel': 'Baustahl',
  'vehicles.stated': 'wie angegeben',
  'vehicles.resistivity': 'Spezifischer Widerstand, nΩ·m',
  'vehicles.permeability': 'Relative Permeabilität',
  'vehicles.heightHint':
    'Eine wirksame Höhe liegt über der Bodenfreiheit, die ein Maßstab zeigt: Ein echter Fahrzeugboden hat Lücken. Sie ist der unsicherste aller Werte und das, was eine Kalibrierung findet.',
  'vehicles.source': 'Quellen und Annahmen',
  'vehicles.readOnly': 'Ein Fahrzeug des Katalogs bleibt, wie es ist. Zum Ändern kopieren.',

  'vehicles.effects': 'Was es bewirkt',
  'vehicles.circuit': 'Schleifenkreis',
  'vehicles.best': 'Beste Fahrlinie',
  'vehicles.worst': 'Schlechteste Fahrlinie',
  'vehicles.verdict': 'Urteil',
  'vehicles.wanted': 'Verlangt',
  'vehicles.yes': 'ja',
  'vehicles.no': 'nein',
  'vehicles.notDriven':
    'Nicht über die Schleifenkreise gefahren: Niemand verlangt es, und es steht nicht auf dem Plan. Stellen Sie es auf den Plan oder verlangen Sie es bei einem Schleifenkreis.',
  'vehicles.noCircuits': 'Die Anlage hat keinen Schleifenkreis, über den es fahren könnte.',
  'vehicles.preparing': 'Wird berechnet …',

  'vehicles.train.title': 'Ein Fahrzeug hinter {name} kuppeln',
  'vehicles.train.intro':
    'Seine Teile rücken nach hinten, und das Ganze bekommt einen Umriss. Der Zug bleibt beim Fahren gerade: In einer Kurve schwenkt kein Anhänger aus.',
  'vehicles.train.which': 'Fahrzeug dahinter',
  'vehicles.train.gap': 'Abstand der Umrisse',
  'vehicles.train.gapHint':
    'Negativ, wo es darüberreicht: Ein Sattelanhänger liegt auf seiner Zugmaschine auf.',
  'vehicles.train.result': 'Zusammen {length} lang und {width} breit, {count} Teile.',
  'vehicles.train.tooMuch':
    'Die Anlage kann diesen Zug nicht fassen: höchstens {parts} Teile und {length} Länge in einem Fahrzeug.',
  'vehicles.train.couple': 'Kuppeln',

  'vehicles.measured.title': 'Höhe von {name} kalibrieren',
  'vehicles.measured.intro':
    'Fahren Sie mit einem solchen Fahrzeug über eine Schleife und lesen Sie das größte −ΔL/L der Überfahrt ab; dann werden alle Teile gleich weit gehoben oder gesenkt, bis das Modell dasselbe sagt.',
  'vehicles.measured.circuit': 'Gemessen am Schleifenkreis',
  'vehicles.measured.response': 'Größtes −ΔL/L der Überfahrt',
  'vehicles.measured.offset': 'Gefahren rechts der Mitte des Fahrstreifens um',
  'vehicles.measured.noCircuit':
    'Die Anlage hat keinen Schleifenkreis, der sich wickeln lässt, also gibt es nichts zu messen.',
  'vehicles.measured.waiting': 'Geben Sie ein, was abgelesen wurde.',
  'vehicles.measured.asking': 'Wird berechnet …',
  'vehicles.measured.failed': 'Die Berechnung ist fehlgeschlagen: {reason}',
  'vehicles.measured.nothing': 'Nichts von diesem Fahrzeug erreicht den Schleifenkreis auf dieser Fahrlinie.',
  'vehicles.measured.before': 'Das Modell, unkalibriert',
  'vehicles.measured.after': 'Das Modell mit verschobenen Teilen',
  'vehicles.measured.move': 'Teile rücken',
  'vehicles.measured.up': 'um {by} nach oben',
  'vehicles.measured.down': 'um {by} nach unten',
  'vehicles.measured.reach': 'Erreichbar',
  'vehicles.measured.from': '{weakest}, 3 m hoch, bis {strongest}, knapp über der Fahrbahn',
  'vehicles.measured.outOfReach':
    'Keine Höhe ergibt {measured}: Suchen Sie eine andere Ursache, ehe Sie das Fahrzeug ändern.',
  'vehicles.measured.far':
    'Das ist mehr als {limit}. Ein Fahrzeugboden liegt selten so weit daneben: Suchen Sie zuerst eine andere Ursache.',
  'vehicles.measured.otherCauses': 'Woher eine Abweichung sonst kommen kann',
  'vehicles.measured.cause.drawing':
    'Schleife, Windungen oder Zuleitung anders gebaut als gezeichnet, oder eine Schleife mit Teilschluss',
  'vehicles.measured.cause.path':
    'das Fahrzeug fuhr neben der Fahrlinie oder bog vor der stärksten Stelle ab oder hielt davor',
  'vehicles.measured.cause.vehicle': 'ein anderes Fahrzeug als dieses: Länge, Breite, Achsen oder Ladung',
  'vehicles.measured.cause.steel':
    'Stahl im Belag, der nicht gezeichnet ist oder in anderer Tiefe gezeichnet ist',
  'vehicles.measured.cause.reading':
    'ein Gerät, das die Änderung der Frequenz zeigt (halb so groß), in Zählschritten, oder erst nach begonnener Anpassung',
  'vehicles.measured.replaces': 'Ersetzt die Kalibrierung an {circuit}.',
  'vehicles.measured.use': 'Teile {move} rücken',
  'vehicles.measured.useNothing': 'Teile rücken',
  'vehicles.measured.cannotHold': 'Die Anlage kann die Teile in diesen Höhen nicht fassen.',
  'vehicles.record':
    '✓ Höhen an {circuit} kalibriert: {measured} gemessen, {predicted} vorher. Teile {move}.',
  'vehicles.forget': 'Kalibrierung verwerfen',

  'vehicles.step.add': 'Fahrzeug {name} hinzufügen',
  'vehicles.step.remove': 'Fahrzeug {name} entfernen',
  'vehicles.step.place': '{name} setzen',
  'vehicles.step.addPart': 'Teil zu {name} hinzufügen',
  'vehicles.step.duplicatePart': 'Teil von {name} duplizieren',
  'vehicles.step.removePart': 'Teil von {name} entfernen',
  'vehicles.step.couple': '{trailer} hinter {name} kuppeln',
  'vehicles.step.calibrate': 'Höhe von {name} kalibrieren',
  'vehicles.step.forget': 'Kalibrierung von {name} verwerfen'
} as const satisfies Partial<Translation>;
