/** What somebody chose to sweep: kept while other views are open, stored nowhere. What is not there falls back to what is usual. */
import type { Figure } from '#analysis/sweep/results';
import type { Experiment, Variable } from '#plan/variables/variable';
import { variableKey } from '../words/variable';
import type { ScaleKind } from './axis';

export const CURVES = ['one', 'family', 'map', 'designs'] as const;
export type Curves = (typeof CURVES)[number];

export interface Span {
  /** Stored units. */
  readonly from: number;
  readonly to: number;
  readonly points: number;
}

class SweepChoices {
  /** Null: a number of what is selected. */
  x = $state.raw<Variable | null>(null);
  second = $state.raw<Variable | null>(null);
  curves = $state<Curves>('one');
  /** Null: what is usual for the number. */
  figures = $state.raw<readonly Figure[] | null>(null);
  scale = $state<ScaleKind>('linear');
  place = $state.raw<Pick<Experiment, 'offset_m' | 'along_m'>>({ offset_m: 0, along_m: 0 });
  /** By variable, and whether it is the second one. */
  #spans = $state.raw<Readonly<Record<string, Partial<Span>>>>({});

  spanOf(variable: Variable, use: string): Partial<Span> {
    return this.#spans[use + variableKey(variable)] ?? {};
  }

  setSpan(variable: Variable, use: string, span: Partial<Span> | null): void {
    const key = use + variableKey(variable);
    this.#spans = { ...this.#spans, [key]: span ? { ...this.#spans[key], ...span } : {} };
  }
}

export const sweepChoices = new SweepChoices();
