package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.consumption.Calibration;
import org.amberyard.core.duty.RouteCalibration;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.Remedy;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.RouteOutlook;
import org.amberyard.core.plan.RouteWeather;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;

/** What the rows of the outlook tables are made from. */
final class OutlookRows {
    private OutlookRows() {
    }

    /** A route in a plan. */
    record OfOutlook(StudyResult result, PlanResult plan, RouteOutlook outlook) {
        String route() {
            return result.input().duty().routes().get(outlook.answer().route()).name();
        }

        Optional<RouteFit> fit() {
            return outlook.answer().fit();
        }

        /** Whether the electric bus can, and if not, why; of the bus that fails first where several serve the route. */
        String why(UnitSystem system) {
            return fit().map(f -> RouteReason.of(result, f, system).inPlan(plan, outlook))
                    .orElse("no electric type of its body type is listed, or it never runs");
        }

        OptionalDouble figure(ToDoubleFunction<RouteFit> figure) {
            return fit().map(f -> OptionalDouble.of(figure.applyAsDouble(f))).orElse(OptionalDouble.empty());
        }

        static List<OfOutlook> all(StudyResult result) {
            List<OfOutlook> rows = new ArrayList<>();
            for (int plan = 0; plan < result.plans().size(); plan++) {
                PlanResult of = result.plans().get(plan);
                result.outlooks().get(plan).forEach(o -> rows.add(new OfOutlook(result, of, o)));
            }
            return rows;
        }
    }

    /** A remedy of a route in a plan. */
    record OfRemedy(OfOutlook of, int rank, Remedy remedy) {
        static List<OfRemedy> all(StudyResult result) {
            List<OfRemedy> rows = new ArrayList<>();
            for (OfOutlook of : OfOutlook.all(result)) {
                List<Remedy> remedies = of.outlook().remedies();
                for (int rank = 0; rank < remedies.size(); rank++) {
                    rows.add(new OfRemedy(of, rank + 1, remedies.get(rank)));
                }
            }
            return rows;
        }
    }

    /** A fit in one weather. */
    record OfWeather(StudyResult result, RouteWeather weather) {
        static List<OfWeather> all(StudyResult result) {
            return result.fits().list().stream().flatMap(f -> RouteWeather.of(result, f).stream())
                    .map(w -> new OfWeather(result, w)).toList();
        }
    }

    /** A calibration of a route. */
    record OfCalibration(String route, String subject, Calibration calibration) {
        static List<OfCalibration> all(StudyResult result) {
            List<OfCalibration> rows = new ArrayList<>();
            for (int route = 0; route < result.input().duty().routes().size(); route++) {
                String name = result.input().duty().routes().get(route).name();
                RouteCalibration calibration = result.duty().calibration(route);
                calibration.electric().ifPresent(c -> rows.add(new OfCalibration(name, "electric energy", c)));
                calibration.engine().ifPresent(c -> rows.add(new OfCalibration(name, "fuel", c)));
            }
            return rows;
        }
    }
}
