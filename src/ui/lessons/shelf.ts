/** The lessons that come with the program. */
export interface LessonShelf {
  /** In the order in which a class would take them. */
  readonly names: readonly string[];
  /** The text of a lesson's file; rejects when it cannot be loaded. */
  readonly load: (name: string) => Promise<string>;
}
