/** A vehicle follows the pointer, looking along the lane that it is in; a press puts it down where it is released. */
import { withinSentence } from '#i18n/locale';
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { addProbe } from '#plan/edits/index';
import { tidyLength } from '#plan/edits/tidy';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bearing } from '#plan/geometry/points';
import type { Point, Probe, Site } from '#plan/schema';
import { laneAt } from '../geometry/lanes';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import type { Ref } from '../types';
import type { Outcome, ToolPointer, ToolState } from './tool';

/** Headings along an oblique lane are rounded to this part of a degree. */
const PER_DEGREE = 1e6;

function headingAt(site: Site, at: Point): number {
  const found = laneAt(site.lanes, at);
  const last = site.probes.at(-1)?.heading ?? 90;
  return found ? Math.round(bearing([0, 0], found.station.ahead) * PER_DEGREE) / PER_DEGREE : last;
}

function placed(input: ToolPointer, scene: Scene) {
  const { site, vehicle } = scene;
  const snap = createSnapper(scene, [{ kind: 'probe', id: String(site.probes.length) }]);
  const found = snap.point(input.at, input);
  const at: Point = [tidyLength(found.at[0]), tidyLength(found.at[1])];
  const probe: Probe = { vehicle, at, heading: headingAt(site, at) };
  return { site: addProbe(site, probe), found };
}

function tool(held: boolean): ToolState {
  const state: ToolState = {
    name: `vehicle: ${held ? 'placing' : 'ready'}`,
    busy: held,
    on(input, scene): Outcome | null {
      if (input.type === 'key' || input.type === 'double') return null;
      const { site, found } = placed(input, scene);
      if (input.type === 'up') return held ? { next: tool(false), ...putDown(site, scene) } : null;
      const label = found.text === '' ? null : { at: found.at, text: found.text };
      const overlay = { guides: found.guides, label, cursor: 'copy' };
      return { next: input.type === 'down' ? tool(true) : state, draft: site, overlay };
    }
  };
  return state;
}

function putDown(site: Site, scene: Scene): Omit<Outcome, 'next'> {
  const name = () => withinSentence(vehicleOf(scene.vehicle, site)?.name ?? t('step.aVehicle'));
  const selection: Ref[] = [{ kind: 'probe', id: String(scene.site.probes.length) }];
  return {
    step: { label: saying('step.vehicle', { name }), site, selection },
    tool: 'select'
  };
}

export const vehicleTool = tool(false);
