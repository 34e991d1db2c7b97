/**
 * Variants in a file: each design is checked like a site of its own, whose references must lead to what it holds itself.
 * Problems field by field are the schema's.
 */
import { t } from '#i18n/message';
import { readableLists } from './lists';
import { impossibilities } from './possibility';
import { inWords, problem, quoted, under, type Problem } from './problem';
import { rawVariants } from './raw-variants';
import { danglingReferences, duplicates } from './references';

/** What belongs to the site has no meaning in a design, and is not looked at there. */
const OF_THE_SITE = ['underlays', 'readings'] as const;

function designProblems(design: object): readonly Problem[] {
  const drawn = Object.fromEntries(
    Object.entries(design).filter(([key]) => !(OF_THE_SITE as readonly string[]).includes(key))
  );
  const lists = readableLists(drawn);
  return [...duplicates(drawn), ...danglingReferences(drawn, lists), ...impossibilities(lists)];
}

export function variantProblems(document: object): readonly Problem[] {
  const all = rawVariants(document);
  const places = new Map<string, number>();
  const repeated = all.flatMap(({ id, index }) => {
    if (id === null) return [];
    const first = places.get(id);
    if (first === undefined) {
      places.set(id, index);
      return [];
    }
    const found = t('read.secondTime', { id: quoted(id), place: `variants[${first}]` });
    return [problem(['variants', index, 'id'], found, t('read.ownId'))];
  });
  const { variant } = document as { readonly variant?: unknown };
  const unknown =
    typeof variant === 'string' && !places.has(variant)
      ? [problem(['variant'], inWords(variant), t('read.id.variant'))]
      : [];
  const designs = all.flatMap(({ design, index }) =>
    design ? designProblems(design).map((each) => under(`variants[${index}].design`, each)) : []
  );
  return [...repeated, ...unknown, ...designs];
}
