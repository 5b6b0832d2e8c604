package org.amberyard.report;

import java.util.stream.Collectors;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.report.YardRows.OfHour;
import org.amberyard.report.YardRows.OfMonth;
import org.amberyard.report.YardRows.OfPlug;

/** Tables of how the yard is charged: by month, through the day, and bus by bus. */
final class YardLoadTables {
    private YardLoadTables() {
    }

    static TableDefinition<OfMonth> yardByMonth() {
        return new TableDefinition<>("yard_by_month", "Charging by month", OfMonth::all)
                .text("plan", "Plan", "Name of the plan; years in which it has neither electric buses nor ports are left out.",
                        r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear())
                .text("month", "Month", "Month. Nights before a holiday or a school break count as nights before a "
                        + "service day, charged in less time than there is.", r -> MonthNames.full(r.month().month()))
                .heads()
                .number("energy", "Energy", Unit.KILOWATT_HOUR, "Energy of charging, heat and standby at the meter.",
                        r -> r.month().yardKwh())
                .number("charging_peak", "Demand of charging", Unit.KILOWATT,
                        "Highest demand of charging, heat and standby in a step.", r -> r.month().yardPeakKw())
                .number("service_peak", "Demand of the service", Unit.KILOWATT,
                        "Highest demand behind the service in a step, the building included.", r -> r.month().servicePeakKw())
                .number("swaps", "Plug swaps", ColumnUnit.COUNT, "How often a person moves a plug; the mean where weeks are split.",
                        r -> r.month().swaps())
                .text("shortfalls", "Not ready", "Buses that leave without the charge that they need, by kind of day; or none.",
                        r -> r.month().shortfalls().isEmpty() ? "none" : r.month().shortfalls().stream()
                                .map(s -> s.stretch() + ": " + s.shortfall().words()).collect(Collectors.joining(". ")))
                .number("moved", "Moved for the packs", Unit.KILOWATT_HOUR,
                        "Energy that the least-cost schedule had planned for moments at which full packs could not take it.",
                        r -> r.movedKwh())
                .optionalMoney("cost_gap", "Gap to the least cost",
                        "With least cost, how far the bill can at most lie above the lowest that has the same buses ready at the "
                                + "same plugs, at base-date prices, demand in the proportion to energy of the year; under a "
                                + "ratchet for the months of the year together. Empty where blocks, ratchets or other plugs "
                                + "leave it open, and for other policies.",
                        r -> r.month().costGap());
    }

    static TableDefinition<OfHour> loadShape(LastYears years) {
        return new TableDefinition<>("load_shape", "Load through the day, for the utility", r -> OfHour.all(years.of(r)))
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().at().calendarYear())
                .text("month", "Month", "Month with the highest demand of charging.",
                        r -> MonthNames.full(r.stretch().service().month()))
                .text("day", "Day", "Coldest service day, a normal one, and the days of the highest demand of charging "
                        + "and of the service where these are others.", r -> r.day())
                .text("hour", "Hour from", "Start of the hour.", r -> ClockWords.of(60 * r.hour())).heads()
                .number("charging_mean", "Charging, mean", Unit.KILOWATT, "Mean load of charging, heat and standby in the hour.",
                        r -> r.mean(r.stretch().yardKw()))
                .number("charging_highest", "Charging, highest", Unit.KILOWATT, "Highest of it in a step of the hour.",
                        r -> r.highest(r.stretch().yardKw()))
                .number("service_mean", "Service, mean", Unit.KILOWATT, "Mean load with the building.",
                        r -> r.mean(r.stretch().serviceKw()))
                .number("service_highest", "Service, highest", Unit.KILOWATT, "Highest of it in a step of the hour.",
                        r -> r.highest(r.stretch().serviceKw()));
    }

    static TableDefinition<OfPlug> chargePlan(LastYears years) {
        return new TableDefinition<>("charge_plan", "Who stands where and charges when", r -> OfPlug.all(years.of(r)))
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Last year of the plan.", r -> r.at().at().calendarYear())
                .text("month", "Month", "Month with the highest demand of charging.",
                        r -> MonthNames.full(r.stretch().service().month()))
                .text("day", "Day", "Coldest service day of the month, and the days of its highest demand where these "
                        + "are others; each is followed by one like it.", r -> r.stretch().label())
                .text("port", "Port", "Port by its number in the yard, in the order bought, and its type; none for a bus that "
                        + "finds no plug.", OfPlug::port)
                .heads()
                .text("plug", "Plug", "Plug of the port.", OfPlug::plug)
                .text("bus", "Bus", "The bus.", r -> r.plugIn().label())
                .text("from", "Plugged in", "When it is plugged in; an arrival plugs itself in.", OfPlug::from)
                .text("until", "Unplugged", "When it leaves the plug.", OfPlug::until)
                .text("moved", "Plug moved", "Whether a person has to plug it in after it has arrived: yes or no.", OfPlug::moved)
                .text("charges", "Charges", "When it charges, to the step.", OfPlug::charges)
                .number("energy", "Energy", Unit.KILOWATT_HOUR, "Energy of charging at the meter, heat left out.", OfPlug::meterKwh)
                .optional("ready", "Charge at departure", Unit.SHARE, "State of charge when it leaves; no figure without plug.",
                        OfPlug::endShare)
                .text("departure", "Departure", "When the bus leaves the yard.", r -> ClockWords.of(r.plugIn().toMin()))
                .number("missing", "Missing", Unit.KILOWATT_HOUR, "Energy missing in the battery then.", OfPlug::missingKwh);
    }
}
