import type { Translation } from '../message';
import { walkAlways } from './walk-always';
import { walkCycles } from './walk-cycles';
import { walkDrops } from './walk-drops';
import { walkLanes } from './walk-lanes';
import { walkNever } from './walk-never';
import { walkNobody } from './walk-nobody';
import { walkPower } from './walk-power';
import { walkRain } from './walk-rain';
import { walkShared } from './walk-shared';

/** Wege durch eine Beschwerde. */
export const walkThrough = {
  ...walkShared,
  ...walkPower,
  ...walkAlways,
  ...walkNever,
  ...walkNobody,
  ...walkCycles,
  ...walkLanes,
  ...walkRain,
  ...walkDrops,
  'walk.title': 'Störungssuche',
  'walk.intro':
    'Wählen Sie, worüber geklagt wird. Jeder Schritt nutzt die Werte dieser Anlage und lässt weg, was sie ausschließen.',
  'walk.complaint': 'Beschwerde',
  'walk.complaint.no power': 'Kein Strom',
  'walk.complaint.always calling': 'Immer eine Anforderung',
  'walk.complaint.never calling': 'Nie eine Anforderung',
  'walk.complaint.calls with nobody there': 'Anforderungen ohne Fahrzeug',
  'walk.complaint.misses motorcycles': 'Verpasst Motorräder',
  'walk.complaint.two lanes call together': 'Zwei Fahrstreifen zugleich',
  'walk.complaint.works until it rains': 'Geht, bis es regnet',
  'walk.complaint.drops a standing vehicle': 'Verliert stehende Fahrzeuge',
  'walk.step': 'Schritt {number}',
  'walk.facts': 'Was die Werte dieser Anlage sagen',
  'walk.ruledOut': 'Durch die Werte schon geklärt',
  'walk.answers': 'Antwort',
  'walk.back': 'Einen Schritt zurück',
  'walk.restart': 'Von vorn',
  'walk.other': 'Andere Beschwerde',
  'walk.trail': 'Bisher beantwortet',
  'walk.trail.change': 'Ändern: {question}',
  'walk.measure': 'Messwert eintragen',
  'walk.causes': 'Ursachen abwägen',
  'walk.verdict': 'Was es ist',
  'walk.remedies': 'Was zu tun ist',
  'walk.check': 'Wie man sicher wird',
  'walk.working': 'Die Werte der Anlage werden angesehen …',
  'walk.failed': 'Dieser Schritt ließ sich nicht berechnen: {reason}',
  'walk.none': 'Dieser Schleifenkreis lässt sich nicht berechnen: Siehe die Befunde.',
  'walk.noCircuit': 'Noch kein Schleifenkreis: Zeichnen Sie zuerst eine Schleife.',
  'walk.hazards': 'Bevor Sie das tun',
  'walk.hazard.mains':
    'Schaltschrank und Gerät führen Netzspannung. Nur Elektrofachkräfte öffnen sie, wo der Schritt es erlaubt freigeschaltet, gesichert und geprüft.',
  'walk.hazard.traffic':
    'Wer auf der Fahrbahn steht oder ihr die Erkennung nimmt, braucht die dafür genehmigte Verkehrssicherung und Warnkleidung.',
  'walk.hazard.gate':
    'Was dieser Schleifenkreis steuert, kann sich bewegen: Tor, Schranke oder Signal. Sichern Sie es zuerst, und niemand darf im Weg stehen.',
  'walk.hazard.insulation tester':
    'Der Isolationsprüfer legt einige hundert Volt an die Drähte: beide Enden frei, das Gerät ab, niemand berührt sie; danach entladen.',
  'walk.codes':
    'Örtliche Vorschriften und zugelassene Fachleute entscheiden; diese Schritte helfen ihnen. Eine Schleife ist nie die einzige Schutzeinrichtung.'
} as const satisfies Partial<Translation>;
