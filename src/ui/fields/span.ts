/** How much of a row of fields one field takes; thirds become halves where there is little room. */
export type FieldSpan = 'third' | 'half' | 'whole';
