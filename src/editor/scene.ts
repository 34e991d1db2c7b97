import type { Site } from '#plan/schema';
import type { DrawingOptions, Ref, SnapSettings, Viewport } from './types';

/** What a tool may look at. */
export interface Scene {
  readonly site: Site;
  readonly selection: readonly Ref[];
  readonly viewport: Viewport;
  readonly snap: SnapSettings;
  readonly vehicle: string;
  readonly drawing: DrawingOptions;
  readonly isReadOnly: boolean;
}
