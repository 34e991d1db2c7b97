/** What a kind, a group and an item of the take-off are called, in the language spoken. */
import { t } from '#i18n/message';
import { cableOf } from '#plan/catalogue/cables';
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import type { TakeoffGroup, TakeoffKind, TakeoffLine } from './results';

/** Ends the id of the sealant that overcuts and core holes take. */
export const SEALANT_OF_ENDS = '/ends';

export const kindName = (kind: TakeoffKind): string => t(`takeoff.kind.${kind}`);

/** What a line is: the sealant past the ends of cuts and in core holes apart from that of the slots. */
export const lineName = ({ what, id }: Pick<TakeoffLine, 'what' | 'id'>): string =>
  what === 'sealant' && id.endsWith(SEALANT_OF_ENDS) ? t('takeoff.sealantOfEnds') : kindName(what);

export const groupName = (group: TakeoffGroup): string => t(`takeoff.group.${group}`);

const PLAIN = {
  core: 'takeoff.item.core',
  sealant: 'takeoff.item.sealant',
  backer: 'takeoff.item.backer',
  conduit: 'takeoff.item.conduit',
  'pull box': 'takeoff.item.pullBox',
  cabinet: 'takeoff.item.cabinet',
  'splice kit': 'takeoff.item.spliceKit',
  label: 'takeoff.item.label',
  crew: 'takeoff.item.crew'
} as const;

const isPlain = (item: string): item is keyof typeof PLAIN => Object.hasOwn(PLAIN, item);

/** `say` writes a depth or a width, given in metres. An item that nobody knows any more keeps its id. */
export function itemName(
  site: Pick<Site, 'wires' | 'cables' | 'estimate'>,
  item: string,
  say: (metres: number) => string
): string {
  if (isPlain(item)) return t(PLAIN[item]);
  const [kind, ...rest] = item.split(':');
  const id = rest.join(':');
  if (kind === 'wire') return t('takeoff.item.wire', { name: wireOf(id, site)?.name || id });
  if (kind === 'cable') return t('takeoff.item.cable', { name: cableOf(id, site)?.name || id });
  if (kind === 'extra')
    return site.estimate?.extras?.find((extra) => extra.id === id)?.name || t('takeoff.item.extra');
  const [depth, width] = id.split('x').map((millimetres) => Number(millimetres) / 1000);
  return kind === 'saw' && depth !== undefined && width !== undefined
    ? t('takeoff.item.saw', { depth: say(depth), width: say(width) })
    : item;
}

/** "saw:50x8": millimetres, deep × wide, to a hundredth. */
export const sawItem = ({ depth, width }: { readonly depth: number; readonly width: number }): string =>
  `saw:${[depth, width].map((metres) => Number((metres * 1000).toFixed(2))).join('x')}`;
