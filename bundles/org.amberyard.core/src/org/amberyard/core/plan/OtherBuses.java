package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** What another bus can do for a route that fails: one with a larger pack, one from another route, one with an engine. */
final class OtherBuses {
    private final FailedRoute failed;
    private final StudyInput study;
    private final RouteFit fit;
    private final boolean midday;

    private OtherBuses(FailedRoute failed) {
        this.failed = failed;
        this.study = failed.result().input();
        this.fit = failed.fit();
        this.midday = study.middayCharging();
    }

    static List<Remedy> of(FailedRoute failed) {
        OtherBuses others = new OtherBuses(failed);
        List<Remedy> found = new ArrayList<>(others.largerPacks());
        if (others.serves()) {
            found.addAll(others.swap());
        }
        found.addAll(others.engine());
        return found;
    }

    private List<Remedy> largerPacks() {
        return failed.plan().fits().list().stream().filter(f -> f.route() == fit.route() && nominalKwh(f) > nominalKwh(fit))
                .flatMap(f -> failed.remedy(List.of(Remedy.Measure.LARGER_PACK), f.type(), OptionalInt.empty(),
                        f.whenAged(midday), failed.yearly(f)).stream())
                .toList();
    }

    private double nominalKwh(RouteFit of) {
        return study.types().get(of.type()).electric().orElseThrow().battery().nominalKwh();
    }

    private List<VehicleYear> lastYear() {
        return failed.plan().fleet().inYear(study.years() - 1);
    }

    private boolean on(VehicleYear bus, int route) {
        return study.buses().get(bus.place()).route().equals(OptionalInt.of(route));
    }

    /** True when a bus of the type serves the route at the end of the study; only then is there a bus to change places. */
    private boolean serves() {
        return lastYear().stream().anyMatch(v -> v.vehicle().type() == fit.type() && on(v, fit.route()));
    }

    /** The longest route that the type can do and that an engine bus serves in the plan; the two buses change places. */
    private List<Remedy> swap() {
        return failed.plan().fits().list().stream().filter(f -> f.type() == fit.type() && f.whenAged(midday).passes())
                .filter(f -> servedByEngine(f.route()).isPresent())
                .max(Comparator.comparingDouble(f -> failed.use(f.route(), f.type()).year().km())).flatMap(shorter -> {
                    int engine = servedByEngine(shorter.route()).orElseThrow();
                    return failed.remedy(List.of(Remedy.Measure.SWAP_ROUTE), fit.type(), OptionalInt.of(shorter.route()),
                            shorter.whenAged(midday), failed.yearly(shorter) + failed.yearlyOfEngine(engine, fit.route())
                                    - failed.yearlyOfEngine(engine, shorter.route()));
                }).stream().toList();
    }

    private OptionalInt servedByEngine(int route) {
        return lastYear().stream().filter(v -> on(v, route)).mapToInt(v -> v.vehicle().type())
                .filter(t -> study.types().get(t).engine().isPresent()).findFirst();
    }

    /** The cheapest type with an engine that fits the route and is still bought. */
    private List<Remedy> engine() {
        return IntStream.range(0, study.types().size()).filter(this::canServe).boxed()
                .min(Comparator.comparingDouble(other -> failed.yearlyOfEngine(other, fit.route()))).map(failed::engine)
                .stream().toList();
    }

    private boolean canServe(int other) {
        VehicleTypeInput candidate = study.types().get(other);
        return candidate.engine().filter(e -> failed.cost().prices(e.fuel())).isPresent() && candidate.successor() == other
                && failed.result().duty().use(fit.route(), other).isPresent();
    }
}
