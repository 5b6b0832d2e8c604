package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.plan.FitOutlook;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.plan.VehicleYear;

/** What the rows of the result tables are made from. */
final class ResultRows {
    private ResultRows() {
    }

    /** A plan. */
    record OfPlan(StudyResult result, int index) {
        PlanResult plan() {
            return result.plans().get(index);
        }

        Optional<Comparison> comparison() {
            return result.comparisons().stream().filter(c -> c.plan() == index).findFirst();
        }

        static List<OfPlan> all(StudyResult result) {
            List<OfPlan> rows = new ArrayList<>();
            for (int plan = 0; plan < result.plans().size(); plan++) {
                rows.add(new OfPlan(result, plan));
            }
            return rows;
        }
    }

    /** A year of a plan. */
    record OfYear(StudyResult result, PlanResult plan, int year) {
        int calendarYear() {
            return result.input().baseYear() + year;
        }

        static List<OfYear> all(StudyResult result) {
            List<OfYear> rows = new ArrayList<>();
            for (PlanResult plan : result.plans()) {
                for (int year = 0; year < result.input().years(); year++) {
                    rows.add(new OfYear(result, plan, year));
                }
            }
            return rows;
        }
    }

    /** A cost category in a year of a plan. */
    record OfCategory(OfYear at, CostCategory category) {
        static List<OfCategory> all(StudyResult result) {
            List<OfCategory> rows = new ArrayList<>();
            for (OfYear at : OfYear.all(result)) {
                for (CostCategory category : CostCategory.values()) {
                    rows.add(new OfCategory(at, category));
                }
            }
            return rows;
        }
    }

    /** A cost group of a place in the fleet, or of the yard, in a year of a plan. */
    record OfPlaceGroup(OfYear at, int row, CostCategory.Group group) {
        static List<OfPlaceGroup> all(StudyResult result) {
            List<OfPlaceGroup> rows = new ArrayList<>();
            for (OfYear at : OfYear.all(result)) {
                for (int row = 0; row < at.plan().ledger().rows().size(); row++) {
                    for (CostCategory.Group group : CostCategory.Group.values()) {
                        rows.add(new OfPlaceGroup(at, row, group));
                    }
                }
            }
            return rows;
        }
    }

    /** A bus in a year of a plan. */
    record OfVehicle(StudyResult result, PlanResult plan, VehicleYear record) {
        VehicleTypeInput type() {
            return result.input().types().get(record.vehicle().type());
        }

        OptionalDouble ifElectric(double value) {
            return type().electric().isPresent() ? OptionalDouble.of(value) : OptionalDouble.empty();
        }

        OptionalDouble ifEngine(double value) {
            return type().engine().isPresent() ? OptionalDouble.of(value) : OptionalDouble.empty();
        }

        static List<OfVehicle> all(StudyResult result) {
            List<OfVehicle> rows = new ArrayList<>();
            result.plans().forEach(p -> p.fleet().years().forEach(v -> rows.add(new OfVehicle(result, p, v))));
            return rows;
        }
    }

    /** A fleet event of a plan. */
    record OfEvent(StudyResult result, PlanResult plan, FleetEvent event) {
        static List<OfEvent> all(StudyResult result) {
            List<OfEvent> rows = new ArrayList<>();
            result.plans().forEach(p -> p.fleet().events().forEach(e -> rows.add(new OfEvent(result, p, e))));
            return rows;
        }
    }

    /** A fit of an electric type on a route. */
    record OfFit(StudyResult result, RouteFit fit) {
        FitOutlook outlook() {
            return result.outlook(fit);
        }

        static List<OfFit> all(StudyResult result) {
            return result.fits().list().stream().map(f -> new OfFit(result, f)).toList();
        }
    }

    /** A year of service of a vehicle type on a route. */
    record OfUse(StudyResult result, int route, int type, RouteUse use) {
        boolean electric() {
            return result.input().types().get(type).electric().isPresent();
        }

        static List<OfUse> all(StudyResult result) {
            List<OfUse> rows = new ArrayList<>();
            for (int route = 0; route < result.input().duty().routes().size(); route++) {
                for (int type = 0; type < result.input().types().size(); type++) {
                    Optional<RouteUse> use = result.duty().use(route, type);
                    if (use.isPresent()) {
                        rows.add(new OfUse(result, route, type, use.get()));
                    }
                }
            }
            return rows;
        }
    }
}
