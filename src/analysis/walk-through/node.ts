/** What a way through a complaint is made of: places where somebody looks, where the figures decide, and where it ends. */
import type { Arguments, MessageKey } from '#i18n/message';
import type { ToldValue } from '../fault-finding/results';
import type { Channel, Unit } from '#plan/schema';
import type { WalkFigures } from './figures/figures';
import type { Hazard, Said, WalkStep } from './results';

type KeyUnder<Key> = Key extends `walk.${infer Rest}` ? Rest : never;
export type WalkKey = KeyUnder<MessageKey>;

type Filled<Given> = Given extends [values: infer Values]
  ? [values: { readonly [Name in keyof Values]: ToldValue }]
  : [];

/** A key that has no words, or a value that its words do not name, does not compile. */
export const said = <Key extends WalkKey>(key: Key, ...[values]: Filled<Arguments<`walk.${Key}`>>): Said => ({
  key,
  values: values ?? {}
});

/** Where the way stands: the figures, and the circuit, lane or vehicle that an answer or a figure has named. */
export interface Place extends WalkFigures {
  readonly channel: Channel;
  readonly unit: Unit;
  readonly about: string | null;
}

/** Where a way goes on, and about what. */
export interface Onward {
  readonly to: string;
  readonly about?: string | null;
}

/** The figures decide: what they say, and where the way goes on. */
export interface Decision extends Onward {
  readonly said: Said | null;
}

export interface Answer extends Onward {
  readonly id: string;
  readonly label: Said;
}

export interface AskNode {
  /** Null: it must be asked. */
  readonly decide?: (place: Place) => Decision | null;
  readonly question: (place: Place) => Said;
  readonly facts?: (place: Place) => readonly Said[];
  readonly hazards?: readonly Hazard[];
  readonly measure?: NonNullable<WalkStep['measure']>;
  readonly answers: (place: Place) => readonly Answer[];
}

/** Never asked. */
interface DecideNode {
  readonly decided: (place: Place) => Decision;
}

export interface EndNode {
  readonly verdict: (place: Place) => Said;
  readonly remedies: (place: Place) => readonly Said[];
  readonly facts?: (place: Place) => readonly Said[];
  readonly hazards?: readonly Hazard[];
  readonly check: (place: Place) => Said;
}

export type Node = AskNode | DecideNode | EndNode;

export interface Path {
  readonly start: string;
  readonly nodes: Readonly<Record<string, Node>>;
  /** What has to be reckoned before its first step. */
  readonly needs: readonly Need[];
}

/** `beats`: pairs that disturb one another; `passes`: vehicles path by path; `heights`: how high a floor may be. */
export type Need = 'beats' | 'passes' | 'heights';

export const answer = (id: string, label: Said, to: string, about?: string | null): Answer =>
  about === undefined ? { id, label, to } : { id, label, to, about };

/** "Yes" and "No". */
export const yesOrNo = (yes: string, no: string) => (): readonly Answer[] => [
  answer('yes', said('answer.yes'), yes),
  answer('no', said('answer.no'), no)
];
