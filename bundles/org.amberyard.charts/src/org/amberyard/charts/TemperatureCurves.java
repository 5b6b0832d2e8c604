package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.MeasuredUse;
import org.amberyard.core.plan.ConsumptionByTemperature;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** What the electric types that fit a route use there by outside temperature, and what was measured; in the units shown. */
final class TemperatureCurves {
    /** Temperatures that the words tell, °C: hard frost, frost, mild, hot. */
    private static final List<Double> TOLD_C = List.of(-20.0, 0.0, 20.0, 36.0);

    private final StudyInput study;
    private final int route;
    private final UnitSystem system;
    private final List<Curve> curves;

    TemperatureCurves(StudyResult result, int route, UnitSystem system) {
        this.study = result.input();
        this.route = route;
        this.system = system;
        this.curves = IntStream.range(0, study.types().size()).filter(type -> fits(result, type))
                .mapToObj(type -> curve(result, type)).filter(c -> !c.points().isEmpty()).toList();
    }

    /**
     * The curve of a type.
     *
     * @param type place of the type
     * @param name name of the type
     * @param points curve by rising temperature
     * @param measured measured points by rising temperature
     */
    record Curve(int type, String name, List<Point> points, List<Point> measured) {

        Point least() {
            return points.stream().min(Comparator.comparing(Point::perDistance)).orElseThrow();
        }
    }

    /**
     * Consumption at a temperature.
     *
     * @param airC outside air, °C
     * @param air outside air in the unit shown
     * @param perDistance energy from the battery per distance in the unit shown
     */
    record Point(double airC, double air, double perDistance) {
    }

    List<Curve> curves() {
        return curves;
    }

    String route() {
        return study.duty().routes().get(route).name();
    }

    String airUnit() {
        return Unit.CELSIUS.symbol(system, study.currency());
    }

    String unit() {
        return Unit.KWH_PER_KM.symbol(system, study.currency());
    }

    private boolean fits(StudyResult result, int type) {
        return study.types().get(type).electric().isPresent() && result.duty().use(route, type).isPresent();
    }

    private Curve curve(StudyResult result, int type) {
        List<Point> points = ConsumptionByTemperature.of(result, route, type).points().stream()
                .map(p -> point(p.airC(), p.kwhPerKm())).toList();
        List<Point> measured = study.duty().measured().stream().filter(m -> m.route() == route && m.vehicle() == type)
                .filter(m -> m.outsideC().isPresent()).map(this::point).sorted(Comparator.comparing(Point::airC)).toList();
        return new Curve(type, study.types().get(type).name(), points, measured);
    }

    private Point point(MeasuredUse use) {
        return point(use.outsideC().orElseThrow(), use.amount() / use.km());
    }

    private Point point(double airC, double kwhPerKm) {
        return new Point(airC, Unit.CELSIUS.show(airC, system), Unit.KWH_PER_KM.show(kwhPerKm, system));
    }

    /** A temperature in the unit shown. */
    String air(Point point) {
        return Figures.whole(point.air()) + " " + airUnit();
    }

    /** A consumption in the unit shown. */
    String use(Point point) {
        return Figures.pattern("0.00").format(point.perDistance()) + " " + unit();
    }

    String sentences() {
        if (curves.isEmpty()) {
            return none();
        }
        StringBuilder text = new StringBuilder("What route " + route() + " takes from the battery by outside temperature.");
        curves.forEach(c -> text.append(' ').append(sentence(c)));
        return text.toString();
    }

    /** Why there is no curve. */
    String none() {
        return "No electric type on offer fits " + route() + ", or it is not driven on school days.";
    }

    private String sentence(Curve curve) {
        StringBuilder text = new StringBuilder(curve.name() + ": least at " + air(curve.least()) + ", " + use(curve.least()));
        curve.points().stream().filter(p -> TOLD_C.contains(p.airC()) && p != curve.least())
                .forEach(p -> text.append("; ").append(use(p)).append(" at ").append(air(p)));
        if (!curve.measured().isEmpty()) {
            text.append("; ").append(curve.measured().size()).append(" measured");
        }
        return text.append('.').toString();
    }

    ChartData data() {
        List<List<Object>> rows = new ArrayList<>();
        for (Curve curve : curves) {
            curve.points().forEach(p -> rows.add(List.of(curve.name(), "computed", p.air(), p.perDistance())));
            curve.measured().forEach(p -> rows.add(List.of(curve.name(), "measured", p.air(), p.perDistance())));
        }
        return new ChartData(List.of("Electric type", "Source", "Outside temperature (" + airUnit() + ")",
                "Energy per distance (" + unit() + ")"), rows);
    }
}
