import type { Translation } from '../message';

/** All channels on one axis, the pairs that may beat, and what would clear them. */
export const frequencies = {
  'frequencies.mode': 'Frequenzen zeigen als',
  'frequencies.mode.chart': 'Diagramm',
  'frequencies.mode.table': 'Tabelle',
  'frequencies.mode.simulator': 'Schwebung',
  'frequencies.allPairs': 'Auch unbedenkliche Paare zeigen',
  'frequencies.near': 'Nur wo sie jetzt laufen',
  'frequencies.noChannels':
    'Noch liegt kein Schleifenkreis auf einem Kanal. Legen Sie unter Auswertegeräte Schleifenkreise auf die Kanäle eines Geräts.',
  'frequencies.noPairs': 'Keine zwei Schleifenkreise laufen zugleich.',
  'frequencies.allClear': {
    one: 'Das eine Paar, das zugleich läuft, ist unbedenklich.',
    other: 'Alle {count} Paare, die zugleich laufen, sind unbedenklich.'
  },

  'frequencies.unit': 'Gerät',
  'frequencies.circuit': 'Schleifenkreis',
  'frequencies.setting': 'Stufe',
  'frequencies.pin': 'Fest',
  'frequencies.pinLong': 'Stufe von {name} festhalten: Ein Frequenzplan lässt sie, wie sie ist',
  'frequencies.given': 'vorgegeben',
  'frequencies.inTurn': 'nacheinander',
  'frequencies.atOnce': 'alle zugleich',
  'frequencies.inTurnLong': 'fragt seine Kanäle nacheinander ab',
  'frequencies.atOnceLong': 'lässt alle Kanäle zugleich laufen',

  'frequencies.legend.rest': 'in Ruhe',
  'frequencies.legend.weather': 'mit Temperatur',
  'frequencies.legend.vehicle': 'mit Fahrzeug',
  'frequencies.legend.target': 'andere Stufen',
  'frequencies.legend.pinned': 'fest',

  'frequencies.chart': 'Kanäle nach Frequenz',
  'frequencies.pointed': 'Werte des Paars oder Kanals',
  'frequencies.band': '{name}, Frequenzstufe',
  'frequencies.settingAt': 'Stufe {setting}, {frequency}',
  'frequencies.settingAtPinned': 'Stufe {setting}, {frequency}, fest',
  'frequencies.givenAt': 'vorgegeben, {frequency}',
  'frequencies.pair': '{a} + {b}',
  'frequencies.pairLong': '{pair}: {verdict}, {ratio} der Schwelle, {separation} auseinander',

  'frequencies.hint':
    'Ein Klick auf eine Linie hält ihre Werte hier fest. Ein Band auf eine andere Stufe ziehen oder mit den Pfeiltasten stellen; P hält es fest.',
  'frequencies.hintBands':
    'Ein Band auf eine andere Stufe ziehen oder mit den Pfeiltasten stellen; P hält es fest.',
  'frequencies.sweeps': 'überstreicht {low} bis {high}',
  'frequencies.coldHot': '{cold} kalt, {hot} heiß',
  'frequencies.deepest': '{vehicle}: −ΔL/L {response}',
  'frequencies.noVehicle': 'kein Fahrzeug verschiebt ihn',
  'frequencies.couplingIs': 'Kopplung {k}',
  'frequencies.apart': '{separation} auseinander',
  'frequencies.overlap': 'die Bänder überlappen sich',
  'frequencies.rippleIs': 'Welligkeit {ripple}',
  'frequencies.ratioIs': '{ratio} der Schwelle',

  'frequencies.clear': 'unbedenklich',
  'frequencies.watch': 'beobachten',
  'frequencies.falseCalls': 'Fehlanforderungen wahrscheinlich',

  'frequencies.weaker': {
    one: 'Ein weiteres Paar ist unbedenklich und schwächer als alle diese.',
    other: '{count} weitere Paare sind unbedenklich und schwächer als alle diese.'
  },
  'frequencies.beats': 'Schleifenkreise, die zugleich laufen können',
  'frequencies.channels': 'Kanäle',
  'frequencies.pairHead': 'Paar',
  'frequencies.coupling': 'Kopplung k',
  'frequencies.separation': 'Abstand',
  'frequencies.ripple': 'Welligkeit',
  'frequencies.ratio': 'Zur Schwelle',
  'frequencies.verdict': 'Urteil',
  'frequencies.wouldClear': 'Was helfen würde:',
  'frequencies.channel': 'Kanal',
  'frequencies.rest': 'In Ruhe',
  'frequencies.low': 'Niedrigste',
  'frequencies.high': 'Höchste',
  'frequencies.cold': 'Kalt',
  'frequencies.hot': 'Heiß',
  'frequencies.deepestHead': 'Stärkstes Fahrzeug',

  'remedy.following': '…',
  'remedy.none': 'nichts gefunden',
  'remedy.apply': 'Anwenden',
  'remedy.applyLong': 'Anwenden: {remedy}',
  'remedy.setting': 'Stufe {setting} bei {circuit} ({frequency})',
  'remedy.distance': '{circuit} um {distance} abrücken',
  'remedy.winding': '{loop} andersherum wickeln',
  'remedy.scanSame': '{unit} nacheinander abfragen lassen',
  'remedy.scanOther': 'beide an {unit}, das nacheinander abfragt',
  'remedy.scanNew': 'beide an ein Gerät, das nacheinander abfragt',
  'remedy.threshold': 'Schwelle {threshold} bei {circuit}',
  'remedy.seesAll': 'erkennt weiterhin alle',
  'remedy.loses': 'verliert {vehicles}',
  'remedy.measure': '{time} lang messen',
  'remedy.conduit': 'getrennte Leerrohre',
  'remedy.leaves': '{change}: {ratio}',
  'remedy.never': '{change}: nie zugleich',
  'remedy.spoils': '{left}, aber mehr mit {circuits}',

  'step.setting': 'Frequenzstufe von {name} ändern',
  'step.remedy': 'Anwenden: {remedy}',
  'step.pin': 'Stufe von {name} festhalten',
  'step.unpin': 'Stufe von {name} freigeben'
} as const satisfies Partial<Translation>;
