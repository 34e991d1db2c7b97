/** The sites kept in this browser, as their list shows them. */

export interface SiteState {
  readonly begun: number;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly name: string;
}

export interface ListedSite {
  readonly slot: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** Characters of its newest state. */
  readonly size: number;
  readonly place: 'here' | 'elsewhere' | 'closed';
  readonly fileName: string | null;
  /** Newest first. */
  readonly states: readonly SiteState[];
  /** Milliseconds since 1970; null unless it lies in the bin. */
  readonly deletedAt: number | null;
}

/** Data that could not be read and was moved aside. */
export interface SetAsideData {
  readonly key: string;
  readonly text: string;
  readonly reason: string;
}

/** Every method rejects when the browser refuses; `list` shows how things then stand. */
export interface Sites {
  list(): Promise<readonly ListedSite[]>;
  asides(): Promise<readonly SetAsideData[]>;
  rename(slot: string, name: string): Promise<void>;
  duplicate(slot: string): Promise<void>;
  /** Into the bin; of the site that is open here, the page goes on with another one. */
  remove(slot: string): Promise<void>;
  /** Out of the bin; `isToOpen`: it was open here when it was deleted. */
  restore(slot: string, isToOpen: boolean): Promise<void>;
  removeForGood(slot: string): Promise<void>;
  openCopy(slot: string, begun: number): Promise<void>;
  /** What is there now stays as a state; where the site is open here, the step can be undone. */
  goBack(slot: string, begun: number): Promise<void>;
  dropAside(key: string): Promise<void>;
}
