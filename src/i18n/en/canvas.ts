/** What stands on the plan beside the things drawn, and depths in words. */
export const canvas = {
  'depth.below': '{depth} deep',
  'depth.above': '{depth} above the road',
  'canvas.mat': 'Mat, bars every {pitch}, {depth}',
  'canvas.plate': 'Plate, {depth}'
} as const;
