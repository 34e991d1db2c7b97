/**
 * Every change that a hand can make to the document, as a pure function from site to site.
 *
 * They are total: what the document may not hold (a side out of bounds, an unknown wire, a taken channel, an outline that
 * crosses itself) leaves the site as it is, the same object. What did not change is shared, never copied.
 */
export * from './advance-loops';
export * from './arrange/index';
export * from './assign-channel';
export { freeNumber } from './channels';
export * from './circuits';
export * from './conduits';
export * from './copies';
export * from './estimate';
export * from './frequency-plan';
export * from './handles';
export * from './handling';
export * from './lanes';
export * from './lead-in';
export * from './loops';
export * from './marks';
export * from './mirror';
export * from './new-loop';
export * from './paths';
export * from './probes';
export * from './remove';
export * from './rename';
export * from './routes';
export { thingsOn } from './scale';
export { designsOn } from './scale-designs';
export * from './site-fields';
export * from './steel';
export { steelBox, type SteelBox } from './steel-box';
export type { Thing } from './thing';
export * from './traffic';
export { moveThings, rotateThings } from './transform';
export * from './unit-settings';
export * from './underlays';
export * from './units';
export * from './usual-traffic';
export * from './variants';
export * from './vehicle-height';
export * from './vehicle-parts';
export * from './vehicle-train';
export * from './vehicles';
export * from './wires-and-cables';
export * from './wiring';
