import type { Translation } from '../message';

/** Das Gerät zeigt nichts. */
export const walkPower = {
  'walk.power.sign.ask': 'Sehen Sie {unit} an: Leuchtet etwas, oder steht eine Anzeige da?',
  'walk.power.sign.serves': '{unit} bedient auch {circuits}.',
  'walk.power.sign.alone': '{circuit} ist der einzige Schleifenkreis an {unit}.',
  'walk.power.sign.dark': 'Alles ist dunkel',
  'walk.power.sign.channel': 'Nur Kanal {number} ist dunkel',
  'walk.power.sign.alive': 'Es läuft',
  'walk.power.others.none': '{unit} ist hier das einzige Gerät: Es gibt keines zum Vergleich.',
  'walk.power.others.ask': 'Laufen die anderen Geräte: {units}?',
  'walk.power.supply.ask':
    'Ist der Schaltschrank versorgt: Hauptschalter, Fehlerstrom-Schutzschalter, Sicherung?',
  'walk.power.supply.on': 'Alles ist eingeschaltet',
  'walk.power.supply.off': 'Etwas ist ausgeschaltet',
  'walk.power.supply.tripped': 'Etwas hat ausgelöst',
  'walk.power.terminals.ask':
    'Nur Elektrofachkräfte: Liegt an den Versorgungsklemmen von {unit} die Spannung an, die auf dem Typenschild steht?',
  'walk.power.terminals.right': 'Ja, wie auf dem Typenschild',
  'walk.power.terminals.low': 'Es liegt etwas an, aber zu wenig',
  'walk.power.terminals.none': 'Es liegt nichts an',
  'walk.power.fuse.ask':
    'Bei freigeschalteter Versorgung: Wie sind die Sicherung von {unit} und sein Sitz im Sockel?',
  'walk.power.fuse.whole': 'Sicherung heil, Sitz fest',
  'walk.power.fuse.loose': 'Der Sitz ist locker oder korrodiert',
  'walk.power.fuse.blown': 'Die Sicherung ist durchgebrannt',
  'walk.power.another.ask': 'Setzen Sie ein Gerät an seine Stelle, das sicher läuft. Läuft dieses?',
  'walk.power.channel.ask': 'Ist Kanal {number} von {unit} eingeschaltet?',
  'walk.power.other.one': '{unit} hat einen Kanal: Die Schleifen lassen sich an keinem anderen versuchen.',
  'walk.power.other.ask': 'Legen Sie {circuit} auf einen anderen Kanal von {unit}. Läuft dieser Kanal?',
  'walk.power.check': '{unit} läuft, auch noch nach einer Stunde bei geschlossenem Schaltschrank.',
  'walk.power.end.alive': '{unit} hat Strom.',
  'walk.power.end.alive.other':
    'Wählen Sie die Beschwerde, die zu seinem Verhalten passt: immer oder nie eine Anforderung.',
  'walk.power.end.off': 'Die Versorgung des Schaltschranks ist ausgeschaltet.',
  'walk.power.end.off.why':
    'Klären Sie, wer sie warum ausgeschaltet hat, ehe etwas eingeschaltet wird: Jemand könnte daran arbeiten.',
  'walk.power.end.tripped': 'Eine Schutzeinrichtung des Schaltschranks hat ausgelöst.',
  'walk.power.end.tripped.once':
    'Eine Elektrofachkraft schaltet sie einmal ein. Löst sie wieder aus, liegt der Fehler im Schaltschrank.',
  'walk.power.end.tripped.apart':
    'Dann einen Verbraucher nach dem anderen abnehmen, bis sie hält: Geräte, Heizung, Licht, Steckdose.',
  'walk.power.end.low': '{unit} bekommt weniger Spannung, als es braucht.',
  'walk.power.end.low.load':
    'Vergleichen Sie das Netzteil mit dem, was daran hängt, und seine Klemmen mit dem, was das Typenschild verlangt.',
  'walk.power.end.wire': 'An {unit} kommt keine Spannung an.',
  'walk.power.end.wire.trace':
    'Verfolgen Sie die Versorgung zurück bis zur letzten Klemme mit Spannung: Dazwischen hat sich eine Sicherung, eine Brücke oder ein Draht gelöst.',
  'walk.power.end.loose': '{unit} sitzt nicht fest im Sockel.',
  'walk.power.end.loose.seat':
    'Freischalten, Kontakte reinigen, einsetzen und sichern. Einen Sockel, dessen Kontakte nicht mehr federn, tauschen.',
  'walk.power.end.fuse': 'Die Sicherung von {unit} ist durchgebrannt.',
  'walk.power.end.fuse.once':
    'Durch eine gleichen Werts ersetzen, einmal. Brennt sie wieder durch, das Gerät tauschen.',
  'walk.power.end.fuse.surge':
    'Eine Überspannung über die Zuleitung kann der Grund sein: Prüfen Sie deren Isolation, {limit} oder mehr, und die Ableiter.',
  'walk.power.end.dead': '{unit} selbst ist ausgefallen.',
  'walk.power.end.dead.replace':
    'Tauschen oder einen anderen Kanal als {number} verwenden, und einstellen, wie es hier steht.',
  'walk.power.end.base': 'Der Sockel von {unit} oder seine Drähte sind schadhaft.',
  'walk.power.end.base.pins':
    'Vergleichen Sie die Drähte des Sockels mit dem Plan des Schaltschranks, Stift für Stift.',
  'walk.power.end.switchedOff': 'Kanal {number} ist ausgeschaltet.',
  'walk.power.end.switchedOff.on':
    'Fragen Sie, warum, und schalten Sie ihn ein, ohne etwas über den Schleifen.'
} as const satisfies Partial<Translation>;
