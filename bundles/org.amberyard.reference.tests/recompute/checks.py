"""Compares recomputed figures with those of the program and keeps account of it."""

import math

TOLERANCE = 1e-9


class Checks:
    """All comparisons of a run."""

    def __init__(self):
        self.counts = {}
        self.misses = []
        self.greatest = (0.0, "")

    def figure(self, table, where, mine, theirs, size=0.0):
        """Compares one figure.

        The difference is taken relative to the larger figure, or to the size of the amounts of which it is a sum where
        that is larger: a difference of two millions that is nearly nothing cannot be told more exactly than the
        millions.
        """
        self.counts[table] = self.counts.get(table, 0) + 1
        unknown = mine is None or (isinstance(mine, float) and math.isnan(mine))
        if unknown or theirs is None:
            if not (unknown and theirs is None):
                self.misses.append(f"{table} {where}: {mine} recomputed, {theirs} in the results")
            return
        scale = max(abs(mine), abs(theirs), size)
        off = abs(mine - theirs) / scale if scale > 0 else 0.0
        if off > self.greatest[0]:
            self.greatest = (off, f"{table} {where}")
        if not off <= TOLERANCE:
            self.misses.append(f"{table} {where}: {mine!r} recomputed, {theirs!r} in the results, {off:.3g} apart")

    def word(self, table, where, mine, theirs):
        """Compares one word."""
        self.counts[table] = self.counts.get(table, 0) + 1
        if mine != theirs:
            self.misses.append(f"{table} {where}: {mine!r} recomputed, {theirs!r} in the results")

    def keys(self, table, mine, theirs):
        """Compares which rows there are."""
        for key in sorted(set(mine) ^ set(theirs), key=str):
            self.misses.append(f"{table}: row {key} is only {'recomputed' if key in set(mine) else 'in the results'}")

    def total(self):
        """Number of figures compared."""
        return sum(self.counts.values())
