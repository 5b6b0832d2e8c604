package org.amberyard.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.OneSided;
import org.amberyard.core.consumption.Residual;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;

/** Warns where what a curve misses lies to one side: in the cold, and for one of several buses. */
final class ResidualWords {
    private static final double FREEZING_C = 0;

    private ResidualWords() {
    }

    /** Warnings on a fit; none where nothing is one-sided. */
    static List<String> of(CurveFitting fitting, CurveFit fit) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group("below freezing", "the curve is wrong in the cold, where range is decided",
                fit.residuals().stream().filter(r -> r.entry().outsideC() <= FREEZING_C).toList()));
        Map<Bus, List<Residual>> byBus = byBus(fitting, fit);
        if (byBus.size() > 1) {
            byBus.forEach((bus, residuals) -> groups.add(
                    new Group("of bus " + ElementNames.of(bus), "look at this bus, its driver and its meter", residuals)));
        }
        int tested = (int) groups.stream().filter(g -> OneSided.of(g.logs()).isPresent()).count();
        return groups.stream().flatMap(g -> g.warning(tested).stream()).toList();
    }

    /** Logs that are looked at together: which they are, and what to do where they lie to one side. */
    private record Group(String which, String then, List<Residual> logs) {

        Optional<String> warning(int groups) {
            return OneSided.of(logs).filter(s -> s.holds(groups)).map(s -> String.format(Locale.ROOT,
                    "Warning: the logs %s lie to one side of the curve: %d of %d above it, %.1f %% %s on average with a standard error of %.1f %% (sign "
                            + "test or mean; at most 5 of 100 fair fits are warned of); %s.",
                    which, s.above(), s.logs(), 100 * Math.abs(s.meanShare()), s.meanShare() > 0 ? "more" : "less", 100 * s.errorShare(), then));
        }
    }

    private static Map<Bus, List<Residual>> byBus(CurveFitting fitting, CurveFit fit) {
        Map<Bus, List<Residual>> byBus = new LinkedHashMap<>();
        IntStream.range(0, fit.residuals().size()).filter(i -> fitting.logs().used().get(i).getBus() != null)
                .forEach(i -> byBus.computeIfAbsent(fitting.logs().used().get(i).getBus(), b -> new ArrayList<>()).add(fit.residuals().get(i)));
        return byBus;
    }
}
