/** The test frequency for which figures are shown, until the page goes; null: the usual one. */
class Meter {
  frequency_Hz = $state.raw<number | null>(null);
}

export const meter = new Meter();
