/** What the sheet under the plan shows where there is no room for everything at once. */
export type Sheet = 'details' | 'findings' | 'views';
