package org.amberyard.report.papers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.report.InputRegister;
import org.amberyard.report.ResultTable;
import org.amberyard.study.StudyUnits;

/**
 * What documents say of a study beside its results: numbers and names that no calculation needs, and the inputs with their
 * sources. A copy, so that documents can be made while the study is edited.
 *
 * @param assumptions what all plans stand on, with the version of the study
 * @param description description of the study; may be empty
 * @param system units of the study
 * @param buses buses of today by their number
 * @param types vehicle types by name
 * @param routes descriptions of routes by name
 * @param inputs every input with its value and source
 * @param applicant who applies
 * @param service what a utility must know of the yard's service
 * @param rules where the rules of programmes come from
 * @param dates awards and deadlines of programmes
 * @param funding how far sources of money are secured
 * @param narratives texts for applications
 */
public record StudyFacts(Assumptions assumptions, String description, UnitSystem system, Map<String, BusFacts> buses, Map<String, TypeFacts> types,
        Map<String, String> routes, ResultTable inputs, ApplicantFacts applicant,
        ServiceFacts service, RuleSources rules, ProgrammeDates dates, FundingFacts funding, List<NarrativeFacts> narratives) {
    /**
     * A vehicle type.
     *
     * @param bodyType trade letter of the body
     * @param lift true with a wheelchair lift
     * @param priceSource where its price comes from
     */
    record TypeFacts(String bodyType, boolean lift, String priceSource) {
    }

    /** Copies what documents need; to be called where the study may be read. */
    public static StudyFacts of(Study study) {
        ResultTable inputs = InputRegister.of(study);
        Map<String, BusFacts> buses = new LinkedHashMap<>();
        for (Bus bus : study.getBuses()) {
            buses.put(bus.getName(), BusFacts.of(bus, StudyUnits.of(study)));
        }
        Map<String, TypeFacts> types = new LinkedHashMap<>();
        for (VehicleType type : study.getVehicleTypes()) {
            types.put(type.getName(), new TypeFacts(type.getBodyType().getLiteral(), type.isLift(), PriceSource.of(type)));
        }
        Map<String, String> routes = new LinkedHashMap<>();
        for (Route route : study.getRoutes()) {
            routes.put(route.getName(), text(route.getDescription()));
        }
        return new StudyFacts(Assumptions.of(study), text(study.getDescription()), StudyUnits.of(study), buses, types, routes, inputs,
                ApplicantFacts.of(study), ServiceFacts.of(study.getDepot()), RuleSources.of(study),
                ProgrammeDates.of(study), FundingFacts.of(study), NarrativeFacts.of(study));
    }

    /** A short sum over everything in the study. */
    String version() {
        return assumptions.version();
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    Optional<BusFacts> bus(String unit) {
        return Optional.ofNullable(buses.get(unit));
    }
}
