package org.amberyard.charts;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** Where the energy of a year on a route goes, per distance in the unit shown. */
final class EnergyByCause {
    private static final String UNSPLIT = "Driving, not split";
    private static final double ROUNDING_SHARE = 1e-12;
    private static final double LEAST_KWH_PER_YEAR = 0.5;

    private final StudyInput study;
    private final int route;
    private final int type;
    private final UnitSystem system;
    private final EnergyUse year;

    EnergyByCause(StudyResult result, int route, int type, EnergyUse year, UnitSystem system) {
        this.study = result.input();
        this.route = route;
        this.type = type;
        this.year = year;
        this.system = system;
    }

    /**
     * One cause.
     *
     * @param label words for the axis
     * @param perDistance energy per distance in the unit shown
     */
    record Cause(String label, double perDistance) {
    }

    /** All causes, in the order of the bars. */
    List<Cause> causes() {
        EnergyCauses c = year.causes();
        return List.of(cause("Rolling resistance", c.rollingKwh()), cause("Air drag", c.dragKwh()),
                cause("Climbs", c.climbingKwh()), cause("Stops: friction brakes", c.frictionBrakeKwh()),
                cause("Motor and gears", c.drivelineKwh()), cause("Battery resistance", c.packKwh()),
                cause(UNSPLIT, c.unsplitKwh()), cause("Auxiliaries", c.auxiliaryKwh()),
                cause("Cabin heat", c.heatKwh()), cause("Cabin cooling", c.coolingKwh()),
                cause("Battery heat and cooling", c.packHeatKwh()));
    }

    /** Causes that are there; a model that does not split driving leaves out what it does not know. */
    List<Cause> shown() {
        return causes().stream().filter(c -> !isNothing(c)).toList();
    }

    /** What climbing takes is given back downhill up to rounding. */
    private boolean isNothing(Cause cause) {
        return Math.abs(cause.perDistance()) <= ROUNDING_SHARE * total();
    }

    double total() {
        return causes().stream().mapToDouble(Cause::perDistance).sum();
    }

    private Cause cause(String label, double kwh) {
        return new Cause(label, year.km() > 0 ? Unit.KWH_PER_KM.show(kwh / year.km(), system) : 0);
    }

    String unit() {
        return Unit.KWH_PER_KM.symbol(system, study.currency());
    }

    static String figure(double perDistance) {
        return Figures.pattern("0.00;−0.00").format(perDistance);
    }

    /** Route, type and what comes on top. */
    String caption() {
        return "Route " + study.duty().routes().get(route).name() + " with " + study.types().get(type).name()
                + ", an average year from the battery"
                + (split() ? "" : "; driving by a consumption curve, which does not say where it goes") + beside();
    }

    private boolean split() {
        return year.causes().unsplitKwh() == 0;
    }

    /** Energy that does not come out of the battery. */
    private String beside() {
        String yard = year.gridKwh() < LEAST_KWH_PER_YEAR ? "" : "; " + Figures.whole(year.gridKwh())
                + " kWh a year for heat at the plug come from the yard besides";
        double fuel = Unit.LITRE.show(year.heaterFuelL(), system);
        return yard + (fuel == 0 ? "" : "; the heater burns " + Figures.size(fuel) + " "
                + Unit.LITRE.symbol(system, study.currency()) + " of fuel a year besides");
    }

    String sentences() {
        return caption() + ": " + figure(total()) + " " + unit() + " in all. "
                + shown().stream().map(c -> c.label() + " " + figure(c.perDistance())).collect(Collectors.joining("; ")) + "."
                + (split() ? nothing() : "");
    }

    private String nothing() {
        String labels = causes().stream().filter(c -> isNothing(c) && !c.label().equals(UNSPLIT)).map(Cause::label)
                .collect(Collectors.joining("; "));
        return labels.isEmpty() ? "" : " Nothing goes into: " + labels + ".";
    }

    ChartData data() {
        Stream<Cause> all = Stream.concat(causes().stream(), Stream.of(new Cause("Total", total())));
        return new ChartData(columns(unit()), all.map(c -> List.<Object>of(c.label(), c.perDistance())).toList());
    }

    static List<String> columns(String unit) {
        return List.of("Cause", "Energy per distance (" + unit + ")");
    }
}
