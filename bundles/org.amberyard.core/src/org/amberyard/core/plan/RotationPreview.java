package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How the lives of two packs change when their buses swap routes for good. Life left is counted from the packs' wear at the
 * start of a year to the first of the four limits of a pack, with every service day on the route.
 *
 * @param year year at whose start they swap, counted from the base year
 * @param first one bus
 * @param second the other
 */
public record RotationPreview(int year, Side first, Side second) {
    private static final double NEGLIGIBLE_YEARS = 0.1;
    private static final int MOST = 5;

    /**
     * One of the two.
     *
     * @param place place in the fleet
     * @param ownYears life left of its pack on its own route
     * @param swappedYears life left of its pack on the other's route
     */
    public record Side(int place, double ownYears, double swappedYears) {
    }

    /** Years by which the pack that ends first lasts longer. */
    public double gainYears() {
        return Math.min(first.swappedYears(), second.swappedYears()) - Math.min(first.ownYears(), second.ownYears());
    }

    /**
     * The swaps of a plan that let the pack that ends first last longer, best first, at most five; in the year in which the
     * plan's last electric bus is bought.
     */
    public static List<RotationPreview> of(StudyResult result, int plan) {
        StudyInput study = result.input();
        FleetHistory fleet = result.plans().get(plan).fleet();
        int year = fleet.events().stream().filter(FleetEvent.Bought.class::isInstance)
                .filter(e -> study.types().get(e.vehicle().type()).electric().isPresent()).mapToInt(FleetEvent::year).max()
                .orElse(0);
        PackLifeLeft life = new PackLifeLeft(result, plan, year);
        List<VehicleYear> buses = fleet.inYear(year).stream().filter(bus -> life.years(bus, bus.place()).isPresent()).toList();
        List<RotationPreview> swaps = new ArrayList<>();
        for (int one = 0; one < buses.size(); one++) {
            for (VehicleYear other : buses.subList(one + 1, buses.size())) {
                addUseful(life, year, buses.get(one), other, swaps);
            }
        }
        return swaps.stream().sorted(Comparator.comparingDouble(RotationPreview::gainYears).reversed()).limit(MOST).toList();
    }

    private static void addUseful(PackLifeLeft life, int year, VehicleYear one, VehicleYear other, List<RotationPreview> swaps) {
        life.years(one, other.place()).ifPresent(oneThere -> life.years(other, one.place()).ifPresent(otherHere -> {
            RotationPreview swap = new RotationPreview(year,
                    new Side(one.place(), life.years(one, one.place()).getAsDouble(), oneThere),
                    new Side(other.place(), life.years(other, other.place()).getAsDouble(), otherHere));
            if (swap.gainYears() > NEGLIGIBLE_YEARS) {
                swaps.add(swap);
            }
        }));
    }
}
