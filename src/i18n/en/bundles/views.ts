/** What views and dialogs say that are looked at later. */
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
} as const;
