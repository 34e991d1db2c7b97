import type { Translation } from '../message';

/** The frequency planner. */
export const planner = {
  'planner.open': 'Frequenzen planen …',
  'planner.title': 'Frequenzplan',
  'planner.lead':
    'Eine Stufe für jeden Kanal, sodass zugleich laufende Kanäle einander am wenigsten stören. Feste Kanäle und vorgegebene Frequenzen bleiben, wie sie sind.',
  'planner.aim': 'Gesucht',
  'planner.aim.smallest': 'die kleinste Welligkeit',
  'planner.aim.fewest': 'die wenigsten Änderungen, nach denen jedes Paar unbedenklich ist',

  'planner.noChannels':
    'Noch liegt kein Schleifenkreis auf einem Kanal. Legen Sie unter Auswertegeräte Schleifenkreise auf die Kanäle eines Geräts, dann lassen sich ihre Frequenzen planen.',
  'planner.waiting': 'Wartet auf die Werte der Fahrzeuge …',
  'planner.working': 'Stufen werden versucht …',
  'planner.progress': 'Anteil der Suche, der getan ist',
  'planner.cancel': 'Abbrechen',
  'planner.stopped': 'Angehalten. Die Kanäle sind, wie sie waren.',
  'planner.again': 'Neu planen',
  'planner.failed': 'Die Berechnung ist fehlgeschlagen: {reason}',

  'planner.alreadyClear':
    'Jedes Paar ist schon unbedenklich: Andere Stufen würden nur die Reserve vergrößern.',
  'planner.goes': 'Größte Welligkeit {before} → {after} der Ansprechschwelle.',
  'planner.stays': 'Größte Welligkeit {ratio} der Ansprechschwelle.',
  'planner.counts': '{verdict}: {before} → {after}',
  'planner.countStays': '{verdict}: {before}',
  'planner.clear': 'Unbedenklich',
  'planner.watch': 'Beobachten',
  'planner.falseCalls': 'Fehlanforderungen wahrscheinlich',
  'planner.pairs': 'Paare nach Urteil, jetzt → geplant',

  'planner.proven': 'Bewiesen: Keine Wahl der Stufen kommt unter {smallest}.',
  'planner.notProven':
    'Nicht als beste Wahl bewiesen, aber keine kommt unter {bound}, das wären {share} weniger.',
  'planner.couldBe': 'Mit mehr Änderungen könnte die größte Welligkeit {smallest} sein.',

  'planner.nothing.noPairs':
    'Keine zwei Schleifenkreise laufen zugleich, also schwebt nichts, und nichts muss geplant werden.',
  'planner.nothing.kept': 'Kein Kanal darf sich ändern: {reasons}.',
  'planner.nothing.unpin': 'Geben Sie einen Kanal frei, um mit ihm zu planen.',
  'planner.nothing.moreSettings': 'Ein Gerät mit mehr Stufen ließe eine Wahl.',
  'planner.nothing.best': 'Nichts zu ändern: Die Stufen sind so gut, wie Stufen sein können.',
  'planner.nothing.clear': 'Nichts zu ändern: Jedes Paar, dem Stufen helfen können, ist unbedenklich.',
  'planner.nothing.found': 'Nichts zu ändern: Bessere Stufen wurden nicht gefunden.',
  'planner.kept.pinned': { one: '{count} fest', other: '{count} fest' },
  'planner.kept.given': {
    one: '{count} mit vorgegebener Frequenz',
    other: '{count} mit vorgegebener Frequenz'
  },
  'planner.kept.one': { one: '{count} mit nur einer Stufe', other: '{count} mit nur einer Stufe' },
  'planner.kept.silent': {
    one: '{count}, der nicht schwingt',
    other: '{count}, die nicht schwingen'
  },

  'planner.remains': '{pair} bleibt bei {ratio}: {verdict}.',
  'planner.remainsKept': '{pair} bleibt bei {ratio}: {verdict}. Keiner der beiden Kanäle darf sich ändern.',
  'planner.otherRemedies': 'Was {pair} sonst helfen würde:',
  'planner.noRemedies': 'Keine einzelne andere Änderung wurde gefunden, die {pair} hilft.',
  'planner.remediesLater':
    'Mehr Abstand, der andere Wickelsinn oder ein Gerät, das beide nacheinander abfragt, kann helfen, wo Stufen es nicht können: Wenn der Plan übernommen ist, sagt die Tabelle der Paare, wie viel.',

  'planner.table': 'Jeder Kanal, jetzt und wie geplant',
  'planner.circuit': 'Schleifenkreis',
  'planner.channel': 'Gerät, Kanal',
  'planner.now': 'Stufe jetzt',
  'planner.proposed': 'Stufe geplant',
  'planner.pin': 'Fest',
  'planner.pinLong': '{name} festhalten: Der Plan lässt die Stufe, wie sie ist',
  'planner.note': 'Anmerkung',
  'planner.place': '{unit}, {number}',
  'planner.tuned': '{setting} · {frequency}',
  'planner.given': 'vorgegeben · {frequency}',
  'planner.silent': '{setting} · schwingt nicht',
  'planner.same': 'wie jetzt',
  'planner.changed': 'ändert sich',
  'planner.note.pinned': 'fest',
  'planner.note.given': 'Frequenz ist vorgegeben',
  'planner.note.one': 'keine andere Stufe zur Wahl',
  'planner.note.silent': 'schwingt auf keiner Stufe',
  'planner.note.outside': {
    one: 'Stufe {settings} nicht angeboten: außerhalb von 20 bis 100 kHz',
    other: 'Stufen {settings} nicht angeboten: außerhalb von 20 bis 100 kHz'
  },
  'planner.note.mute': {
    one: 'Stufe {settings} nicht angeboten: würde nicht schwingen',
    other: 'Stufen {settings} nicht angeboten: würden nicht schwingen'
  },

  'planner.use': { one: '{count} Stufe ändern', other: '{count} Stufen ändern' },
  'planner.unchanged': 'Keine Stufen zu ändern',
  'planner.close': 'Schließen',
  'planner.step': { one: 'Frequenzplan: {count} Stufe', other: 'Frequenzplan: {count} Stufen' }
} as const satisfies Partial<Translation>;
