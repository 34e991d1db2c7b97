/** Pictures under the plan. */
export const underlay = {} as const;
