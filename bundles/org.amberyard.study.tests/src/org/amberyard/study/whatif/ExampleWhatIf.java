package org.amberyard.study.whatif;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The example with a what-if of one's own. */
final class ExampleWhatIf {
    private ExampleWhatIf() {
    }

    /** The example as it is. */
    static Study example() throws StudyFileException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        return StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }

    /** The example without any uncertain input. */
    static Study without(int draws) throws StudyFileException {
        Study study = example();
        study.setWhatIf(WhatifFactory.eINSTANCE.createWhatIf());
        study.getWhatIf().setDraws(draws);
        return study;
    }

    /** Two plans of the example; the weather of all months and the losses of all cabins vary, and draws are read off surfaces. */
    static Study ofWeather(int draws) throws StudyFileException {
        Study study = without(draws);
        study.getPlans().subList(2, study.getPlans().size()).clear();
        study.getDepot().setChargingPolicy(ChargingPolicy.AT_ONCE);
        study.getWhatIf().setFitted(true);
        UncertainInput weather = add(study, "Temperature", "MonthClimate", "*", "meanLowC; meanHighC");
        weather.setEffect(Effect.PLUS);
        weather.setLow(-3);
        weather.setLikely(0);
        weather.setHigh(2);
        add(study, "Cabin loss", "ElectricType", "*", "cabinLossKwPerK");
        return study;
    }

    /** Leaves one route in so many, no more than some, with its buses, and no spares. */
    static void thin(Study study, int oneRouteIn, int most) {
        List<Route> left = study.getRoutes().stream().filter(r -> study.getRoutes().indexOf(r) % oneRouteIn == 0).limit(most).toList();
        List<Route> gone = study.getRoutes().stream().filter(r -> !left.contains(r)).toList();
        List<Bus> idle = study.getBuses().stream().filter(b -> b.getRoute() == null || gone.contains(b.getRoute())).toList();
        study.getPlans().forEach(p -> p.getReplacements().removeIf(r -> idle.contains(r.getBus()) || idle.contains(r.getCascadeTo())));
        study.getConsumptionLogs().clear();
        study.getTrips().clear();
        EcoreUtil.deleteAll(idle, true);
        EcoreUtil.deleteAll(gone, true);
    }

    /** Adds an input that is multiplied by 0.8 to 1.2. */
    static UncertainInput add(Study study, String name, String kind, String element, String field) {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setName(name);
        input.setKind(kind);
        input.setElement(element);
        input.setField(field);
        study.getWhatIf().getInputs().add(input);
        return input;
    }
}
