/** Lines of several vehicles are told apart by tone and by dashes; the tones are `--series-0` and so on. */
export const DASHES = ['none', '7 3', '2 3', '9 3 2 3', '12 4', '4 2 1 2 1 2'] as const;
