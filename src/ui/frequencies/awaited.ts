import type { Component } from 'svelte';

const found = import.meta.glob(
  ['./planner/PlanFrequencies.svelte', './simulator/Simulator.svelte', '../units/UnitsView.svelte'],
  { eager: true, import: 'default' }
);
export const awaited = (end: string): Component | undefined =>
  Object.entries(found).find(([path]) => path.endsWith(end))?.[1] as Component | undefined;
