/** The frequency planner. */
export const planner = {
  'planner.open': 'Plan frequencies …',
  'planner.title': 'A frequency plan',
  'planner.lead':
    'A setting for every channel, so that channels that run at the same time disturb each other least. Pinned channels and given frequencies stay as they are.',
  'planner.aim': 'Look for',
  'planner.aim.smallest': 'the least ripple',
  'planner.aim.fewest': 'the fewest changes that clear every pair',

  'planner.noChannels':
    'No circuit is on a channel yet. Put circuits on the channels of a unit under Detector units; then their frequencies can be planned.',
  'planner.waiting': 'Waiting for the vehicles’ figures …',
  'planner.working': 'Trying settings …',
  'planner.progress': 'Share of the search done',
  'planner.cancel': 'Cancel',
  'planner.stopped': 'Stopped. The channels are as they were.',
  'planner.again': 'Plan again',
  'planner.failed': 'The calculation failed: {reason}',

  'planner.alreadyClear': 'Every pair is clear as it is: other settings would only add margin.',
  'planner.goes': 'Worst ripple {before} → {after} of the trip threshold.',
  'planner.stays': 'Worst ripple {ratio} of the trip threshold.',
  'planner.counts': '{verdict}: {before} → {after}',
  'planner.countStays': '{verdict}: {before}',
  'planner.clear': 'Clear',
  'planner.watch': 'Watch',
  'planner.falseCalls': 'False calls likely',
  'planner.pairs': 'Pairs by verdict, now → planned',

  'planner.proven': 'Proven: no settings leave less than {smallest}.',
  'planner.notProven': 'Not proven best, but no settings leave less than {bound}, which is {share} lower.',
  'planner.couldBe': 'With more changes the worst ripple could be {smallest}.',

  'planner.nothing.noPairs':
    'No two circuits run at the same time, so nothing beats and nothing need be planned.',
  'planner.nothing.kept': 'No channel is free to change: {reasons}.',
  'planner.nothing.unpin': 'Unpin a channel to plan with it.',
  'planner.nothing.moreSettings': 'A unit with more settings would leave a choice.',
  'planner.nothing.best': 'Nothing to change: the settings are as good as settings can be.',
  'planner.nothing.clear': 'Nothing to change: every pair that settings can clear is clear.',
  'planner.nothing.found': 'Nothing to change: no better settings were found.',
  'planner.kept.pinned': { one: '{count} pinned', other: '{count} pinned' },
  'planner.kept.given': { one: '{count} with a given frequency', other: '{count} with a given frequency' },
  'planner.kept.one': { one: '{count} with one setting only', other: '{count} with one setting only' },
  'planner.kept.silent': {
    one: '{count} that does not oscillate',
    other: '{count} that do not oscillate'
  },

  'planner.remains': '{pair} stays at {ratio}: {verdict}.',
  'planner.remainsKept': '{pair} stays at {ratio}: {verdict}. Neither of its channels is free to change.',
  'planner.otherRemedies': 'What else would help {pair}:',
  'planner.noRemedies': 'No single other change was found that clears {pair}.',
  'planner.remediesLater':
    'More distance, the other winding sense, or one unit that scans both in turn may clear what settings cannot: once the plan is used, the pairs’ table says by how much.',

  'planner.table': 'Every channel, now and as planned',
  'planner.circuit': 'Circuit',
  'planner.channel': 'Unit, channel',
  'planner.now': 'Setting now',
  'planner.proposed': 'Setting planned',
  'planner.pin': 'Pin',
  'planner.pinLong': 'Pin {name}: the plan leaves its setting alone',
  'planner.note': 'Note',
  'planner.place': '{unit}, {number}',
  'planner.tuned': '{setting} · {frequency}',
  'planner.given': 'given · {frequency}',
  'planner.silent': '{setting} · does not oscillate',
  'planner.same': 'as now',
  'planner.changed': 'changes',
  'planner.note.pinned': 'pinned',
  'planner.note.given': 'frequency is given',
  'planner.note.one': 'no other setting to choose',
  'planner.note.silent': 'oscillates on no setting',
  'planner.note.outside': {
    one: 'setting {settings} not offered: outside 20 to 100 kHz',
    other: 'settings {settings} not offered: outside 20 to 100 kHz'
  },
  'planner.note.mute': {
    one: 'setting {settings} not offered: it would not oscillate',
    other: 'settings {settings} not offered: it would not oscillate'
  },

  'planner.use': { one: 'Change {count} setting', other: 'Change {count} settings' },
  'planner.unchanged': 'No settings to change',
  'planner.close': 'Close',
  'planner.step': { one: 'Frequency plan: {count} setting', other: 'Frequency plan: {count} settings' }
} as const;
