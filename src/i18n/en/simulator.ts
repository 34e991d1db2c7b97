/** Two coupled oscillators in time, for those who want to see a beat. */
export const simulator = {
  'simulator.pair': 'Pair',
  'simulator.pairOf': '{a} + {b}',
  'simulator.invented': 'Two equal loops, not of this site',
  'simulator.inventedWords':
    'Squares of 1.8 m with a metre between them, 1.1 kHz apart, each on a unit of its own. With two circuits on channels that run at the same time, those of the drawing stand here.',
  'simulator.worst': 'At worst {ratio} of the threshold, {least} apart. Shown here at rest.',
  'simulator.worstOverlap': 'At worst {ratio} of the threshold, where the bands overlap. Shown here at rest.',
  'simulator.first': 'Left loop',
  'simulator.second': 'Right loop',
  'simulator.distance': 'Distance of the loops',
  'simulator.separation': 'Separation at rest',
  'simulator.measuringTime': 'Measuring time',
  'simulator.asDrawn': 'As drawn',
  'simulator.working': 'Calculating …',
  'simulator.failed': 'The simulation failed: {reason}',
  'simulator.none': 'One of the two circuits does not oscillate, so there is nothing to simulate.',

  'simulator.cycles': 'Frequency of every cycle, over {count} beats',
  'simulator.cyclesLocked': 'Frequency of every cycle',
  'simulator.amplitude': 'Amplitude, over the amplitude alone',
  'simulator.readings': 'Readings of the units, one after the other',
  'simulator.law': 'by the law, at most',
  'simulator.limit': 'the shift that trips',
  'simulator.trip': 'trips {name}',
  'simulator.at': '{time}: {a}, {b}',
  'simulator.valueOf': '{name} {value}',

  'simulator.explain':
    'Each tank adds a little of its own tone to the other, so the frequency of each swings at the difference of the two: the beat. A unit that measures longer than a beat averages most of the swing away; what is left must stay below the shift that trips it. Vehicles and temperature can bring the two nearer than they are at rest, so the verdict on the drawing may be worse: make the separation smaller to see it.',
  'simulator.strong':
    'The coupling is strong for this separation: k·f is {share} of it. The law, which is of first order, falls short of the swing here; after averaging it still holds.',
  'simulator.mayLock':
    'The coupling is stronger than the separation: k·f is {share} of it. The law no longer holds; with a little more the two draw each other into step.',
  'simulator.locked':
    'The two have drawn each other into step and run on one frequency. Nothing beats, but a vehicle over either shifts both. The law, which counts a beat, does not hold here.',
  'simulator.summary':
    '{a} + {b}: coupling {k}, {separation} apart. The frequency of {a} swings by ±{swing}; its unit reads ±{averaged}, {ratio} of its threshold.',

  'simulator.figures': 'The law and the simulation',
  'simulator.circuit': 'Circuit',
  'simulator.frequency': 'Frequency alone',
  'simulator.quality': 'Q',
  'simulator.swingLaw': 'Swing by the law',
  'simulator.swingSeen': 'Swing seen',
  'simulator.averagedLaw': 'Reading by the law, at most',
  'simulator.averagedSeen': 'Reading seen',
  'simulator.ratio': 'Of threshold',
  'simulator.plusMinus': '±{value}',
  'simulator.coupling': 'Coupling k {k}, mutual inductance {mutual}; the mean frequencies are {beat} apart.',

  'simulator.table': 'Points of the curves as a table',
  'simulator.tableCycles': 'Frequency of every cycle, from the mean',
  'simulator.tableReadings': 'Readings, from the mean',
  'simulator.tableAmplitude': 'Amplitude',
  'simulator.tableTime': 'Time'
} as const;
