"""Loops of the site document as sides in the plan, each with the heights of the wires that lie in it.

Turn i lies at z = -depth + D (i + 1/2). In the slot shared by two cells turn i of the first cell (the one at -x before
rotation) takes position 2i, that of the second 2i + 1. Steps of a few millimetres where slots meet are left out.
"""
import math
from neumann import arc, length, line
from wire import WIRES


def rotated(points, centre, degrees):
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return [(centre[0] + c * x - s * y, centre[1] + s * x + c * y) for x, y in points]


def closed(points):
    return [line((*p, 0), (*q, 0)) for p, q in zip(points, points[1:] + points[:1])]


def chain(points):
    return [line((*p, 0), (*q, 0)) for p, q in zip(points[:-1], points[1:])]


def plan_sides(shape):
    """[(piece at z = 0, shared by two cells?)], in the sense of the winding."""
    kind = shape['kind']
    if kind == 'circle':
        return [(arc((*shape['centre'], 0), shape['diameter'] / 2), False)]
    if kind == 'polygon':
        return [(p, False) for p in closed([tuple(p) for p in shape['points']])]
    w, l, turn = shape['width'] / 2, shape['length'] / 2, shape['rotation']
    place = lambda points: rotated(points, shape['centre'], turn)
    if kind == 'rectangle':
        c = shape.get('cornerCut', 0)
        if c == 0:
            corners = [(-w, -l), (w, -l), (w, l), (-w, l)]
        else:
            corners = [(-w + c, -l), (w - c, -l), (w, -l + c), (w, l - c),
                       (w - c, l), (-w + c, l), (-w, l - c), (-w, -l + c)]
        return [(p, False) for p in closed(place(corners))]
    if kind == 'quadrupole':
        shared, outer = [(0, -l), (0, l)], [[(0, l), (-w, l), (-w, -l), (0, -l)], [(0, l), (w, l), (w, -l), (0, -l)]]
    elif kind == 'diagonal':
        shared, outer = [(-w, -l), (w, l)], [[(w, l), (-w, l), (-w, -l)], [(w, l), (w, -l), (-w, -l)]]
    else:
        raise ValueError(kind)
    return [(p, True) for p in chain(place(shared))] + [(p, False) for o in outer for p in chain(place(o))]


def sides(loop):
    """[(piece at z = 0, [z of each wire])]"""
    pitch, depth, n = WIRES[loop['wire']][1], loop['slot']['depth'], loop['turns']
    heights = lambda count: [-depth + pitch * (i + 0.5) for i in range(count)]
    return [(piece, heights(2 * n if shared else n)) for piece, shared in plan_sides(loop['shape'])]


def at_height(piece, z):
    if piece[0] == 'line':
        return line((*piece[1][:2], z), (*piece[2][:2], z))
    return arc((*piece[1][:2], z), *piece[2:])


def slot_length(loop):
    return sum(length(p) for p, _ in sides(loop))


def wire_length(loop):
    return sum(length(p) * len(zs) for p, zs in sides(loop))


def rectangle(name, turns, wire, depth, centre, width, length, rotation=0, corner_cut=0):
    return loop_of(name, turns, wire, depth, {'kind': 'rectangle', 'centre': centre, 'width': width, 'length': length,
                                              'rotation': rotation, 'cornerCut': corner_cut})


def celled(kind, name, turns, wire, depth, centre, width, length, rotation=0):
    return loop_of(name, turns, wire, depth,
                   {'kind': kind, 'centre': centre, 'width': width, 'length': length, 'rotation': rotation})


def circle(name, turns, wire, depth, centre, diameter):
    return loop_of(name, turns, wire, depth, {'kind': 'circle', 'centre': centre, 'diameter': diameter})


def polygon(name, turns, wire, depth, points):
    return loop_of(name, turns, wire, depth, {'kind': 'polygon', 'points': points})


def loop_of(name, turns, wire, depth, shape):
    """A loop in the form of the site document."""
    return {'id': name, 'name': name, 'turns': turns, 'wire': wire,
            'slot': {'depth': depth, 'width': 0.008, 'relativePermittivity': 4}, 'tail': {'length': 0}, 'shape': shape}
