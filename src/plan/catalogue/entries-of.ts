/**
 * The catalogue's data as what it is. That every entry fits its schema in `entries.ts`, with nothing left to a default, is
 * tested: reading it at each start would bring the schema's library into the worker, where the first readout waits for it.
 */
export const entriesOf = <Entry>(data: readonly unknown[]): readonly Entry[] => data as readonly Entry[];
