package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.duty.YardHabit;

/**
 * Finds what would make an electric bus do a route that it fails with an aged pack: every remedy on offer is evaluated by
 * driving the route again under it, alone and, for those that can be joined, together.
 *
 * <p>Remedies that cure come before those that only help; within each, what saves money comes first, then the least yearly
 * cost per distance recovered on the worst day. Keeping an engine bus always works and always comes last. Measures together are
 * left out where fewer of them cure or do as much.
 */
public final class Remedies {
    private static final double NEGLIGIBLE_KM = 0.5;
    private static final Comparator<Remedy> BEST_FIRST = Comparator
            .comparing((Remedy r) -> r.measures().contains(Remedy.Measure.KEEP_ENGINE)).thenComparing(r -> !r.cures())
            .thenComparing(r -> r.costPerYear() > 0)
            .thenComparing(r -> r.costPerYear() > 0 ? r.costPerKm().orElse(Double.MAX_VALUE) : r.costPerYear());

    private final StudyResult result;
    private final PlanResult plan;
    private final StudyInput study;
    private final RouteFit fit;
    private final VehicleTypeInput type;
    private final ElectricSpec electric;
    private final BlockCheck.Outcome before;
    private final double costBefore;
    private final YearlyCost cost;
    private final List<Remedy> found = new ArrayList<>();

    private Remedies(StudyResult result, int plan, RouteFit fit) {
        this.result = result;
        this.plan = result.plans().get(plan);
        this.study = result.input();
        this.fit = fit;
        this.type = study.types().get(fit.type());
        this.electric = type.electric().orElseThrow();
        this.before = fit.whenAged(study.middayCharging());
        this.cost = new YearlyCost(study, result.duty());
        this.costBefore = cost.of(type, electric, use(fit.route(), fit.type()), check(fit, study.middayCharging()));
    }

    /** Remedies for a fit that fails with an aged pack, best first; none for one that passes. */
    public static List<Remedy> of(StudyResult result, int plan, RouteFit fit) {
        if (fit.whenAged(result.input().middayCharging()).passes()) {
            return List.of();
        }
        Remedies remedies = new Remedies(result, plan, fit);
        remedies.addMeasures();
        remedies.addLargerPacks();
        if (remedies.serves()) {
            remedies.addSwap();
        }
        remedies.addEngine();
        return remedies.found.stream().sorted(BEST_FIRST).toList();
    }

    /** True when a bus of the type serves the route at the end of the study; only then is there a bus to change places. */
    private boolean serves() {
        return plan.fleet().inYear(study.years() - 1).stream().anyMatch(v -> v.vehicle().type() == fit.type()
                && study.buses().get(v.place()).route().equals(OptionalInt.of(fit.route())));
    }

    private RouteUse use(int route, int vehicle) {
        return result.duty().use(route, vehicle).orElseThrow();
    }

    private BlockCheck check(RouteFit of, boolean midday) {
        return RouteFitting.check(study, of.batteryKw(), midday);
    }

    /** All ways to join what the yard and the heater can do; fewer measures come before more. */
    private void addMeasures() {
        List<Remedy.Measure> offered = new ArrayList<>();
        YardHabit habit = study.duty().habit();
        if (!habit.precondition()) {
            offered.add(Remedy.Measure.PRECONDITION);
        }
        if (!habit.midday()) {
            offered.add(Remedy.Measure.MIDDAY_CHARGE);
        }
        if (electric.heater().source() != Heater.Source.FUEL_FIRED && type.prices().fuelFiredHeater().isPresent()
                && cost.prices(FuelKind.DIESEL)) {
            offered.add(Remedy.Measure.FUEL_FIRED_HEAT);
        }
        for (int mask = 1; mask < 1 << offered.size(); mask++) {
            Set<Remedy.Measure> joined = EnumSet.noneOf(Remedy.Measure.class);
            for (int place = 0; place < offered.size(); place++) {
                if ((mask >> place & 1) == 1) {
                    joined.add(offered.get(place));
                }
            }
            addMeasures(joined);
        }
    }

