const UNIT = 'a figure and its unit';
const SYMBOL = 'a symbol of a formula';
const NAME = 'a name';
const SHARED = 'a word that both languages share';

/** Messages that are the same in German, each with the reason. */
export const SAME_IN_BOTH: Readonly<Record<string, string>> = {
  'along.response': SYMBOL,
  'approach.feet': UNIT,
  'approach.metres': UNIT,
  'approach.mph': UNIT,
  'approach.seconds': UNIT,
  'calls.seconds': UNIT,
  'catalogue.asphalt': SHARED,
  'catalogue.awg12': NAME,
  'catalogue.awg14': NAME,
  'catalogue.awg16': NAME,
  'catalogue.awg18': NAME,
  'catalogue.bus': SHARED,
  'circuits.vehicle': SYMBOL,
  'entry.commit': SHARED,
  'entry.radius': SHARED,
  'file.tooLarge': UNIT,
  'frequencies.deepest': SYMBOL,
  'glossary.response': SYMBOL,
  'key.escape': NAME,
  'marks.text': SHARED,
  'page.title': NAME,
  'shape.size': UNIT,
  'share.link': SHARED,
  'sites.size': UNIT,
  'simulator.quality': SYMBOL,
  'units.imperialShort': UNIT,
  'units.metricShort': UNIT,
  'vehicles.ringName': SHARED,
  'vehicles.ringSize': SYMBOL
};
