/** What the first page says of views that come later. */
export const atOnce = {
  'advice.open': 'Advise turns …',
  'explain.open': 'How this was computed',
  'section.title': 'Cross-section',
  'calls.onPlan': 'Simulated traffic is shown.',
  'calls.showPlan': 'Show the plan',
  'underlay.refused': '{name} was not laid under the plan: {reason}',
  'underlay.step.replace': 'Replace picture',
  'underlay.full': 'the site has {count} pictures, and that is as many as it can hold.',
  'underlay.step.insert': 'Insert picture'
} as const;
