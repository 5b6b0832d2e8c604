"""Recomputes money and air of a study, from its inputs and the physical quantities of its results, and compares.

Usage: python3 recompute.py STUDY_FOLDER RESULTS_FOLDER

STUDY_FOLDER holds the study as CSV files in US units, RESULTS_FOLDER its results.json. Prints how many figures of which
table were compared, the greatest difference and every figure that is further apart than 1e-9; returns 0 when there is
none.

It shares no code with the program and reads from the results only what is no money and no emission: distances, fuel,
energy, health and cycles of packs, who comes and goes, and the quantities of the bills. Two things it takes as given:
the work of the shop at base-date prices, and the mass of the dust of brakes and tyres. What it does not know (prices by
points, income tax, a shared meter, fuel-fired heaters, used electric buses, dates of delivery,
studies rolled to a later base year) it refuses.
"""

import pathlib
import sys
import time

import compare_air
import compare_bills
import compare_breakeven
import compare_debts
import compare_measures
import compare_money
from checks import TOLERANCE, Checks
from costs import Plan
from course import Course
from study import Study
from tables import Folder, Results


def main(study_folder, results_folder):
    """Recomputes and compares; returns the exit code."""
    start = time.perf_counter()
    study = Study(Folder(study_folder))
    results = Results(pathlib.Path(results_folder) / "results.json")
    plans = [Plan(study, Course(results, name)) for name in study.plans]
    checks = Checks()
    compare_money.compare(study, results, plans, checks)
    compare_debts.compare(study, results, plans, checks)
    compare_bills.compare(study, results, plans, checks)
    compare_breakeven.compare(study, results, plans, checks)
    co2e = compare_air.compare(study, results, plans, checks)
    compare_measures.compare(study, results, plans, co2e, checks)
    for table, count in checks.counts.items():
        print(f"{table}: {count} figures")
    for miss in checks.misses:
        print(f"MISS {miss}")
    print(
        f"{checks.total()} figures compared, {len(checks.misses)} further apart than {TOLERANCE:g}; "
        f"greatest difference {checks.greatest[0]:.3g} at {checks.greatest[1]}; {time.perf_counter() - start:.1f} s"
    )
    return 1 if checks.misses else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
