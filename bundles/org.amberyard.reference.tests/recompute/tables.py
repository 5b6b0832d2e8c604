"""Reads what the recomputation works from: the study as CSV files, and result tables.

Numbers of the study are asked for with the unit that the column must state, so that a unit is never guessed.
Percentages become shares. Nothing is converted on the way: the recomputation counts in miles, gallons and kilowatt-
hours, as the files do.
"""

import csv
import json
import pathlib
import re

_HEADER = re.compile(r"^(.*?)(?: \(([^()]+)\))?$")


class Row:
    """One row of a study table."""

    def __init__(self, table, units, cells):
        self.table, self._units, self._cells = table, units, cells

    def text(self, label, default=""):
        """Text of a column; the default where the column is left out or the cell is empty."""
        return self._cells.get(label) or default

    def number(self, label, unit, default=None):
        """Number of a column that must state a unit; the default where there is none."""
        text = self._cells.get(label)
        if not text:
            if default is None and label not in self._units:
                raise ValueError(f"{self.table}: no column {label!r}, and no default")
            return default
        if self._units[label] != unit:
            raise ValueError(f"{self.table}: {label!r} is in {self._units[label]!r}, not in {unit!r}")
        return float(text) / 100 if unit == "%" else float(text)

    def yes(self, label):
        """True for a cell that says yes."""
        return self.text(label) == "yes"

    def names(self, label):
        """Names separated by semicolons."""
        return [n.strip() for n in self.text(label).split(";") if n.strip()]


class Folder:
    """A study as a folder of CSV files; a file that is left out has no rows."""

    def __init__(self, folder):
        self._folder, self._read = pathlib.Path(folder), {}

    def rows(self, name):
        """All rows of a table."""
        if name not in self._read:
            self._read[name] = self._rows(name)
        return self._read[name]

    def _rows(self, name):
        path = self._folder / f"{name}.csv"
        if not path.exists():
            return []
        with path.open(encoding="utf-8-sig", newline="") as file:
            csv.field_size_limit(10_000_000)
            lines = list(csv.reader(file))
        heads = [_HEADER.match(h).groups() for h in lines[0]]
        units = {label: unit or "" for label, unit in heads}
        return [Row(name, units, dict(zip((h[0] for h in heads), line))) for line in lines[1:]]

    def only(self, name):
        """The row of a table that has one; an empty row where the file is left out."""
        return (self.rows(name) or [Row(name, {}, {})])[0]


class Results:
    """Result tables of results.json, in full precision."""

    def __init__(self, path):
        with open(path, encoding="utf-8") as file:
            self._json = json.load(file)
        if self._json["unit_system"] != "us":
            raise ValueError("The results must be in US customary units.")
        self.first_year = self._json["base_year"]
        self.years = self._json["years"]
        self.basis = self._json["money_basis"]

    def has(self, name):
        """True when a table is there: those that take long may be left out."""
        return name in self._json["tables"]

    def rows(self, name):
        """Rows of a table as dictionaries by column."""
        table = self._json["tables"][name]
        columns = [c["name"] for c in table["columns"]]
        return [dict(zip(columns, row)) for row in table["rows"]]
