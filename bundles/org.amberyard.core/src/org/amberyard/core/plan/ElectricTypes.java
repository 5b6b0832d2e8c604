package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;

/** Electric types that can stand in for a bus. */
final class ElectricTypes {
    private ElectricTypes() {
    }

    /** Fits of types that do a route with an aged pack under the study's charging habit. */
    static List<RouteFit> doing(StudyResult result, int route) {
        boolean midday = result.input().middayCharging();
        return result.fits().list().stream().filter(f -> f.route() == route && f.whenAged(midday).passes()).toList();
    }

    /** Places of the types of the same body, in the order of the types. */
    static List<Integer> sameBody(StudyInput study, BusInput bus) {
        String body = study.types().get(bus.type()).spec().body().bodyType();
        return IntStream.range(0, study.types().size()).filter(t -> study.types().get(t).electric().isPresent()
                && study.types().get(t).spec().body().bodyType().equals(body)).boxed().toList();
    }
}
