/** Under which a reading was taken. */
import type { Reading, Site } from '#plan/schema';
import type { MeterConditions } from './results';

/** What is left out is as the site and its instruments usually have it. */
export function conditionsOf(site: Pick<Site, 'fieldCheck'>, reading: Reading): MeterConditions {
  const stated = site.fieldCheck?.instruments?.find(
    ({ id, testFrequency_Hz }) => reading.instruments?.includes(id) && testFrequency_Hz !== undefined
  );
  const frequency = reading.meterFrequency_Hz ?? stated?.testFrequency_Hz;
  return {
    ...(frequency === undefined ? {} : { meterFrequency_Hz: frequency }),
    ...(reading.temperature_C === undefined ? {} : { temperature_C: reading.temperature_C }),
    ...(reading.setting === undefined ? {} : { setting: reading.setting })
  };
}
