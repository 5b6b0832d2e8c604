package org.amberyard.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.PackBill;
import org.amberyard.core.plan.SecondHand;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.report.ResultRows.OfEvent;
import org.amberyard.report.ResultRows.OfVehicle;
import org.amberyard.report.ResultRows.OfYear;

/** Tables of what becomes of the fleet. */
final class FleetTables {
    private FleetTables() {
    }

    static TableDefinition<OfVehicle> vehicleYears() {
        return new TableDefinition<>("vehicle_years", "Buses by year", OfVehicle::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year of driving.", r -> r.result().input().baseYear() + r.record().year())
                .text("place", "Place", "Place in the fleet by its bus number.",
                        r -> r.result().input().buses().get(r.record().place()).name())
                .text("unit", "Bus", "The bus that stands there; its name moves with it.", r -> r.record().vehicle().unit())
                .text("type", "Type", "Vehicle type.", r -> r.type().name()).heads()
                .number("age", "Age", Unit.YEAR, "Age at the start of the year.",
                        r -> r.record().vehicle().ageYears(r.record().year()))
                .number("distance", "Distance", Unit.KILOMETRE, "Distance driven in the year.", r -> use(r).km())
                .optional("battery_energy", "Battery energy", Unit.KILOWATT_HOUR,
                        "Net energy drawn from the battery; no figure for an engine bus.",
                        r -> r.ifElectric(use(r).batteryKwh()))
                .optional("meter_energy", "Meter energy", Unit.KILOWATT_HOUR,
                        "Energy at the meter; no figure for an engine bus.", r -> r.ifElectric(r.record().meterKwh()))
                .optional("energy_per_distance", "Energy per distance", Unit.KWH_PER_KM,
                        "Battery energy over distance; no figure for an engine bus or without driving.",
                        r -> ratio(r.ifElectric(use(r).batteryKwh()), use(r).km()))
                .optional("fuel", "Fuel", Unit.LITRE, "Fuel of the engine, yard idling included; no figure without one.",
                        r -> r.ifEngine(use(r).fuelL()))
                .optional("fuel_economy", "Fuel economy", ColumnUnit.FUEL_ECONOMY,
                        "Distance and fuel in one figure; no figure without an engine or driving.",
                        r -> ratio(r.ifEngine(use(r).fuelL()), use(r).km()))
                .optional("fuel_factor", "Fuel calibration", Unit.SHARE,
                        "Measured over modelled fuel, by which the model's fuel is multiplied; 100 % where nothing was measured.",
                        r -> r.ifEngine(r.record().vehicle().fuelFactor()))
                .number("heater_fuel", "Heater fuel", Unit.LITRE, "Fuel of a fuel-fired heater.",
                        r -> use(r).heaterFuelL())
                .optional("full_cycles", "Full cycles", Unit.CYCLE,
                        "Energy drawn in the year over nominal energy, so two half discharges are one; the pack is replaced when they "
                                + "add up to its cycle limit, by default 2,000. No figure for an engine bus.",
                        r -> r.ifElectric(r.record().fullCycles()))
                .optional("health", "Battery health", Unit.SHARE,
                        "Present over nominal capacity at the end of the year; no figure for an engine bus.",
                        r -> r.ifElectric(r.record().healthEnd()));
    }

    private static EnergyUse use(OfVehicle row) {
        return row.record().use();
    }

    private static OptionalDouble ratio(OptionalDouble amount, double km) {
        return amount.isPresent() && km > 0 ? OptionalDouble.of(amount.getAsDouble() / km) : OptionalDouble.empty();
    }

    static TableDefinition<OfEvent> fleetEvents() {
        return new TableDefinition<>("fleet_events", "What happens to the fleet", OfEvent::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year of the event.", r -> r.result().input().baseYear() + r.event().year())
                .text("event", "Event", "What happens: bought, bought used, sold, scrapped, moved, pack replaced, or retired because a new pack is "
                        + "not worth it.", r -> kind(r.event()))
                .text("place", "Place", "Place in the fleet by its bus number.", r -> placeName(r, r.event().place())).heads()
                .text("from_place", "From place", "Place that a moved bus comes from; empty for other events.",
                        r -> r.event() instanceof FleetEvent.Moved moved ? placeName(r, moved.from()) : null)
                .text("unit", "Bus", "The bus.", r -> r.event().vehicle().unit())
                .text("type", "Type", "Its vehicle type.",
                        r -> r.result().input().types().get(r.event().vehicle().type()).name())
                .text("cause", "Cause", "Why a bus is bought or a pack is due; empty for other events.",
                        r -> cause(r.event()))
                .optional("age", "Age when bought", Unit.YEAR, "Age of a bus that is bought used; no figure for other events.",
                        r -> used(r, SecondHand::ageYears))
                .optional("odometer", "Odometer when bought", Unit.KILOMETRE,
                        "Odometer of a bus that is bought used; no figure for other events.", r -> used(r, SecondHand::odometerKm))
                .optional("health", "Battery health when bought", Unit.SHARE,
                        "Capacity of the pack of an electric bus that is bought used over its nominal capacity; no figure for other "
                                + "events.",
                        FleetTables::usedHealth)
                .text("order_by", "Order by", "Day by which a new bus must be ordered to come at the start of its year; empty for "
                        + "other events.",
                        r -> r.event() instanceof FleetEvent.Bought bought
                                ? FleetYear.orderBy(r.result().input(), bought).toString() : null)
                .optionalMoney("pack_price", "Pack price",
                        "Price of the pack that is fitted in constant money; no figure for other events.",
                        r -> r.event() instanceof FleetEvent.PackReplaced replaced
                                ? OptionalDouble.of(PackBill.of(r.result().input(), replaced).price()) : OptionalDouble.empty());
    }

    /** A plan's fleet in a year. */
    private record OfFleet(OfYear at, FleetYear fleet) {
        static List<OfFleet> all(StudyResult result) {
            return result.plans().stream().flatMap(plan -> FleetYear.of(result.input(), plan.fleet()).stream()
                    .map(f -> new OfFleet(new OfYear(result, plan, f.year()), f))).toList();
        }
    }

    static TableDefinition<?> fleetByYear() {
        return new TableDefinition<OfFleet>("fleet_by_year", "The fleet by year", OfFleet::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Fiscal year.", r -> r.at().calendarYear()).heads()
                .count("electric", "Electric buses", "Electric buses in service.", r -> r.fleet().electric())
                .count("engine", "Engine buses", "Buses with an engine in service.", r -> r.fleet().engine())
                .count("route", "On routes", "Buses on routes.", r -> r.fleet().route())
                .count("spare", "Spares", "Spare buses.", r -> r.fleet().spare())
                .count("activity", "For trips", "Buses kept for trips.", r -> r.fleet().activity())
                .optional("spare_ratio", "Spare ratio", Unit.SHARE, "Spares over buses on routes; no figure without one.",
                        r -> r.fleet().spareRatio())
                .number("mean_age", "Mean age", Unit.YEAR, "Mean age at the start of the year.", r -> r.fleet().meanAgeYears())
                .number("oldest_age", "Oldest", Unit.YEAR, "Age of the oldest bus.", r -> r.fleet().oldestAgeYears())
                .count("bought", "Bought", "Buses bought at the start of the year.", r -> r.fleet().bought())
                .count("left", "Sold or scrapped", "Buses that leave the fleet then.", r -> r.fleet().left());
    }

    private static String placeName(OfEvent row, int place) {
        return row.result().input().buses().get(place).name();
    }

    private static String kind(FleetEvent event) {
        if (event instanceof FleetEvent.Bought bought) {
            return bought.vehicle().used().isPresent() ? "bought used" : "bought";
        }
        if (event instanceof FleetEvent.Sold sold) {
            return sold.scrapped() ? "scrapped" : "sold";
        }
        if (event instanceof FleetEvent.RetiredForPack) {
            return "retired for its pack";
        }
        return event instanceof FleetEvent.Moved ? "moved" : "pack replaced";
    }

    private static OptionalDouble used(OfEvent row, ToDoubleFunction<SecondHand> figure) {
        return row.event() instanceof FleetEvent.Bought bought && bought.vehicle().used().isPresent()
                ? OptionalDouble.of(figure.applyAsDouble(bought.vehicle().used().get().as())) : OptionalDouble.empty();
    }

    private static OptionalDouble usedHealth(OfEvent row) {
        boolean electric = row.result().input().types().get(row.event().vehicle().type()).electric().isPresent();
        return electric ? used(row, SecondHand::packHealth) : OptionalDouble.empty();
    }

    private static String cause(FleetEvent event) {
        if (event instanceof FleetEvent.Bought bought) {
            return bought.step().isPresent() ? "step of the plan" : "rule of its type";
        }
        if (event instanceof FleetEvent.RetiredForPack retired) {
            return retired.cause().label();
        }
        return event instanceof FleetEvent.PackReplaced replaced ? replaced.cause().label() : null;
    }
}
