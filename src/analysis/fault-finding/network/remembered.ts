/** Results that are asked for again and again, without a text made of what they hang on. */

/** Those of a unit pile up, each state's its own. */
const MOST_FREQUENCIES = 500;

/** By an object, then by a frequency and a temperature: of these a circuit sees few. */
export class Remembered<K extends object, V> {
  private readonly kept = new WeakMap<K, Map<number, Map<number, V>>>();

  get(key: K, frequency: number, temperature: number, make: () => V): V {
    let byTemperature = this.kept.get(key);
    if (!byTemperature) this.kept.set(key, (byTemperature = new Map<number, Map<number, V>>()));
    let byFrequency = byTemperature.get(temperature);
    if (!byFrequency) byTemperature.set(temperature, (byFrequency = new Map<number, V>()));
    const known = byFrequency.get(frequency);
    if (known !== undefined) return known;
    if (byFrequency.size >= MOST_FREQUENCIES) byFrequency.clear();
    const made = make();
    byFrequency.set(frequency, made);
    return made;
  }
}

/** By an object alone. */
export class RememberedOf<K extends object, V> {
  private readonly kept = new WeakMap<K, V>();

  get(key: K, make: () => V): V {
    const known = this.kept.get(key);
    if (known !== undefined) return known;
    const made = make();
    this.kept.set(key, made);
    return made;
  }
}
