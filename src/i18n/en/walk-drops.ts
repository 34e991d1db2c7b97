/** A standing vehicle that loses its call. */
export const walkDrops = {
  'walk.drops.mode.presence':
    'The output is set to presence: it should hold for as long as a vehicle stands.',
  'walk.drops.mode.pulse': 'The output is set to one pulse of {pulse} a vehicle.',
  'walk.drops.which.ask': 'Which vehicles lose their call?',
  'walk.drops.which.high': 'High ones: lorries, trailers, buses',
  'walk.drops.which.all': 'Cars or two-wheelers too',
  'walk.drops.gap.found':
    'Between its axles the {vehicle} falls to {response} over {length} of its way; below {release} the call ends.',
  'walk.drops.gap.none': 'By the design no vehicle is lost between its axles.',
  'walk.drops.gap.height':
    'By the design no vehicle is lost between its axles: a floor as large as a car’s makes a call up to {height} above the road.',
  'walk.drops.howLong.ask': 'After how long is the call lost?',
  'walk.drops.howLong.longest': 'The longest presence is {longest}.',
  'walk.drops.howLong.noLongest': 'No longest presence is set.',
  'walk.drops.howLong.atOnce': 'At once, or within seconds',
  'walk.drops.howLong.after': 'After about {longest}',
  'walk.drops.howLong.later': 'After many minutes or hours',
  'walk.drops.howLong.any': 'At any time',
  'walk.drops.held':
    'The {vehicle} answers {response}: held for about {time} before the unit takes it for the road.',
  'walk.drops.place.ask': 'Where does the vehicle stand?',
  'walk.drops.place.zone': 'The {vehicle} is detected over {length} of its way.',
  'walk.drops.place.over': 'Over the loops',
  'walk.drops.place.beside': 'Before them, past them or beside',
  'walk.drops.restart.ask': 'When it happens, does {unit} start anew, or do other calls drop with it?',
  'walk.drops.check':
    'Let a vehicle of each kind stand on {circuit} for half an hour: its call stays until it leaves.',
  'walk.drops.end.pulse': 'The output does what it is set to: a pulse of {pulse}, and then nothing.',
  'walk.drops.end.pulse.presence': 'Set the output to presence where a standing vehicle must be held.',
  'walk.drops.end.gap': 'The {vehicle} is too high in the middle: it is lost between its axles.',
  'walk.drops.end.gap.release': 'A release below {release} would hold it; the threshold is {threshold}.',
  'walk.drops.end.gap.extension': 'For one that moves, an extension bridges {length}; it is {extension} now.',
  'walk.drops.end.gap.longer':
    'When it is cut anew: a loop longer than the distance of the axles, or a second one in series.',
  'walk.drops.end.longest': 'The longest presence of {longest} ends the call.',
  'walk.drops.end.longest.more': 'Make it longer than anyone waits here, or take it out.',
  'walk.drops.end.adapted':
    'The unit takes a standing vehicle for a part of the road, with a time constant of {time}.',
  'walk.drops.end.adapted.lower':
    'A threshold lower than {threshold}, or a loop that answers more, holds it longer.',
  'walk.drops.end.adapted.other':
    'Where vehicles wait for hours, use a unit that adapts more slowly while it detects.',
  'walk.drops.end.place': 'The vehicle stands where the loops do not reach.',
  'walk.drops.end.place.line':
    'See where drivers stop, and why: line, gate, view. Move the line rather than the loop if that is enough.',
  'walk.drops.end.place.longer': 'When it is cut anew: a longer loop, or one more where they stand.',
  'walk.drops.end.restart': '{unit} starts anew and tunes itself while the vehicle stands there.',
  'walk.drops.end.restart.supply':
    'Look at its supply: dips when a drive or a lamp starts, a loose terminal, a power supply too small.',
  'walk.drops.end.restart.empty': 'Until then reset it with nothing over the loops after every dip.'
} as const;
