import type { Translation } from '../message';

/** The smallest change that clears a finding. */
export const goal = {
  'goal.title': 'Ziel',
  'goal.intro': 'Welche kleinste Änderung einer Größe beseitigt einen Befund?',
  'goal.finding': 'Befund',
  'goal.none': 'Nichts zu beseitigen: Diese Zeichnung hat keine Befunde.',
  'goal.noNumbers': 'Diese Zeichnung hat noch keine Größe, die sich ändern ließe.',
  'goal.change': 'Zu ändernde Größe',
  'goal.find': 'Suchen',
  'goal.every': 'Jede Größe versuchen',
  'goal.everyHint': 'Alle Größen dessen, worum es im Befund geht, eine nach der anderen.',
  'goal.progress': 'Fortschritt der Suche',
  'goal.failed': 'Die Suche war nicht möglich: {reason}',
  'goal.ended': 'Abgebrochen.',
  'goal.found': '{variable}: {to} statt {from} beseitigt ihn.',
  'goal.within': 'Auf {step} genau.',
  'goal.bringsNothing': 'Ein anderer Befund kommt dadurch nicht hinzu.',
  'goal.brings': 'Dadurch kommt hinzu:',
  'goal.bringsCount': {
    one: 'Dadurch kommt {count} anderer Befund hinzu.',
    other: 'Dadurch kommen {count} andere Befunde hinzu.'
  },
  'goal.clears': {
    one: 'Auch {count} anderer Befund verschwindet.',
    other: 'Auch {count} andere Befunde verschwinden.'
  },
  'goal.apply': 'Übernehmen',
  'goal.applyTo': 'Übernehmen: {variable} {to}',
  'goal.applied': 'Übernommen: Rückgängig nimmt es zurück.',
  'goal.sweep': 'Durchlauf ansehen',
  'goal.sweepOf': 'Durchlauf ansehen: {variable}',
  'goal.noEffect': '{variable} hat auf diesen Befund keinen Einfluss.',
  'goal.notEnough': '{variable} beseitigt ihn nirgends von {least} bis {most}.',
  'goal.notPossible': '{variable} lässt sich hier nicht ändern.',
  'goal.best': 'Am nächsten kommt {at}: {told}',
  'goal.bestAt': 'Am nächsten kommt {at}.',
  'goal.table': 'Kleinste Änderungen zuerst',
  'goal.column.number': 'Größe',
  'goal.column.from': 'Jetzt',
  'goal.column.to': 'Beseitigt ihn',
  'goal.column.share': 'Änderung',
  'goal.column.brings': 'Bringt',
  'goal.column.then': 'Danach',
  'goal.bringsFew': { one: '{count} Befund', other: '{count} Befunde' },
  'goal.bringsNone': 'nichts',
  'goal.othersNot': 'Beseitigen ihn nicht: {numbers}.',
  'goal.noneOfAll': 'Keine dieser Größen beseitigt ihn allein.',
  'goal.trying': '{variable} wird versucht …'
} as const satisfies Partial<Translation>;
