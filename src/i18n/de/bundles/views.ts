/** What views and dialogs say that are looked at later. */
import type { messages as english } from '../../en/bundles/views';
import type { Translation } from '../../message';
import { compare } from '../compare';
import { designs } from '../designs';
import { differences } from '../differences';
import { sweep } from '../sweep';
import { goal } from '../goal';
import { fieldPicture } from '../field-picture';
import { lessons } from '../lessons';
import { lessonReading } from '../lesson-reading';
import { fieldCheck } from '../field-check';
import { causeEvidence } from '../cause-evidence';
import { causes } from '../causes';
import { causesView } from '../causes-view';
import { walkThrough } from '../walk-through';
import { record } from '../record';
import { takeoff } from '../takeoff';
import { estimate } from '../estimate';
import { cutting } from '../cutting';
import { tables } from '../tables';
import { exports } from '../exports';
import { sheet } from '../sheet';
import { sheetView } from '../sheet-view';
import { imports } from '../imports';
import { across } from '../across';
import { advice } from '../advice';
import { along } from '../along';
import { approach } from '../approach';
import { arranging } from '../arranging';
import { calls } from '../calls';
import { explain } from '../explain';
import { explainCircuit } from '../explain-circuit';
import { explainPasses } from '../explain-passes';
import { frequencies } from '../frequencies';
import { glossary } from '../glossary';
import { help } from '../help';
import { language } from '../language';
import { map } from '../map';
import { marks } from '../marks';
import { passing } from '../passing';
import { planner } from '../planner';
import { section } from '../section';
import { settings } from '../settings';
import { simulator } from '../simulator';
import { sites } from '../sites';
import { snapMenu } from '../snap-menu';
import { speed } from '../speed';
import { traffic } from '../traffic';
import { underlayViews } from '../underlay-views';
import { units } from '../units';
import { vehicleSources } from '../vehicle-sources';
import { vehicles } from '../vehicles';

export const messages = {
  ...compare,
  ...designs,
  ...differences,
  ...sweep,
  ...goal,
  ...fieldPicture,
  ...lessons,
  ...lessonReading,
  ...fieldCheck,
  ...causes,
  ...causesView,
  ...causeEvidence,
  ...walkThrough,
  ...record,
  ...takeoff,
  ...estimate,
  ...cutting,
  ...tables,
  ...exports,
  ...sheet,
  ...sheetView,
  ...imports,
  ...across,
  ...advice,
  ...along,
  ...approach,
  ...arranging,
  ...calls,
  ...explain,
  ...explainCircuit,
  ...explainPasses,
  ...frequencies,
  ...glossary,
  ...help,
  ...language,
  ...map,
  ...marks,
  ...passing,
  ...planner,
  ...section,
  ...settings,
  ...simulator,
  ...sites,
  ...snapMenu,
  ...speed,
  ...traffic,
  ...underlayViews,
  ...units,
  ...vehicleSources,
  ...vehicles
} as const satisfies Pick<Translation, keyof typeof english>;
