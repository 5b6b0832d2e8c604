package org.amberyard.workbench.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.ModelPackages;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.study.FieldFormat;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@ExtendWith(UsNumbers.class)
class FieldTest {
    /** Nobody has chosen 656.17 ft; what is stored stays 200 m, and what a user has entered is read with its digits. */
    @Test
    void aDefaultIsReadAsARoundFigureInAnyUnits() {
        Study study = StudyDefaults.create();
        study.getSettings().setUnits(UnitChoice.US);
        Field elevation = new Field(SitePackage.Literals.SITE__ELEVATION_M, study);
        assertEquals(200, study.getSite().getElevationM());
        assertEquals("656", elevation.text(study.getSite()));
        assertEquals("653.54", elevation.text(199.2));
        study.getSettings().setUnits(UnitChoice.METRIC);
        assertEquals("200", new Field(SitePackage.Literals.SITE__ELEVATION_M, study).text(study.getSite()));
    }

    /** “at most 14,764 ft” must not refuse 14,764 ft, which is a little more than 4500 m. */
    @ParameterizedTest
    @EnumSource(UnitChoice.class)
    void theLimitsThatARefusalNamesAreTaken(UnitChoice units) throws FieldRefusal {
        Study study = StudyDefaults.create();
        study.getSettings().setUnits(units);
        int limits = 0;
        for (EStructuralFeature feature : numbers(study)) {
            Field field = new Field(feature, study);
            for (double far : new double[] {-1e9, 1e9}) {
                Optional<String> refusal = refusal(field, FieldFormat.of(feature, study, Words.model()).text(far));
                if (refusal.isPresent() && !(far < 0 && FieldInfo.of(feature).above().isPresent())) {
                    String limit = refusal.get().replaceAll(far < 0 ? ".* at least " : ".* at most ", "").replaceAll("( and at most .*)?\\.$", "");
                    assertEquals(Optional.empty(), refusal(field, limit), refusal.get());
                    limits++;
                }
            }
        }
        assertTrue(limits > 300, limits + " limits");
    }

    private static Optional<String> refusal(Field field, String typed) {
        try {
            field.value(typed);
            return Optional.empty();
        } catch (FieldRefusal refusal) {
            return Optional.of(refusal.getMessage());
        }
    }

    /** Fields of the model that hold one number. */
    private static List<EStructuralFeature> numbers(Study study) {
        return ModelPackages.all().stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance)
                .flatMap(c -> ((EClass) c).getEStructuralFeatures().stream())
                .filter(f -> FieldWords.isNumber(f) && FieldFormat.of(f, study).isNumber()).toList();
    }
}
