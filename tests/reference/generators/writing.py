"""Writes one reference file: a header, then one case per line, so that a diff shows which case moved."""
import json
import os

HERE = os.path.dirname(os.path.abspath(__file__))


def rounded(value, digits=12):
    """Floats to `digits` significant figures: beyond that only the platform's rounding would show."""
    if isinstance(value, dict):
        return {k: rounded(v, digits) for k, v in value.items()}
    if isinstance(value, (list, tuple)):
        return [rounded(v, digits) for v in value]
    if isinstance(value, bool) or value is None or isinstance(value, (str, int)):
        return value
    return float(f'{float(value):.{digits}g}')


def write(name, generator, source, tolerance, cases, digits=12, **more):
    """tolerance: relative, or a dictionary of them by quantity. `more`: further header fields (notes, check)."""
    head = {'source': source, 'generator': 'generators/' + generator, 'tolerance': tolerance, **more}
    lines = [f'  {json.dumps(k)}: {json.dumps(rounded(v), ensure_ascii=False)},' for k, v in head.items()]
    rows = ',\n'.join('    ' + json.dumps(rounded(c, digits), ensure_ascii=False) for c in cases)
    text = '{\n' + '\n'.join(lines) + '\n  "cases": [\n' + rows + '\n  ]\n}\n'
    with open(os.path.join(HERE, '..', name), 'w', encoding='utf8') as f:
        f.write(text)
    print(name, len(cases), 'cases')
