/** Another channel or unit in the place of the one that is suspected. */
import { said, yesOrNo, type AskNode, type Node } from '../node';
import { unexplained, unitFault } from './ends';
import { circuitsOn, own, ownUnit } from './names';
import { count } from '../values';

const swap: AskNode = {
  question: (place) => said('swap.ask', { circuit: own(place), unit: ownUnit(place) }),
  facts: ({ site, unit }) => {
    const free = unit.channels - circuitsOn(site, unit.id).length;
    const name = ownUnit({ unit });
    return [
      free > 0 ? said('swap.free', { unit: name, count: count(free) }) : said('swap.full', { unit: name })
    ];
  },
  hazards: ['mains', 'gate', 'traffic'],
  answers: yesOrNo('end-unit', 'end-unexplained')
};

export const swapping: Readonly<Record<string, Node>> = {
  swap,
  'end-unit': unitFault,
  'end-unexplained': unexplained
};
