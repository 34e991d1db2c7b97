/** Putting a vehicle on the plan where something is to be seen. */
import { withinSentence } from '#i18n/locale';
import { saying } from '#i18n/saying';
import { addProbe, updateProbe } from '#plan/edits/index';
import { tidyAngle, tidyPoint } from '#plan/edits/tidy';
import type { Probe } from '#plan/schema';
import { boxHolds } from '#editor/geometry/box';
import { visibleBox } from '#editor/viewport';
import type { Bench } from '../bench';
import { vehicleName } from '../names';
import { watchedProbe } from '../plan/calls';

/**
 * In place of the vehicle that is watched, or as the first one: one step to undo. The view goes there if the place is out
 * of sight.
 */
export function putVehicle(bench: Bench, { vehicle, at, heading }: Probe): void {
  const { editor, state } = bench;
  const probe: Probe = { vehicle, at: tidyPoint(at), heading: tidyAngle(heading) };
  const watched = watchedProbe(state.site, state.selection);
  const site = watched === null ? addProbe(state.site, probe) : updateProbe(state.site, watched, probe);
  if (site === state.site) return;
  const name = () => withinSentence(vehicleName(state.site, vehicle));
  editor.commit({ label: saying('along.step', { vehicle: name }), site });
  const { viewport } = editor.state;
  if (!boxHolds(visibleBox(viewport), probe.at)) editor.setViewport({ ...viewport, centre: probe.at });
}
