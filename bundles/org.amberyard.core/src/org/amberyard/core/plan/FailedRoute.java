package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.RouteUse;

/** A route that an electric type fails with an aged pack, what that costs a year, and what the same costs otherwise. */
final class FailedRoute {
    private static final double NEGLIGIBLE_KM = 0.5;

    private final StudyResult result;
    private final PlanResult plan;
    private final StudyInput study;
    private final RouteFit fit;
    private final BlockCheck.Outcome before;
    private final YearlyCost cost;
    private final double costBefore;

    FailedRoute(StudyResult result, int plan, RouteFit fit) {
        this.result = result;
        this.plan = result.plans().get(plan);
        this.study = result.input();
        this.fit = fit;
        this.before = fit.whenAged(study.middayCharging());
        this.cost = new YearlyCost(study, result.duty(), result.figures(), result.yardPrices(plan));
        this.costBefore = yearly(fit);
    }

    StudyResult result() {
        return result;
    }

    PlanResult plan() {
        return plan;
    }

    RouteFit fit() {
        return fit;
    }

    VehicleTypeInput type() {
        return study.types().get(fit.type());
    }

    ElectricSpec electric() {
        return type().electric().orElseThrow();
    }

    BlockCheck.Outcome before() {
        return before;
    }

    YearlyCost cost() {
        return cost;
    }

    RouteUse use(int route, int vehicle) {
        return result.duty().use(route, vehicle).orElseThrow();
    }

    BlockCheck check(RouteFit of, boolean midday) {
        return RouteFitting.check(study, of.batteryKw(), midday);
    }

    /** Yearly cost of a type on a route as the yard is. */
    double yearly(RouteFit of) {
        VehicleTypeInput served = study.types().get(of.type());
        return cost.of(served, served.spec(), use(of.route(), of.type()), check(of, study.middayCharging()));
    }

    /** Yearly cost of an engine type on a route. */
    double yearlyOfEngine(int engine, int route) {
        VehicleTypeInput served = study.types().get(engine);
        return cost.of(served, served.spec(), use(route, engine), check(fit, false));
    }

    /** The remedy when it recovers any distance; its cost is told over the route as it is. */
    Optional<Remedy> remedy(List<Remedy.Measure> measures, int served, OptionalInt swapRoute, BlockCheck.Outcome after,
            double costPerYear) {
        return recoveredKm(after) > NEGLIGIBLE_KM ? Optional.of(new Remedy(measures, served, swapRoute, after, after.passes(),
                recoveredKm(after), costPerYear - costBefore)) : Optional.empty();
    }

    /** An engine always does it. */
    Remedy engine(int other) {
        return new Remedy(List.of(Remedy.Measure.KEEP_ENGINE), other, OptionalInt.empty(), before, true, -before.marginKm(),
                yearlyOfEngine(other, fit.route()) - costBefore);
    }

    /** True when an outcome recovers not noticeably more than a remedy. */
    boolean doesAsMuch(Remedy remedy, BlockCheck.Outcome after) {
        return remedy.recoveredKm() > recoveredKm(after) - NEGLIGIBLE_KM;
    }

    private double recoveredKm(BlockCheck.Outcome after) {
        return after.marginKm() - before.marginKm();
    }
}
