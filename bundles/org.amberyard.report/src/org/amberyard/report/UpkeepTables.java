package org.amberyard.report;

import java.util.OptionalDouble;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.report.UpkeepRows.OfBus;
import org.amberyard.report.UpkeepRows.OfCause;
import org.amberyard.report.UpkeepRows.OfMonth;
import org.amberyard.report.UpkeepRows.OfShop;
import org.amberyard.report.UpkeepRows.OfType;

/** Tables of what wears, what it costs and who works on it. */
final class UpkeepTables {
    private UpkeepTables() {
    }

    static TableDefinition<OfBus> shopCalendar() {
        return new TableDefinition<>("shop_calendar", "Tasks of the shop by bus and year", OfBus::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year.", r -> r.result().input().baseYear() + r.upkeep().record().year())
                .text("place", "Place", "Place in the fleet by its bus number.",
                        r -> r.result().input().buses().get(r.upkeep().record().place()).name())
                .text("unit", "Bus", "The bus.", r -> r.upkeep().record().vehicle().unit()).heads()
                .count("tasks", "Tasks due", "Tasks that fall due in the year, each as often as it does.",
                        r -> r.upkeep().calendar().due().stream().mapToInt(e -> (int) e.times()).sum())
                .number("labour", "Labour", Unit.HOUR, "Labour of tasks due and of failures to be expected.", OfBus::hours)
                .number("high_voltage_labour", "High-voltage labour", Unit.HOUR,
                        "The part of it that is for people trained for high voltage.", r -> r.hours(Skill.HIGH_VOLTAGE))
                .number("failure_labour", "Failure labour", Unit.HOUR, "The part of it that failures ask for.",
                        r -> r.upkeep().calendar().failureHours())
                .money("cost", "Upkeep", "Parts and labour at base-date prices, calibration included.",
                        r -> r.upkeep().cost())
                .number("calibration", "Calibration", Unit.SHARE,
                        "Measured over modelled upkeep of the type, by which the cost is multiplied; 100 % where nothing was "
                                + "measured. Labour hours are not multiplied.",
                        r -> r.upkeep().factor())
                .number("failures", "Failures", ColumnUnit.COUNT, "Failures to be expected.", r -> r.upkeep().failures().failures())
                .money("failure_cost", "Failure cost", "The part of upkeep that failures are expected to cost.",
                        r -> r.upkeep().failures().cost())
                .money("failure_deviation", "Deviation of failure cost",
                        "Standard deviation of the cost of failures; parts fail independently of each other.",
                        r -> r.upkeep().failures().costDeviation());
    }

    static TableDefinition<OfShop> shopByYear() {
        return new TableDefinition<>("shop_by_year", "Shop by year", OfShop::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear()).heads()
                .number("driver_labour", "Drivers", Unit.HOUR, "Labour that drivers may do.", r -> r.hours(Skill.DRIVER))
                .number("technician_labour", "Technicians", Unit.HOUR, "Labour of technicians.",
                        r -> r.hours(Skill.TECHNICIAN))
                .number("senior_labour", "Senior technicians", Unit.HOUR, "Labour of senior technicians.",
                        r -> r.hours(Skill.SENIOR))
                .number("high_voltage_labour", "High-voltage technicians", Unit.HOUR,
                        "Labour of technicians trained for high voltage.", r -> r.hours(Skill.HIGH_VOLTAGE))
                .count("high_voltage_people", "People trained for high voltage",
                        "People that the high-voltage labour needs: two at least, since nobody works on high voltage alone; "
                                + "none without such labour.",
                        OfShop::highVoltagePeople)
                .optional("load", "Load of the shop", Unit.SHARE,
                        "Labour of technicians over what the shop can give in the year; no figure where its capacity is not "
                                + "entered.",
                        r -> r.load().capacityHours() > 0 ? OptionalDouble.of(r.load().share()) : OptionalDouble.empty())
                .text("verdict", "The shop is", "Whether the shop gets idle or overloaded.", r -> r.load().verdict().word())
                .count("months_over", "Months over capacity", "Months that ask for more than a twelfth of the year's capacity.",
                        r -> r.load().monthsOver())
                .number("failures", "Failures", ColumnUnit.COUNT, "Failures to be expected in the fleet.",
                        r -> r.failures().failures())
                .money("failure_cost", "Failure cost", "What failures of the fleet are expected to cost, base-date prices.",
                        r -> r.failures().cost())
                .money("failure_deviation", "Deviation of failure cost",
                        "Standard deviation of that cost; parts and buses fail independently of each other.",
                        r -> r.failures().costDeviation());
    }

    static TableDefinition<OfMonth> shopByMonth() {
        return new TableDefinition<>("shop_by_month", "Shop by month", OfMonth::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear())
                .text("month", "Month", "Month.", r -> MonthNames.full(r.month())).heads()
                .number("driver_labour", "Drivers", Unit.HOUR, "Labour that drivers may do.", r -> r.hours(Skill.DRIVER))
                .number("technician_labour", "Technicians", Unit.HOUR, "Labour of technicians.",
                        r -> r.hours(Skill.TECHNICIAN))
                .number("senior_labour", "Senior technicians", Unit.HOUR, "Labour of senior technicians.",
                        r -> r.hours(Skill.SENIOR))
                .number("high_voltage_labour", "High-voltage technicians", Unit.HOUR,
                        "Labour of technicians trained for high voltage.", r -> r.hours(Skill.HIGH_VOLTAGE));
    }

    static TableDefinition<OfType> calibration() {
        return new TableDefinition<>("upkeep_calibration", "Upkeep beside work orders", OfType::all)
                .text("type", "Vehicle type", "Vehicle type, and all measured buses together.", OfType::name).heads()
                .count("buses", "Buses measured", "Buses of today whose upkeep was measured.", r -> r.calibration().buses())
                .number("distance", "Distance", Unit.KILOMETRE, "Their distance in the base year.", r -> r.calibration().km())
                .optional("modelled", "By the model", Unit.MONEY_PER_KM,
                        "What tasks or rate say that they cost in the long run, before calibration.",
                        r -> r.perKm(r.calibration().modelled()))
                .optional("measured", "By work orders", Unit.MONEY_PER_KM, "What their work orders say.",
                        r -> r.perKm(r.calibration().measured()))
                .optional("miss", "The model misses by", Unit.SHARE,
                        "Model over work orders, less one: above zero where the model is too dear before calibration.",
                        OfType::miss)
                .number("factor", "Calibration", Unit.SHARE, "Work orders over model.", r -> r.calibration().factor())
                .text("applied", "Applied", "Whether the factor is applied.", OfType::applied);
    }

    static TableDefinition<OfCause> upkeepByCause() {
        return new TableDefinition<>("upkeep_by_cause", "Upkeep by cause", OfCause::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .text("powertrain", "Buses", "Electric or engine buses.", r -> r.electric() ? "electric" : "engine")
                .text("cause", "Cause", "System of the bus; not split for types that cost by a rate.", r -> r.cause().word()).heads()
                .money("cost", "Cost", "Cost over the years of the study at base-date prices.", OfCause::cost)
                .optional("cost_per_distance", "Cost per distance", Unit.MONEY_PER_KM,
                        "Cost over the distance of these buses; no figure without driving.",
                        r -> r.km() > 0 ? OptionalDouble.of(r.cost() / r.km()) : OptionalDouble.empty());
    }
}
