/**
 * One plate for each published vehicle class. A class is a figure on a standard loop; the plate gives exactly that figure
 * there and so carries the class over to any other circuit. It is placed and asked for like any vehicle. All keep to the
 * lane's middle, as on the standard loop: a two-wheeler's other paths are the business of the two-wheelers, and so are
 * loops with a slot under the lane's middle, which a flat plate hardly sees and wheels do.
 */
import type { TestPlateEntry } from './entries';
import { entriesOf } from './entries-of';
import { withSpokenParts } from './spoken-names';
import data from './test-plates.json';
import type { CatalogueVehicle } from './vehicles';

export interface TestPlate extends CatalogueVehicle {
  /** ΔL/L on the standard loop, negative. */
  readonly onStandardLoop: number;
  readonly source: string;
}

export const testPlates: readonly TestPlate[] = withSpokenParts(entriesOf<TestPlateEntry>(data));
