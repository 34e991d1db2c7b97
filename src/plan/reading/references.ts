/** Ids that occur twice, and ids that name nothing. */
import { t } from '#i18n/message';
import { builtInCables } from '../catalogue/cables';
import { catalogueVehicles } from '../catalogue/vehicles';
import { builtInWires } from '../catalogue/wires';
import { type ListName, LIST_NAMES, type Lists, idsOf } from './lists';
import { type Path, type Problem, inWords, problem, quoted } from './problem';
import { danglingTraffic } from './traffic-references';
import { rawCircuits } from './raw-variants';

export function duplicates(document: object): readonly Problem[] {
  return LIST_NAMES.flatMap((name) =>
    [...idsOf(document, name)].flatMap(([id, [first, ...later]]) =>
      later.map((index) =>
        problem(
          [name, index, 'id'],
          t('read.secondTime', { id: quoted(id), place: `${name}[${first}]` }),
          t('read.ownId')
        )
      )
    )
  );
}

export function danglingReferences(document: object, lists: Lists): readonly Problem[] {
  const problems: Problem[] = [];
  const known = (name: ListName, more: readonly { readonly id: string }[] = []) =>
    new Set([...idsOf(document, name).keys(), ...more.map(({ id }) => id)]);
  const vehicles = known('vehicles', catalogueVehicles);
  const cables = known('cables', builtInCables);
  const wires = known('wires', builtInWires);
  const marks = known('marks');
  const circuits = known('circuits');
  const need = (ids: ReadonlySet<string>, id: string | undefined, path: Path, expected: string) => {
    if (id !== undefined && !ids.has(id)) problems.push(problem(path, inWords(id), expected));
  };
  const vehicle = t('read.id.vehicle');

  const mark = t('read.id.mark');
  for (const { index, value } of lists.loops) {
    need(
      wires,
      value.wire,
      ['loops', index, 'wire'],
      t('read.oneOf', { choices: [...wires].map(quoted).join(', ') })
    );
    need(marks, value.tail.route?.to, ['loops', index, 'tail', 'route', 'to'], mark);
  }
  for (const { index, value } of lists.lanes)
    need(vehicles, value.largestVehicle, ['lanes', index, 'largestVehicle'], vehicle);
  for (const { index, value } of lists.probes)
    need(vehicles, value.vehicle, ['probes', index, 'vehicle'], vehicle);
  const everywhere = new Set([...circuits, ...rawCircuits(document)]);
  for (const { index, value } of lists.readings)
    need(everywhere, value.circuit, ['readings', index, 'circuit'], t('read.id.circuit'));
  for (const { index, value } of lists.conduits)
    value.circuits.forEach((id, at) =>
      need(circuits, id, ['conduits', index, 'circuits', at], t('read.id.circuit'))
    );
  for (const { index, value } of lists.circuits) {
    const path = ['circuits', index] as const;
    const cable = t('read.id.cable');
    need(cables, value.leadIn.cable, [...path, 'leadIn', 'cable'], cable);
    value.leadIn.further?.forEach((each, at) =>
      need(cables, each.cable, [...path, 'leadIn', 'further', at, 'cable'], cable)
    );
    need(marks, value.leadIn.route?.from, [...path, 'leadIn', 'route', 'from'], mark);
    need(marks, value.leadIn.route?.to, [...path, 'leadIn', 'route', 'to'], mark);
    value.detect.forEach((id, at) => need(vehicles, id, [...path, 'detect', at], vehicle));
  }
  return [
    ...problems,
    ...wiringProblems(document, lists),
    ...channelProblems(document, lists),
    ...danglingTraffic(document)
  ];
}

/** Every loop of a circuit must exist and can be wired only once. */
function wiringProblems(document: object, lists: Lists): readonly Problem[] {
  const problems: Problem[] = [];
  const loops = idsOf(document, 'loops');
  const wired = new Map<string, string>();
  for (const { index, value } of lists.circuits) {
    value.strings.forEach((string, row) =>
      string.forEach(({ loop }, column) => {
        const path: Path = ['circuits', index, 'strings', row, column, 'loop'];
        const earlier = wired.get(loop);
        if (!loops.has(loop)) problems.push(problem(path, inWords(loop), t('read.id.loop')));
        else if (earlier !== undefined)
          problems.push(
            problem(
              path,
              t('read.wiredAlready', { loop: quoted(loop), circuit: quoted(earlier) }),
              t('read.wiredOnce')
            )
          );
        else wired.set(loop, value.id);
      })
    );
  }
  return problems;
}

function channelProblems(document: object, lists: Lists): readonly Problem[] {
  const problems: Problem[] = [];
  const ids = idsOf(document, 'units');
  const units = new Map(lists.units.map(({ value }) => [value.id, value]));
  for (const { index, value } of lists.circuits) {
    if (!value.channel) continue;
    const { unit: id, number, frequencySetting } = value.channel;
    const path = ['circuits', index, 'channel'] as const;
    const unit = units.get(id);
    if (!ids.has(id)) problems.push(problem([...path, 'unit'], inWords(id), t('read.id.unit')));
    if (!unit) continue;
    if (number > unit.channels)
      problems.push(
        problem(
          [...path, 'number'],
          String(number),
          t('read.channels', { most: unit.channels, unit: quoted(id) })
        )
      );
    if (frequencySetting > unit.settings_F.length) {
      const expected = t('read.settings', { most: unit.settings_F.length, unit: quoted(id) });
      problems.push(problem([...path, 'frequencySetting'], String(frequencySetting), expected));
    }
  }
  return problems;
}
