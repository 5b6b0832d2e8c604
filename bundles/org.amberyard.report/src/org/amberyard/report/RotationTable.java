package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.RotationPreview;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;

/** Table of the swaps of routes that let packs last longer. */
final class RotationTable {
    private RotationTable() {
    }

    /** A swap in a plan. */
    record OfSwap(StudyResult result, PlanResult plan, RotationPreview swap) {

        static List<OfSwap> all(StudyResult result) {
            List<OfSwap> rows = new ArrayList<>();
            for (int plan = 0; plan < result.plans().size(); plan++) {
                PlanResult evaluated = result.plans().get(plan);
                RotationPreview.of(result, plan).forEach(s -> rows.add(new OfSwap(result, evaluated, s)));
            }
            return rows;
        }

        String bus(RotationPreview.Side side) {
            return result.input().buses().get(side.place()).name();
        }

        String route(RotationPreview.Side side) {
            BusInput bus = result.input().buses().get(side.place());
            return result.input().duty().routes().get(bus.route().orElseThrow()).name();
        }
    }

    static TableDefinition<OfSwap> rotation() {
        return new TableDefinition<>("rotation", "Swaps of routes that let packs last longer", OfSwap::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year at whose start the buses swap: that in which the plan's last electric bus comes.",
                        r -> r.result().input().baseYear() + r.swap().year())
                .text("place", "Place", "One place in the fleet by its bus number.", r -> r.bus(r.swap().first())).heads()
                .text("route", "Route", "Its route.", r -> r.route(r.swap().first()))
                .text("other_place", "Other place", "The other place.", r -> r.bus(r.swap().second()))
                .text("other_route", "Other route", "Its route.", r -> r.route(r.swap().second()))
                .number("life_left", "Pack life left", Unit.YEAR, "Life left of the pack in the first place on its own route, "
                        + "to the first of cycle limit, capacity, route and age, at most 40 years.", r -> r.swap().first().ownYears())
                .number("life_left_swapped", "Pack life left, swapped", Unit.YEAR, "The same on the other's route.",
                        r -> r.swap().first().swappedYears())
                .number("other_life_left", "Other pack life left", Unit.YEAR,
                        "Life left of the pack in the other place on its own route.", r -> r.swap().second().ownYears())
                .number("other_life_left_swapped", "Other pack life left, swapped", Unit.YEAR, "The same on the first's route.",
                        r -> r.swap().second().swappedYears())
                .number("gain", "Gain", Unit.YEAR, "Years by which the pack that ends first lasts longer.",
                        r -> r.swap().gainYears());
    }
}
