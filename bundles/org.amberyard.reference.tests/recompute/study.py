"""The inputs of the study that money and air need, by name."""

import copy

from money import Money, Path


class Study:
    """What the CSV folder says of prices, types, buses, the yard and the plans."""

    def __init__(self, folder):
        if folder.rows("price_points") or folder.rows("low_carbon_price_points"):
            raise ValueError("The recomputation knows prices that rise steadily, none by points.")
        if folder.only("settings").number("Income tax rate", "%", 0.0):
            raise ValueError("The recomputation knows no income tax.")
        if folder.rows("bus_records") or folder.only("settings").text("Price year"):
            raise ValueError("The recomputation knows studies that were not rolled to a later base year.")
        self.folder = folder
        self.money = Money(folder)
        self.settings = folder.only("settings")
        self.buses = {r.text("Name"): r for r in folder.rows("buses")}
        self.types = {
            r.text("Name"): Type(r, electric)
            for table, electric in (("engine_types", False), ("electric_types", True))
            for r in folder.rows(table)
        }
        self.ports = {r.text("Name"): r for r in folder.rows("port_types")}
        self.works = {r.text("Name"): r for table in ("site_works", "service_upgrades") for r in folder.rows(table)}
        self.plans = [r.text("Name") for r in folder.rows("plans")]
        self.baseline = folder.only("study").text("Baseline")
        self._indices = {r.text("Scales"): Path(self.money, r) for r in folder.rows("cost_indices")}
        self.fuels = {
            r.text("Fuel"): (r.number("Price", "USD/gal"), Path(self.money, r)) for r in folder.rows("fuel_prices")
        }
        fluid, pack = folder.only("exhaust_fluid_price"), folder.only("pack_price")
        self.fluid = fluid.number("Price", "USD/gal"), Path(self.money, fluid)
        self.pack = pack.number("Price", "USD/kWh"), Path(self.money, pack)

    def index(self, subject):
        """Path of prices that an index scales; flat without one."""
        return self._indices.get(subject, Path(self.money))

    LEVERS = {
        "electricity, all charges": ("electric energy", "electric demand", "electric fixed charges"),
        "price of electric buses": ("electric bus price",),
        "price of engine buses": ("engine bus price",),
        "upkeep": ("upkeep",),
        "ports and site works": ("infrastructure",),
    }

    def levers(self):
        """Prices that are looked at; none that is zero, of which no multiple leads anywhere."""
        prices = {**self.fuels, "replacement packs": self.pack}
        return [name for name, (price, _) in prices.items() if price > 0] + [*self.LEVERS, "real discount rate"]

    def at(self, lever, value):
        """The same study with a price at a multiple of what it is, or at another real discount rate."""
        other = copy.copy(self)
        if lever in self.fuels:
            price, path = self.fuels[lever]
            other.fuels = {**self.fuels, lever: (price * value, path)}
        elif lever == "replacement packs":
            other.pack = self.pack[0] * value, self.pack[1]
        elif lever == "real discount rate":
            other.money = copy.copy(self.money)
            other.money.real = value
        else:
            other._indices = {**self._indices, **{s: self.index(s).times(value) for s in self.LEVERS[lever]}}
        return other

    def of_plan(self, table, plan):
        """Rows of a table that belong to a plan."""
        return [r for r in self.folder.rows(table) if r.text("Plan") == plan]

    def year(self, row):
        """Year of a row, 0 for the first."""
        return int(row.text("Year")) - self.money.first_year


class Type:
    """A vehicle type."""

    def __init__(self, row, electric):
        self.row, self.electric = row, electric
        self.name, self.body, self.successor = row.text("Name"), row.text("Body type"), row.text("Replaced by")
        self.price = row.number("Price", "USD")
        self.life = row.number("Retirement age", "yr")
        self.life_miles = row.number("Retirement odometer", "mi")
        self.end_value = min(self.price, row.number("Value at retirement age", "USD"))
        if self.end_value < 0:
            raise ValueError("The recomputation knows worn-out buses that cost nothing to get rid of.")
        self.registration = row.number("Registration and fees", "USD/yr", 0.0)
        self.fuel = "" if electric else row.text("Fuel", "diesel")
        self.fluid_share = 0.0 if electric else row.number("Exhaust fluid share", "%", 0.0)
        self.idle_gallons = 0.0 if electric else row.number("Idle fuel rate", "gal/h")
        self.pack_kwh = row.number("Battery, nominal", "kWh") if electric else 0.0

    @property
    def subject(self):
        """Index that scales its price."""
        return "electric bus price" if self.electric else "engine bus price"
