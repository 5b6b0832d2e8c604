package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;

/** Fields of the example that are pointed at. */
class VariedFieldTest {
    private final Study study;

    VariedFieldTest() throws StudyFileException {
        study = ExampleWhatIf.without(10);
    }

    /** Whatever can be varied is found again where it was pointed at. */
    @Test
    void everyFieldThatCanBeVariedIsFoundAgain() {
        List<String> refused = new ArrayList<>();
        int found = 0;
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject element = all.next();
            for (EStructuralFeature field : element.eClass().getEAllStructuralFeatures()) {
                if (!FieldWords.isNumber(field) || element.eGet(field) == null) {
                    continue;
                }
                try {
                    UncertainInput input = VariedField.of(study, element, field);
                    assertEquals(List.of(new InputPlace(element, field)),
                            InputPlace.all(study, input.getKind(), input.getElement(), input.getField()));
                    assertTrue(holds(element, field, input, input.getLow()) && holds(element, field, input, input.getHigh()),
                            () -> input.getName() + " from " + input.getLow() + " to " + input.getHigh());
                    assertTrue(input.getLow() < input.getHigh(), input.getName());
                    found++;
                } catch (IllegalArgumentException e) {
                    refused.add(e.getMessage());
                }
            }
        }
        assertTrue(found > 1000, found + " fields");
        assertTrue(refused.stream().allMatch(m -> m.contains("a name of its own first") || m.endsWith(" is empty; enter its value first")), refused.toString());
    }

    private static boolean holds(EObject element, EStructuralFeature field, UncertainInput input, double end) {
        return FieldInfo.of(field).allows(InputPlace.after(input.getEffect(), ((Number) element.eGet(field)).doubleValue(), end));
    }

    /** Efficiency of a port is 0.88 of at most 1: a fifth more would be 1.056. */
    @Test
    void aRangeEndsAtTheLimitsOfItsFieldAndSaysSo() {
        PortType port = study.getDepot().getPortTypes().get(0);
        port.setEfficiency(0.88);
        UncertainInput input = VariedField.of(study, port, DepotPackage.Literals.PORT_TYPE__EFFICIENCY);
        assertEquals(1 / 0.88, input.getHigh(), 1e-12);
        assertEquals(0.8, input.getLow(), 1e-12);
        assertEquals("Range cut to what the field can hold.", input.getNote());
    }

    @Test
    void aChoiceTakesAllThatTheFieldCanHold() {
        UncertainInput input = VariedField.of(study, study.getDepot(), DepotPackage.Literals.DEPOT__CHARGING_POLICY);
        assertEquals(Shape.LIST, input.getShape());
        assertEquals(Effect.VALUE, input.getEffect());
        assertEquals("Charging policy", input.getName());
        assertTrue(input.getChoices().startsWith("at once; at a set time; "), input.getChoices());
    }

    /** No cap on charging is given: zero is no figure that could be varied. */
    @Test
    void aFigureThatIsMissingIsNotVaried() {
        study.getDepot().setChargingCapKw(0);
        assertEquals("Cap on charging is empty; enter its value first", assertThrows(IllegalArgumentException.class,
                () -> VariedField.of(study, study.getDepot(), DepotPackage.Literals.DEPOT__CHARGING_CAP_KW)).getMessage());
        study.getDepot().setChargingCapKw(100);
        assertEquals(Effect.TIMES, VariedField.of(study, study.getDepot(), DepotPackage.Literals.DEPOT__CHARGING_CAP_KW).getEffect());
    }

    @Test
    void aNameIsNoInput() {
        assertThrows(IllegalArgumentException.class, () -> VariedField.of(study, study, StudyPackage.Literals.STUDY__NAME));
    }
}
