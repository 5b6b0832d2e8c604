"""The categories of costs: their groups, when in a year they fall, and which are investment."""

from money import END, RUNNING, START

GROUPS = {
    "Capital": ["Bus purchase", "Battery replacement", "Charging ports", "Site works", "Training and tools"],
    "Funding": ["Grants and rebates", "Awards paid back", "Low-carbon credits", "Operating aid"],
    "Energy": ["Fuel", "Exhaust fluid", "Heater fuel", "Electric energy", "Electric demand", "Electric fixed charges"],
    "Upkeep and fees": ["Upkeep", "Port fees", "Moving of plugs", "Insurance", "Registration"],
    "Residual": [
        "Bus sales",
        "Bus value left",
        "Pack life left",
        "Infrastructure life left",
        "Awards still due",
        "Operating aid still due",
    ],
}
AT_START = {
    "Bus purchase",
    "Charging ports",
    "Site works",
    "Training and tools",
    "Grants and rebates",
    "Awards paid back",
    "Bus sales",
}
AT_END = {"Bus value left", "Pack life left", "Infrastructure life left", "Awards still due", "Operating aid still due"}


def when(category):
    """Time of the year at which a category falls."""
    return START if category in AT_START else END if category in AT_END else RUNNING


def group(category):
    """Group of a category."""
    return next(g for g, members in GROUPS.items() if category in members)


def investment(category):
    """True for purchases, awards for them, sales and what is left; false for running costs, credits and yearly aid,
    whenever the aid is paid.
    """
    if category == "Operating aid still due":
        return False
    return group(category) in ("Capital", "Residual") or category in ("Grants and rebates", "Awards paid back")
