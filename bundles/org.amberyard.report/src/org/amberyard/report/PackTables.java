package org.amberyard.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PackBill;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.core.units.Unit;
import org.amberyard.report.ResultRows.OfEvent;

/** Table of packs that come to their end, why, and who pays. */
final class PackTables {
    private PackTables() {
    }

    static TableDefinition<OfEvent> packHistory() {
        return new TableDefinition<>("pack_history", "Packs at their end", result -> packs(OfEvent.all(result)))
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year at whose end the pack is due.", r -> r.result().input().baseYear() + r.event().year())
                .text("place", "Place", "Place in the fleet by its bus number.",
                        r -> r.result().input().buses().get(r.event().place()).name())
                .text("unit", "Bus", "The bus.", r -> bus(r).unit()).heads()
                .text("cause", "Cause", "Which limit came first: full cycles, capacity, the route or the pack's age.",
                        r -> cause(r.event()).label())
                .text("done", "What is done", "New or refurbished pack, or the bus retires because a pack is not worth it.",
                        r -> done(r.event()))
                .number("age", "Pack age", Unit.YEAR, "Age of the old pack.", r -> bus(r).packYears())
                .number("distance", "Pack distance", Unit.KILOMETRE, "Distance driven with the old pack.",
                        r -> bus(r).pack().km())
                .number("health", "Battery health", Unit.SHARE, "Present over nominal capacity of the old pack.",
                        r -> bus(r).health())
                .number("full_cycles", "Full cycles", Unit.CYCLE,
                        "Energy drawn from the old pack over its nominal energy; two half discharges are one.",
                        r -> bus(r).packCycles())
                .number("cycle_limit", "Cycle limit", Unit.CYCLE, "Full cycles at which a pack of the type is replaced.",
                        r -> r.result().input().types().get(bus(r).type()).electric().orElseThrow().battery().life().cycleLimit())
                .optionalMoney("price", "Pack price", "Price of the pack that is fitted, constant money; no figure without one.",
                        r -> ofBill(r, PackBill::price))
                .optionalMoney("maker_pays", "Maker pays", "Part of the price that the maker pays under the warranty.",
                        r -> ofBill(r, PackBill::makerPays))
                .optionalMoney("labour", "Labour", "Work to change the pack, constant money.",
                        r -> ofBill(r, PackBill::labour))
                .optionalMoney("resale", "Old pack resale", "What the old pack brings, constant money.",
                        r -> ofBill(r, PackBill::resale))
                .optionalMoney("paid", "Fleet pays", "Price and labour less the maker's part and the resale, constant money.",
                        r -> ofBill(r, PackBill::paid))
                .optionalMoney("kept_per_year", "Bus with another pack, per year", "Where the bus retires: what it would cost per "
                        + "year over the years that it has left in the study, constant money, without grants and charging demand.",
                        r -> ofRetirement(r.event(), FleetEvent.RetiredForPack::keptPerYear))
                .optionalMoney("next_per_year", "Next bus, per year", "Where the bus retires: what the next bus costs per year over "
                        + "the same years, counted alike.", r -> ofRetirement(r.event(), FleetEvent.RetiredForPack::nextPerYear));
    }

    private static List<OfEvent> packs(List<OfEvent> events) {
        return events.stream().filter(
                r -> r.event() instanceof FleetEvent.PackReplaced || r.event() instanceof FleetEvent.RetiredForPack).toList();
    }

    private static Vehicle bus(OfEvent row) {
        return row.event().vehicle();
    }

    private static PackReplacement.Cause cause(FleetEvent event) {
        return event instanceof FleetEvent.PackReplaced replaced ? replaced.cause()
                : ((FleetEvent.RetiredForPack) event).cause();
    }

    private static String done(FleetEvent event) {
        if (event instanceof FleetEvent.PackReplaced replaced) {
            return replaced.refurbished() ? "refurbished pack" : "new pack";
        }
        return "bus retires";
    }

    private static OptionalDouble ofRetirement(FleetEvent event, ToDoubleFunction<FleetEvent.RetiredForPack> part) {
        return event instanceof FleetEvent.RetiredForPack retired
                ? OptionalDouble.of(part.applyAsDouble(retired)) : OptionalDouble.empty();
    }

    private static OptionalDouble ofBill(OfEvent row, ToDoubleFunction<PackBill> part) {
        return row.event() instanceof FleetEvent.PackReplaced replaced
                ? OptionalDouble.of(part.applyAsDouble(PackBill.of(row.result().input(), replaced))) : OptionalDouble.empty();
    }
}
