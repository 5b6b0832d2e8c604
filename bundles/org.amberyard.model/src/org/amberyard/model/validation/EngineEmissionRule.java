package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.amberyard.model.air.AirPackage.Literals;
import org.amberyard.model.air.EngineEmission;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.CombustionType;

/** Groups of engines have their model years in order, do not overlap, and leave no engine of the fleet out. */
final class EngineEmissionRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        List<EngineEmission> rows = study.getEmissionFactors() == null ? List.of() : study.getEmissionFactors().getEngineEmissions();
        List<EngineEmission> before = new ArrayList<>();
        for (EngineEmission row : rows) {
            BodyLetters.check(row, Literals.ENGINE_EMISSION__BODY_TYPES, findings);
            if (row.getFirstModelYear() > row.getLastModelYear()) {
                findings.error(row, Literals.ENGINE_EMISSION__LAST_MODEL_YEAR, "its first model year " + row.getFirstModelYear()
                        + " is after its last model year " + row.getLastModelYear() + "; were they swapped?");
            }
            before.stream().filter(b -> overlap(b, row)).findFirst().ifPresent(b -> findings.error(row,
                    Literals.ENGINE_EMISSION__FIRST_MODEL_YEAR, "some of its model years stand in " + ElementNames.of(b)
                            + " too; let each engine have one group."));
            before.add(row);
        }
        if (!rows.isEmpty()) {
            checkFleet(study, rows, findings);
        }
    }

    private static boolean overlap(EngineEmission a, EngineEmission b) {
        return a.getFuel() == b.getFuel() && Objects.equals(letters(a), letters(b))
                && a.getFirstModelYear() <= b.getLastModelYear() && b.getFirstModelYear() <= a.getLastModelYear();
    }

    private static String letters(EngineEmission row) {
        return row.getBodyTypes() == null ? "" : row.getBodyTypes();
    }

    private static void checkFleet(Study study, List<EngineEmission> rows, Findings findings) {
        List<String> left = study.getBuses().stream().filter(b -> b.getType() instanceof CombustionType)
                .filter(b -> rows.stream().noneMatch(r -> holdsFor(r, b))).map(Bus::getName).toList();
        if (!left.isEmpty()) {
            findings.warning(study.getEmissionFactors(), StudyPackage.Literals.EMISSION_FACTORS__ENGINE_EMISSIONS,
                    "no engine emissions hold for the engine of " + String.join(", ", left)
                            + ", so what it emits is not known; add a group for it.");
        }
    }

    private static boolean holdsFor(EngineEmission row, Bus bus) {
        CombustionType type = (CombustionType) bus.getType();
        int year = bus.getEngineModelYear() > 0 ? bus.getEngineModelYear() : bus.getModelYear();
        return row.getFuel() == type.getFuel() && year >= row.getFirstModelYear() && year <= row.getLastModelYear()
                && (letters(row).isEmpty() || letters(row).contains(type.getBodyType().getLiteral()));
    }
}