    private void addMeasures(Set<Remedy.Measure> joined) {
        boolean fired = joined.contains(Remedy.Measure.FUEL_FIRED_HEAT);
        ElectricSpec spec = fired ? electric.withHeater(electric.heater().fuelFired()) : electric;
        YardHabit habit = new YardHabit(study.middayCharging() || joined.contains(Remedy.Measure.MIDDAY_CHARGE),
                study.duty().habit().precondition() || joined.contains(Remedy.Measure.PRECONDITION),
                study.duty().habit().portKw());
        RouteUse driven = result.duty().variant(fit.route(), fit.type(), habit, fired);
        BlockCheck check = check(fit, habit.midday());
        BlockCheck.Outcome after = RouteFitting.worst(RouteFitting.days(driven, check, electric.battery(), fit.agedHealth()))
                .outcome();
        if (fewerDoAsMuch(joined, after)) {
            return;
        }
        double heater = fired ? cost.ofPrice(type.prices().fuelFiredHeater().orElseThrow(), type.prices()) : 0;
        add(new ArrayList<>(joined), fit.type(), OptionalInt.empty(), after,
                cost.of(type, spec, driven, check) + heater - costBefore);
    }

    private boolean fewerDoAsMuch(Set<Remedy.Measure> joined, BlockCheck.Outcome after) {
        double recoveredKm = recoveredKm(after);
        return found.stream().filter(r -> joined.containsAll(r.measures()))
                .anyMatch(r -> r.cures() || !after.passes() && r.recoveredKm() > recoveredKm - NEGLIGIBLE_KM);
    }

    private void addLargerPacks() {
        for (RouteFit other : plan.fits().list()) {
            ElectricSpec spec = study.types().get(other.type()).electric().orElseThrow();
            if (other.route() == fit.route() && spec.battery().nominalKwh() > electric.battery().nominalKwh()) {
                add(List.of(Remedy.Measure.LARGER_PACK), other.type(), OptionalInt.empty(),
                        other.whenAged(study.middayCharging()), yearly(other) - costBefore);
            }
        }
    }

    private double yearly(RouteFit of) {
        VehicleTypeInput served = study.types().get(of.type());
        return cost.of(served, served.spec(), use(of.route(), of.type()), check(of, study.middayCharging()));
    }

    /** The longest route that the type can do and that an engine bus serves in the plan; the two buses change places. */
    private void addSwap() {
        plan.fits().list().stream().filter(f -> f.type() == fit.type() && f.whenAged(study.middayCharging()).passes())
                .filter(f -> servedByEngine(f.route()).isPresent())
                .max(Comparator.comparingDouble(f -> use(f.route(), f.type()).year().km())).ifPresent(this::addSwap);
    }

    private void addSwap(RouteFit shorter) {
        int engine = servedByEngine(shorter.route()).orElseThrow();
        double change = yearly(shorter) + ofEngine(engine, fit.route()) - costBefore - ofEngine(engine, shorter.route());
        add(List.of(Remedy.Measure.SWAP_ROUTE), fit.type(), OptionalInt.of(shorter.route()),
                shorter.whenAged(study.middayCharging()), change);
    }

    private OptionalInt servedByEngine(int route) {
        List<VehicleYear> last = plan.fleet().inYear(study.years() - 1);
        return last.stream().filter(v -> study.buses().get(v.place()).route().equals(OptionalInt.of(route)))
                .mapToInt(v -> v.vehicle().type()).filter(t -> study.types().get(t).engine().isPresent()).findFirst();
    }

    private double ofEngine(int engine, int route) {
        VehicleTypeInput served = study.types().get(engine);
        return cost.of(served, served.spec(), use(route, engine), check(fit, false));
    }

    /** The cheapest type with an engine that fits the route and is still bought. */
    private void addEngine() {
        IntStream.range(0, study.types().size()).filter(this::canServe).boxed()
                .min(Comparator.comparingDouble(other -> ofEngine(other, fit.route())))
                .ifPresent(other -> found.add(new Remedy(List.of(Remedy.Measure.KEEP_ENGINE), other, OptionalInt.empty(),
                        before, true, -before.marginKm(), ofEngine(other, fit.route()) - costBefore)));
    }

    private boolean canServe(int other) {
        VehicleTypeInput candidate = study.types().get(other);
        return candidate.engine().filter(e -> cost.prices(e.fuel())).isPresent() && candidate.successor() == other
                && result.duty().use(fit.route(), other).isPresent();
    }

    private void add(List<Remedy.Measure> measures, int served, OptionalInt swapRoute, BlockCheck.Outcome after,
            double costPerYear) {
        double recoveredKm = recoveredKm(after);
        if (recoveredKm > NEGLIGIBLE_KM) {
            found.add(new Remedy(measures, served, swapRoute, after, after.passes(), recoveredKm, costPerYear));
        }
    }

    private double recoveredKm(BlockCheck.Outcome after) {
        return after.marginKm() - before.marginKm();
    }
}
